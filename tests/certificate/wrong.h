// What is found wrong, each fault once.
#pragma once

#include <algorithm>
#include <string>
#include <vector>

namespace certificate {

struct Wrong {
    std::vector<std::string> all;

    void unless(bool so, const std::string& what) {
        if (!so && std::find(all.begin(), all.end(), what) == all.end()) {
            all.push_back(what);
        }
    }
};

}  // namespace certificate
