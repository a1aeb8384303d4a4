// The language of a page to print, and the tape marks for its lengths.
#pragma once

#include <functional>
#include <string>

#include "engine/words/text.h"

namespace hemline {

/// English, with no tape marks known, unless other words are given.
struct PageWords {
    std::string language = "en";  ///< of BCP 47, for the page's reader
    std::function<std::string(const Text&)> in_words = [](const Text& text) {
        return text.english();
    };
};

/// English, with lengths on those tape marks.
inline PageWords english_on(Marks marks) {
    return {"en", [marks](const Text& text) { return text.english(marks); }};
}

}  // namespace hemline
