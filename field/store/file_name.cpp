#include "field/store/file_name.h"

#include "engine/words/shown_text.h"
#include "engine/words/utf8.h"

namespace hemline {

std::string file_name_of(std::string_view name) {
    constexpr std::size_t bytes_most = 80;
    std::string text;
    for (std::size_t at = 0; at < name.size();) {
        const CodePoint point = code_point_at(name, at);
        const std::string_view letter = name.substr(at, point.bytes == 0 ? 1 : point.bytes);
        const bool can_hold = point.bytes > 0 && !is_unseen(point.value) &&
                              (letter.size() > 1 || std::string_view("/\\:*?\"<>|").find(letter) ==
                                                        std::string_view::npos);
        const std::string_view put = can_hold ? letter : "-";
        if (text.size() + put.size() > bytes_most) {
            break;
        }
        text += put;
        at += letter.size();
    }
    text.erase(0, text.find_first_not_of(". "));
    text.erase(text.find_last_not_of(". ") + 1);
    return text.empty() ? "job" : text;
}

}  // namespace hemline
