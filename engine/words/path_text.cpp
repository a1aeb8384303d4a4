#include "engine/words/path_text.h"

#include <algorithm>

namespace hemline {

namespace {

constexpr std::string_view path_context = "path";

}  // namespace

Text path_text(std::string_view path) {
    Text text(path);
    text.context = path_context;
    return text;
}

bool is_path(const Text& text) { return text.as_is && text.context == path_context; }

Text spaced(std::string id) {
    std::replace(id.begin(), id.end(), '_', ' ');
    return Text(id);
}

}  // namespace hemline
