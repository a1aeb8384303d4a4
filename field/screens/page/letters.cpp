#include "field/screens/page/letters.h"

#include <algorithm>
#include <string_view>

#include "field/touch/box.h"

namespace hemline {

namespace {

constexpr std::size_t name_letters_most = 40;
constexpr std::string_view all_keys = "ABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789.-";
constexpr std::string_view letter_keys = "ABCDEFGHIJKLMNOPQRSTUVWXYZ", digits = "0123456789.-";
constexpr float key_mm = 10, key_mm_most = 19;
constexpr int wide_most = 10;

void take_back(std::string& name) {
    while (!name.empty() && (static_cast<unsigned char>(name.back()) & 0xC0U) == 0x80U) {
        name.pop_back();
    }
    if (!name.empty()) {
        name.pop_back();
    }
}

void add(std::string& name, char letter) {
    const bool starts_word = name.empty() || name.back() == ' ';
    const bool lowers = !starts_word && letter >= 'A' && letter <= 'Z';
    name += lowers ? static_cast<char>(letter - 'A' + 'a') : letter;
}

void take_typed_name(std::string& name, std::string_view typed) {
    for (const char letter : typed) {
        if (letter == '\b') {
            take_back(name);
        } else if (static_cast<unsigned char>(letter) >= ' ' && name.size() < name_letters_most) {
            name += letter;
        }
    }
}

int rows_of(std::size_t keys, int wide) { return (static_cast<int>(keys) + wide - 1) / wide; }

float height_of(const Ui& ui, int rows) {
    return ui.mm(static_cast<float>(rows) * (key_mm + gap_mm) - gap_mm);
}

}  // namespace

void draw_letter_keys(Ui& ui, NameDraft& draft, Box box) {
    std::string& name = draft.letters;
    take_typed_name(name, ui.keyboard().take_words());
    const float gap = ui.mm(gap_mm);
    const int fit = static_cast<int>((box.w + gap) / ui.mm(key_mm + gap_mm));
    const int wide = std::clamp(fit, 1, wide_most);
    const bool whole = height_of(ui, rows_of(all_keys.size() + 2, wide)) <= box.h;
    const std::string_view letters = whole ? all_keys : draft.digits_shown ? digits : letter_keys;
    // Both pages have the same number of places, so that no key moves.
    const int tall = rows_of((whole ? all_keys : letter_keys).size() + (whole ? 2 : 3), wide);
    const float h =
        std::clamp(box.h, height_of(ui, tall), height_of(ui, tall) * key_mm_most / key_mm);
    const Box keys =
        ui.begin_scroll("letters", box, std::min(h, std::max(box.h, height_of(ui, tall))));
    const std::vector<Box> lines = rows({keys.x, keys.y, box.w, h}, tall, gap);
    const std::size_t count = letters.size() + (whole ? 2 : 3);
    const auto w = static_cast<std::size_t>(wide);
    std::size_t next = 0;
    // If the last line has fewer keys, they are wider, for their words.
    const auto key = [&](const std::string& key_name, const Text& label) {
        const std::size_t line = next / w;
        const std::size_t on_line = std::min(w, count - line * w);
        const std::size_t column = next++ % w;
        return ui.button("letter " + key_name, label,
                         columns(lines[line], static_cast<int>(on_line), gap)[column]);
    };
    for (const char letter : letters) {
        const std::string label(1, letter);
        if (key(label, Text(label)) && name.size() < name_letters_most) {
            add(name, letter);
        }
    }
    const float key_w = columns(lines.front(), wide, gap).front().w;
    const bool roomy = ui.label_width(say("space")) <= key_w;
    if (key("space", roomy ? say("space") : say("sp.")) && !name.empty()) {
        name += ' ';
    }
    if (key("back", say_of("key", "back"))) {
        take_back(name);
    }
    if (!whole && key("page", Text(draft.digits_shown ? "A–Z" : "0–9"))) {
        draft.digits_shown = !draft.digits_shown;
    }
    ui.end_scroll();
}

}  // namespace hemline
