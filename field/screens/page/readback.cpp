#include "field/screens/page/readback.h"

#include <algorithm>
#include <numeric>
#include <optional>
#include <string>

#include "field/screens/page/key_grid.h"
#include "field/state/length_draft.h"
#include "field/touch/box.h"

namespace hemline {

namespace {

constexpr float figure_w_mm = 100, figure_h_mm = 32, fields_mm = 15;
constexpr float words_below_mm = 12;  // other words about the length come first
constexpr const char* field_words[] = {phrase("feet"), phrase("inches"), phrase("16ths")};

void choose_field(LengthDraft& draft, int field) {
    draft.field = field;
    draft.refused = {};
}

std::string field_name(int field) {
    return std::string("field ") + field_words[static_cast<std::size_t>(field)];
}

/// "31 ft" in the middle of a box, large where it has room; a dash for what is not keyed in.
void draw_value(Ui& ui, const std::string& value, const char* unit, Box box, Colour colour) {
    const std::string words = value.empty() ? "–" : value;
    const float gap = ui.mm(1.2F), unit_w = ui.text_width(Text(unit), Size::small);
    const bool large = !value.empty() && box.h >= ui.line_height(Size::figure) &&
                       ui.text_width(Text(words), Size::figure) + gap + unit_w <= box.w;
    const bool narrow = ui.text_width(Text(words), Size::title) + gap + unit_w > box.w - gap;
    const Size size = large ? Size::figure : narrow ? Size::bold : Size::title;
    const float w = ui.text_width(Text(words), size) + gap + unit_w;
    const float x = box.mid_x() - w / 2;
    const float y = box.mid_y() - ui.line_height(size) / 2;
    const float used = ui.text(x, y, Text(words), size, Align::left, colour);
    ui.text(x + used + gap, y + (ui.line_height(size) - ui.line_height(Size::small)) * 0.8F,
            Text(unit), Size::small, Align::left, colour);
}

/// "47 feet", or "feet" where nothing is keyed in.
Text spoken_field(const LengthDraft& draft, int field) {
    const std::optional<int> number = field == 1 ? draft.inches : draft.sixteenths;
    const std::string value = field == 0 ? draft.feet : number ? std::to_string(*number) : "";
    const Text unit = field == 0   ? say("feet")
                      : field == 1 ? say("inches")
                                   : say("sixteenths of an inch");
    return value.empty() ? unit : glued(value, " ", unit);
}

void draw_fields_within(Ui& ui, LengthDraft& draft, Box strip) {
    const float gap = ui.mm(gap_mm);
    const float w = strip.w - 2 * gap;
    const float shares[] = {0.38F, 0.32F, 0.30F};
    const int sixteenths = draft.sixteenths.value_or(0);
    for (int field = 0; field < 3; ++field) {
        Box place = take_left(strip, w * shares[static_cast<std::size_t>(field)]);
        take_left(strip, gap);
        const bool chosen = draft.field == field;
        if (ui.button(field_name(field), Text(""), place, chosen ? Look::chosen : Look::plain)) {
            choose_field(draft, field);
        }
        ui.speak(field_name(field), spoken_field(draft, field));
        const Colour colour = chosen ? ui.colours().chalk_ink : ui.colours().ink;
        if (field == 0) {
            draw_value(ui, draft.feet, "ft", place, colour);
        } else if (field == 1) {
            draw_value(ui, draft.inches ? std::to_string(*draft.inches) : "", "in", place, colour);
        } else if (sixteenths == 0) {
            draw_value(ui, draft.sixteenths ? "0" : "", "/16", place, colour);
        } else {
            const int common = std::gcd(sixteenths, 16);
            ui.fraction(place, sixteenths / common, 16 / common, colour);
        }
    }
}

/// A line on the keyboard, until Enter reads it; of a long one its end.
void draw_typed(Ui& ui, const std::string& typed, Box at) {
    const Text key = say("Enter reads it");
    const float key_w = ui.text_width(key, Size::small) + ui.mm(3);
    std::string line = typed + "_";
    while (line.size() > 1 && ui.text_width(Text(line), Size::title) > at.w - key_w) {
        line.erase(line.begin());
    }
    const float w = ui.text(at.x, at.y, Text(line), Size::title);
    ui.text(at.x + w + ui.mm(3),
            at.y + (ui.line_height(Size::title) - ui.line_height(Size::small)) * 0.8F, key,
            Size::small, Align::left, ui.colours().soft);
}

/// A number of millimeters as it is keyed in, or the line that is typed.
void draw_readback(Ui& ui, const LengthDraft& draft, Box body, bool metric, bool large) {
    const float y = body.y + (ui.figure_height() - ui.line_height(Size::title)) / 2;
    if (!draft.typed.empty()) {
        draw_typed(ui, draft.typed, {body.x, y, body.w, body.h});
    } else if (is_empty(draft)) {
        ui.text(body.x, y, say("– nothing keyed in yet"), Size::title, Align::left,
                ui.colours().soft);
    } else if (!large) {
        ui.text(body.x, y, Text(print_length(shown_length(draft, metric), Marks::millimetre)),
                Size::title);
    } else {
        ui.figure(body.x, body.y, shown_length(draft, metric), Marks::millimetre);
    }
}

/// The fields with what is keyed into them, or the readback of a tape that has a single field; the
/// height used.
float draw_fields(Ui& ui, LengthDraft& draft, Box body, bool metric) {
    const bool large = body.w >= ui.mm(figure_w_mm) && body.h >= ui.mm(figure_h_mm);
    if (metric) {
        draw_readback(ui, draft, body, metric, large);
        return ui.figure_height() + ui.mm(2);
    }
    const float h = large ? ui.line_height(Size::figure) + ui.mm(1)
                          : std::clamp(body.h, ui.mm(target_min), length_fields_height(ui));
    // Where notices leave no room for a glove there is none.
    if (erases_beside_fields(ui) && h >= ui.mm(key_min)) {
        Box erase = take_right(body, ui.mm(key_min));
        take_right(body, ui.mm(gap_mm));
        erase.h = h;
        if (ui.button("back", say("erase"), erase, Look::key)) {
            press_back(draft, metric);
        }
    }
    if (!draft.typed.empty()) {
        const float y = body.y + (h - ui.line_height(Size::title)) / 2;
        draw_typed(ui, draft.typed, {body.x, y, body.w, body.h});
        return h;
    }
    draw_fields_within(ui, draft, {body.x, body.y, body.w, h});
    return h;
}

}  // namespace

float length_fields_height(const Ui& ui) {
    return ui.mm(erases_beside_fields(ui) ? key_min : fields_mm);
}

float draw_length_fields(Ui& ui, LengthDraft& draft, Box body, Tapes tapes) {
    const bool metric = tapes.marks == Marks::millimetre;
    const float used = draw_fields(ui, draft, body, metric);
    const float line = ui.line_height(Size::body) + ui.mm(1);
    if (!tapes.both || body.h < used + line + ui.mm(words_below_mm)) {
        return used;
    }
    if (!is_empty(draft)) {
        ui.text(body.x, body.y + used + ui.mm(1),
                on_other_tape(shown_length(draft, metric), tapes));
    }
    return used + line;
}

}  // namespace hemline
