#include "field/screens/letters.h"

#include <string_view>

namespace hemline {

namespace {

constexpr std::size_t name_letters_most = 40;
constexpr std::string_view letters = "ABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789.-";

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

}  // namespace

void draw_letter_keys(Ui& ui, std::string& name, Box box) {
    for (const char letter : ui.typed()) {
        if (letter == '\b') {
            take_back(name);
        } else if (static_cast<unsigned char>(letter) >= ' ' && name.size() < name_letters_most) {
            name += letter;
        }
    }
    const int wide = ui.portrait() ? 7 : 10;
    const int keys = static_cast<int>(letters.size()) + 2;
    const int tall = (keys + wide - 1) / wide;
    const std::vector<Box> lines = rows(box, tall, ui.mm(3));
    for (int i = 0; i < keys; ++i) {
        const auto line = static_cast<std::size_t>(i / wide);
        const Box place = columns(lines[line], wide, ui.mm(3))[static_cast<std::size_t>(i % wide)];
        const auto index = static_cast<std::size_t>(i);
        if (index < letters.size()) {
            const std::string label(1, letters[index]);
            if (ui.button("letter " + label, label, place) && name.size() < name_letters_most) {
                add(name, letters[index]);
            }
        } else if (index == letters.size()) {
            if (ui.button("letter space", "space", place) && !name.empty()) {
                name += ' ';
            }
        } else if (ui.button("letter back", "back", place)) {
            take_back(name);
        }
    }
}

}  // namespace hemline
