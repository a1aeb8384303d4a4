#include "field/words/short_path.h"

#include <algorithm>
#include <vector>

namespace hemline {

namespace {

/// Tablets and events are numbered to base 16: sixteen digits.
bool is_numbered(std::string_view name) {
    constexpr std::size_t digits = 16;
    const std::size_t end = std::min(name.find_first_not_of("0123456789abcdef"), name.size());
    return end >= digits;
}

}  // namespace

std::string short_path(std::string_view path) {
    constexpr std::size_t names_most = 2;
    std::vector<std::string_view> names;
    for (std::string_view rest = path; !rest.empty();) {
        const std::string_view name = rest.substr(0, rest.find('/'));
        rest.remove_prefix(std::min(name.size() + 1, rest.size()));
        if (!name.empty() && name.front() != '.' && !is_numbered(name)) {
            names.push_back(name);
        }
    }
    std::string words;
    for (std::size_t i = names.size() - std::min(names.size(), names_most); i < names.size(); ++i) {
        words += (words.empty() ? "" : " ▸ ") + std::string(names[i]);
    }
    return words.empty() ? std::string(path) : words;
}

}  // namespace hemline
