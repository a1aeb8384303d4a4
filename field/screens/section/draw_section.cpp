#include "field/screens/section/draw_section.h"

#include <imgui.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <vector>

namespace hemline {

namespace {

constexpr double deck_in = 8;         // of the deck that is shown
constexpr double board_in = 0.75;     // of deck and fascia
constexpr double fascia_past_in = 1;  // of fascia below the trim
constexpr double kick_out = 30;       // degrees from the face
constexpr double layer_in = 0.12;     // gap drawn between layers, so that each shows
constexpr double beside_in = 1.2;     // of trim and air beside the fascia

double inches_of(Length length) {
    return static_cast<double>(length.nm()) / static_cast<double>(inches(1).nm());
}

struct Point {
    double x = 0, y = 0;  // inches from the corner of the deck, x toward the building, y up
};

Point along(Point from, double degrees, double length) {
    const double a = radians_of(degrees);
    return {from.x + length * std::cos(a), from.y + length * std::sin(a)};
}

struct Sheet {
    ImVec2 origin;
    float px_per_in = 1;
    [[nodiscard]] ImVec2 at(Point p) const {
        return {origin.x + static_cast<float>(p.x) * px_per_in,
                origin.y - static_cast<float>(p.y) * px_per_in};
    }
};

void fill(const Ui& ui, const Sheet& sheet, const std::array<Point, 4>& corners) {
    const ImVec2 a = sheet.at(corners[0]);
    const ImVec2 b = sheet.at(corners[1]);
    const ImVec2 c = sheet.at(corners[2]);
    const ImVec2 d = sheet.at(corners[3]);
    ui.ink()->AddQuadFilled(a, b, c, d, ui.colours().metal);
    ui.ink()->AddQuad(a, b, c, d, ui.colours().hairline, ui.mm(0.3F));
}

void stroke(const Ui& ui, const Sheet& sheet, const std::vector<Point>& line, bool now) {
    for (std::size_t i = 1; i < line.size(); ++i) {
        ui.ink()->AddLine(sheet.at(line[i - 1]), sheet.at(line[i]),
                          now ? ui.colours().chalk : ui.colours().ink, ui.mm(now ? 1.2F : 0.6F));
    }
}

/// Directions and corners of an eave.
struct Eave {
    double theta;  // of the deck
    double down;   // of the face
    double face_in;

    [[nodiscard]] Point outside(Point p, int layers) const {
        return along(p, down - 90, layer_in * layers);
    }
};

std::vector<Point> trim_line(const Eave& eave, const Trim& trim) {
    const Point corner = eave.outside({}, 3);
    const Point flange =
        along(along(corner, eave.theta, inches_of(leg_width(trim, LegName::flange))),
              eave.theta + 90, layer_in);
    const Point face = along(corner, eave.down, eave.face_in);
    const double kick_way = eave.down - kick_out;
    const Point kick = along(face, kick_way, inches_of(leg_width(trim, LegName::kick)));
    const Point hem = along(kick, kick_way + 160, inches_of(leg_width(trim, LegName::hem)));
    return {flange, along(corner, eave.theta + 90, layer_in), face, kick, hem};
}

std::vector<Point> cleat_line(const Eave& eave) {
    const Point top = along(eave.outside({}, 2), eave.down, eave.face_in - 1.5);
    const Point low = along(eave.outside({}, 2), eave.down, eave.face_in);
    return {top, low, along(low, eave.down - kick_out, 0.35)};
}

std::vector<Point> wrap_line(const Eave& eave, double fascia_in) {
    const Point low = along(eave.outside({}, 1), eave.down, fascia_in);
    return {eave.outside({}, 1), low, along(low, eave.down + 90, board_in)};
}

void draw_wood(const Ui& ui, const Sheet& sheet, const Eave& eave, double fascia_in) {
    const Point deck_end = along({}, eave.theta, deck_in);
    const double into = eave.theta - 90;
    fill(ui, sheet,
         {Point{}, deck_end, along(deck_end, into, board_in), along({}, into, board_in)});
    // The fascia's top is cut to the deck's underside.
    const Point front = along({}, eave.down, board_in / std::cos((eave.down - into) * 0.0174533));
    const Point back = along(front, eave.down + 90, board_in);
    fill(ui, sheet,
         {front, back, along(along({}, eave.down + 90, board_in), eave.down, fascia_in),
          along({}, eave.down, fascia_in)});
}

void label(Ui& ui, const Sheet& sheet, Point at, const Text& words, Align align) {
    const ImVec2 place = sheet.at(at);
    ui.text(place.x, place.y - ui.line_height(Size::small) / 2, words, Size::small, align);
}

}  // namespace

void draw_eave_section(Ui& ui, const EaveSection& section, Box box) {
    const double theta = degrees_of(section.pitch);
    const Eave eave{theta, section.fascia == Fascia::plumb ? -90 : theta - 90,
                    inches_of(leg_width(section.trim, LegName::face))};
    const double fascia_in = eave.face_in + fascia_past_in;
    const Point low = along({}, eave.down, fascia_in + 0.5);
    const double top = along({}, theta, deck_in).y + 0.6;
    const double left = std::min(0.0, low.x) - beside_in;
    const double wide = along({}, theta, deck_in).x + board_in - left;
    float words = 0;
    for (const Text& word : {say("flange"), say("face"), say("cleat"), say("wrap")}) {
        words = std::max(words, ui.text_width(word, Size::small));
    }
    take_left(box, std::min(words, box.w / 2));
    const float scale = static_cast<float>(
        std::min(static_cast<double>(box.w) / wide, static_cast<double>(box.h) / (top - low.y)));
    const Sheet sheet{
        {box.x - static_cast<float>(left) * scale, box.y + static_cast<float>(top) * scale}, scale};
    draw_wood(ui, sheet, eave, fascia_in);
    if (section.wrap && section.up_to >= EaveLayer::wrap) {
        stroke(ui, sheet, wrap_line(eave, fascia_in), section.up_to == EaveLayer::wrap);
    }
    if (section.up_to >= EaveLayer::cleat) {
        stroke(ui, sheet, cleat_line(eave), section.up_to == EaveLayer::cleat);
    }
    if (section.up_to >= EaveLayer::trim) {
        stroke(ui, sheet, trim_line(eave, section.trim), true);
        label(ui, sheet, along(along({}, theta, 2.2), theta + 90, 0.9), say("flange"),
              Align::right);
        label(ui, sheet, along(along({}, eave.down, eave.face_in / 2), eave.down - 90, 0.9),
              say("face"), Align::right);
    } else if (section.up_to == EaveLayer::cleat) {
        label(ui, sheet, along(along({}, eave.down, eave.face_in - 0.8), eave.down - 90, 0.7),
              say("cleat"), Align::right);
    } else if (section.up_to == EaveLayer::wrap) {
        label(ui, sheet, along(along({}, eave.down, eave.face_in / 2), eave.down - 90, 0.7),
              say("wrap"), Align::right);
    }
}

}  // namespace hemline
