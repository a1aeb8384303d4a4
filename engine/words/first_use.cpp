#include "engine/words/first_use.h"

#include <string_view>

namespace hemline {

namespace {

constexpr std::string_view first_use_context = "first use";

}  // namespace

Text at_first_use(const Text& sentence) {
    Text text = beside({sentence});
    text.context = first_use_context;
    return text;
}

bool is_first_use(const Text& text) { return text.context == first_use_context; }

}  // namespace hemline
