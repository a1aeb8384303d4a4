// The language of a page to print.
#pragma once

#include <functional>
#include <string>

#include "engine/text.h"

namespace hemline {

/// English, unless other words are given.
struct PageWords {
    std::string language = "en";  ///< of BCP 47, for the page's reader
    std::function<std::string(const Text&)> in_words = [](const Text& text) {
        return text.english();
    };
};

}  // namespace hemline
