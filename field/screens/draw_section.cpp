#include "field/screens/draw_section.h"

#include <imgui.h>

#include <array>
#include <cmath>

namespace hemline {

namespace {

constexpr double deck_in = 9;      ///< of the deck that is shown
constexpr double fascia_in = 5.5;  ///< height of the board that is shown
constexpr double board_in = 0.75;
constexpr double kick_from_face_degrees = 30;

double inches_of(Length length) {
    return static_cast<double>(length.nm()) / static_cast<double>(inches(1).nm());
}

struct Point {
    double x = 0, y = 0;  ///< inches from the edge of the deck, x toward the building, y up
};

Point along(Point from, double degrees, double length) {
    const double a = degrees * 3.14159265358979 / 180;
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

void fill(const Ui& ui, const Sheet& sheet, const std::array<Point, 4>& corners, Colour colour) {
    ui.ink()->AddQuadFilled(sheet.at(corners[0]), sheet.at(corners[1]), sheet.at(corners[2]),
                            sheet.at(corners[3]), colour);
    ui.ink()->AddQuad(sheet.at(corners[0]), sheet.at(corners[1]), sheet.at(corners[2]),
                      sheet.at(corners[3]), ui.colours().hairline, ui.mm(0.3F));
}

void stroke(const Ui& ui, const Sheet& sheet, Point a, Point b, Colour colour, float width_mm) {
    ui.ink()->AddLine(sheet.at(a), sheet.at(b), colour, ui.mm(width_mm));
}

}  // namespace

void draw_eave_section(Ui& ui, const Trim& trim, Slope pitch, Fascia fascia, Box box) {
    const double theta = degrees_of(pitch);
    // The face hangs plumb, or at right angles to the deck before a square-cut fascia.
    const double down = fascia == Fascia::plumb ? -90 : theta - 90;
    const Point edge;
    const Point deck_end = along(edge, theta, deck_in);
    const Point fascia_end = along(edge, down, fascia_in);
    const double top = deck_end.y + 1;
    const double bottom = std::min(fascia_end.y, -inches_of(leg_width(trim, LegName::face)) - 1.5);
    const double left = std::min({-1.5, fascia_end.x - 1.5});
    const double wide = deck_end.x - left;
    const float scale = static_cast<float>(
        std::min(static_cast<double>(box.w) / wide, static_cast<double>(box.h) / (top - bottom)));
    const Sheet sheet{
        {box.x - static_cast<float>(left) * scale, box.y + static_cast<float>(top) * scale}, scale};

    const Point under = along(edge, theta - 90, board_in);
    fill(ui, sheet, {edge, deck_end, along(deck_end, theta - 90, board_in), under},
         ui.colours().metal_low);
    const Point board = along(edge, down + 90, board_in);
    fill(ui, sheet,
         {under, along(under, down, fascia_in),
          along(along(board, down, fascia_in), theta - 90, board_in),
          along(board, theta - 90, board_in)},
         ui.colours().metal);

    const Point flange = along(edge, theta, inches_of(leg_width(trim, LegName::flange)));
    const Point face = along(edge, down, inches_of(leg_width(trim, LegName::face)));
    const double kick_way = down - kick_from_face_degrees;
    const Point kick = along(face, kick_way, inches_of(leg_width(trim, LegName::kick)));
    const Point hem = along(kick, kick_way + 165, inches_of(leg_width(trim, LegName::hem)));
    stroke(ui, sheet, flange, edge, ui.colours().chalk, 1.0F);
    stroke(ui, sheet, edge, face, ui.colours().chalk, 1.0F);
    stroke(ui, sheet, face, kick, ui.colours().chalk, 1.0F);
    stroke(ui, sheet, kick, hem, ui.colours().chalk, 1.0F);
    const ImVec2 flange_at = sheet.at(along(edge, theta, 2));
    ui.text(flange_at.x, flange_at.y - ui.line_height(Size::small) - ui.mm(2), "flange",
            Size::small, Align::right);
    const ImVec2 face_at = sheet.at(along(edge, down, 2));
    ui.text(face_at.x - ui.mm(2), face_at.y, "face", Size::small, Align::right);
}

}  // namespace hemline
