#include "field/screens/people/dew.h"

#include <charconv>
#include <cmath>

#include "engine/work/dew_point.h"
#include "field/screens/page/frame.h"
#include "field/screens/page/keypad.h"

namespace hemline {

namespace {

constexpr float field_mm = 14;

int number_in(const std::string& digits) {
    int number = 0;
    std::from_chars(digits.data(), digits.data() + digits.size(), number);
    return number;
}

/// The dew point in words; empty while something is missing or no humidity.
Text dew_words(const GateDraft& draft) {
    const int humidity = number_in(draft.humidity);
    if (draft.air.empty() || humidity < 1 || humidity > 100) {
        return {};
    }
    const auto dew =
        static_cast<int>(std::ceil(dew_point(number_in(draft.air), humidity)));  // never drier
    return say(
        "Dew point {1} °F. Metal at {1} °F or colder is wet. After a clear night metal is "
        "up to 10 °F colder than the air.",
        std::to_string(dew));
}

void draw_field(Ui& ui, std::string_view name, const Text& words, bool humidity, GateDraft& draft,
                Box box) {
    if (ui.button(name, words, box, draft.humidity_next == humidity ? Look::chosen : Look::plain)) {
        draft.humidity_next = humidity;
    }
}

void press(GateDraft& draft, char key) {
    constexpr std::size_t digits_most = 3;
    std::string& digits = draft.humidity_next ? draft.humidity : draft.air;
    if (key == '\b' && !digits.empty()) {
        digits.pop_back();
    } else if (key >= '0' && key <= '9' && digits.size() < digits_most) {
        digits += key;
    }
}

}  // namespace

Wished draw_dew(Ui& ui, const State& state, GateDraft& draft) {
    const Frame frame = open_frame(ui, state, say("Dew point"),
                                   {{"leave", say("Back"), Look::primary}}, {digit_keys, 50});
    press(draft, draw_digit_keys(ui, frame.keys, false));
    Box body = frame.body;
    const auto fields = columns(take_top(body, ui.mm(field_mm)), 2, ui.mm(gap_mm));
    const auto shown = [](const std::string& digits) { return digits.empty() ? "…" : digits; };
    draw_field(ui, "air", say("Air {1} °F", shown(draft.air)), false, draft, fields[0]);
    draw_field(ui, "humidity", say("Humidity {1} %", shown(draft.humidity)), true, draft,
               fields[1]);
    take_top(body, ui.mm(gap_mm));
    Box words = ui.begin_scroll("dew words", body);
    const Text said = dew_words(draft);
    ui.end_scroll(ui.paragraph(
        words.x, words.y, words.w,
        said.empty() ? say("Key in the air's temperature and humidity.") : said, Size::bold));
    if (frame.tapped == "leave") {
        draft.page = GatePage::checks;
    }
    return frame.wish;
}

}  // namespace hemline
