#include "field/screens/page/letters.h"

#include <algorithm>
#include <array>
#include <string_view>
#include <utility>
#include <vector>

#include "field/touch/box.h"

namespace hemline {

namespace {

constexpr std::size_t name_letters_most = 40;
constexpr std::string_view accent_key = "´";
constexpr std::array<std::string_view, 10> digit_row = {"1", "2", "3", "4", "5",
                                                        "6", "7", "8", "9", "0"};
constexpr std::array<std::string_view, 30> letter_rows = {
    "A", "B", "C", "D", "E", "F", "G", "H", "I", "J", "K", "L", "M",        "N", "Ñ",
    "O", "P", "Q", "R", "S", "T", "U", "V", "W", "X", "Y", "Z", accent_key, ".", "-"};
/// What the accent makes of the letter before it; once more, and it is gone.
constexpr std::array<std::pair<std::string_view, std::string_view>, 24> accents = {{
    {"a", "á"}, {"á", "a"}, {"e", "é"}, {"é", "e"}, {"i", "í"}, {"í", "i"}, {"o", "ó"}, {"ó", "o"},
    {"u", "ú"}, {"ú", "ü"}, {"ü", "u"}, {"n", "ñ"}, {"A", "Á"}, {"Á", "A"}, {"E", "É"}, {"É", "E"},
    {"I", "Í"}, {"Í", "I"}, {"O", "Ó"}, {"Ó", "O"}, {"U", "Ú"}, {"Ú", "Ü"}, {"Ü", "U"}, {"N", "Ñ"},
}};
constexpr float key_mm = 10, key_mm_most = 19;
constexpr int wide_usual = 10, wide_most = 14;
constexpr std::size_t places_of_word = 2;  // a key with a word on it takes those of two letters

void take_back(std::string& name) {
    while (!name.empty() && (static_cast<unsigned char>(name.back()) & 0xC0U) == 0x80U) {
        name.pop_back();
    }
    if (!name.empty()) {
        name.pop_back();
    }
}

void set_accent(std::string& name) {
    const std::string_view now = name;
    for (const auto& [plain, accented] : accents) {
        const bool ends_so =
            now.size() >= plain.size() && now.substr(now.size() - plain.size()) == plain;
        if (ends_so) {
            take_back(name);
            name += accented;
            return;
        }
    }
}

/// A capital where a word starts, else a small letter.
void add(std::string& name, std::string_view letter) {
    const bool starts_word = name.empty() || name.back() == ' ';
    if (starts_word) {
        name += letter;
    } else if (letter == "Ñ") {
        name += "ñ";
    } else {
        const bool lowers = letter.front() >= 'A' && letter.front() <= 'Z';
        name += lowers ? static_cast<char>(letter.front() - 'A' + 'a') : letter.front();
    }
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

void press(std::string& name, std::string_view key) {
    if (key == accent_key) {
        set_accent(name);
    } else if (name.size() + key.size() <= name_letters_most) {
        add(name, key);
    }
}

int rows_of(std::size_t keys, int wide) { return (static_cast<int>(keys) + wide - 1) / wide; }

float height_of(const Ui& ui, int rows) {
    return ui.mm(static_cast<float>(rows) * (key_mm + gap_mm) - gap_mm);
}

/// Digits in a row above the letters; or one of the two, where the box is too low for both.
std::vector<std::string_view> keys_shown(bool whole, bool digits_shown) {
    std::vector<std::string_view> keys;
    if (whole || digits_shown) {
        keys.assign(digit_row.begin(), digit_row.end());
    }
    if (whole || !digits_shown) {
        keys.insert(keys.end(), letter_rows.begin(), letter_rows.end());
    } else {
        keys.insert(keys.end(), {".", "-"});
    }
    return keys;
}

/// The keys with words: in what the letters leave of their last line, or on the line below.
std::vector<Box> places_of_words(const std::vector<Box>& lines, int wide, std::size_t letters,
                                 std::size_t words, float gap) {
    const auto w = static_cast<std::size_t>(wide);
    const std::size_t used = letters % w;
    const bool has_room = used > 0 && w - used >= words * places_of_word;
    Box line = lines[has_room ? letters / w : (letters + w - 1) / w];
    if (has_room) {
        take_left(line, columns(line, wide, gap)[used].x - line.x);
    }
    return columns(line, static_cast<int>(words), gap);
}

}  // namespace

void draw_letter_keys(Ui& ui, NameDraft& draft, Box box) {
    std::string& name = draft.letters;
    take_typed_name(name, ui.keyboard().take_words());
    const float gap = ui.mm(gap_mm);
    const int fit = static_cast<int>((box.w + gap) / ui.mm(key_mm + gap_mm));
    constexpr std::size_t all = digit_row.size() + letter_rows.size();
    int wide = std::clamp(fit, 1, wide_usual);
    const auto rows_for = [&](std::size_t letters, std::size_t words) {
        return rows_of(letters + words * places_of_word, wide);
    };
    const auto holds_all = [&] { return height_of(ui, rows_for(all, 2)) <= box.h; };
    while (!holds_all() && wide < std::min(fit, wide_most)) {
        ++wide;
    }
    const bool whole = holds_all();
    wide = whole ? wide : std::min(wide, wide_usual);
    const std::vector<std::string_view> letters = keys_shown(whole, draft.digits_shown);
    // On both pages the keys with words lie where the letters end, so that no key moves.
    const int tall = whole ? rows_for(all, 2) : rows_for(letter_rows.size(), 3);
    const float h =
        std::clamp(box.h, height_of(ui, tall), height_of(ui, tall) * key_mm_most / key_mm);
    const Box keys =
        ui.begin_scroll("letters", box, std::min(h, std::max(box.h, height_of(ui, tall))));
    const std::vector<Box> lines = rows({keys.x, keys.y, box.w, h}, tall, gap);
    const auto w = static_cast<std::size_t>(wide);
    for (std::size_t i = 0; i < letters.size(); ++i) {
        const std::string_view letter = letters[i];
        if (ui.button("letter " + std::string(letter), Text(letter == accent_key ? "á é" : letter),
                      columns(lines[i / w], wide, gap)[i % w])) {
            press(name, letter);
        }
    }
    const std::vector<Box> words =
        places_of_words(lines, wide, whole ? all : letter_rows.size(), whole ? 2 : 3, gap);
    if (ui.button("letter space", say("space"), words[0]) && !name.empty()) {
        name += ' ';
    }
    if (ui.button("letter back", say("erase"), words[1])) {
        take_back(name);
    }
    if (!whole && ui.button("letter page", Text(draft.digits_shown ? "A–Z" : "0–9"), words[2])) {
        draft.digits_shown = !draft.digits_shown;
    }
    ui.end_scroll();
}

}  // namespace hemline
