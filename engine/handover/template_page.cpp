#include "engine/handover/template_page.h"

#include <algorithm>

#include "engine/handover/svg.h"

namespace hemline {

namespace {

constexpr std::int64_t mm_nm = 1'000'000;
constexpr std::int64_t margin_nm = 12 * mm_nm;  // printers leave this much blank
constexpr std::int64_t head_nm = 26 * mm_nm;    // title and check bars
constexpr std::int64_t overlap_nm = 12 * mm_nm;
constexpr std::int64_t cross_nm = 4 * mm_nm;
constexpr std::int64_t bar_nm = 3 * mm_nm;

struct Sheet {
    std::int64_t wide, tall;
    std::string_view name;
    /// Of the drawing's window on the sheet.
    [[nodiscard]] std::int64_t window_wide() const { return wide - 2 * margin_nm; }
    [[nodiscard]] std::int64_t window_tall() const { return tall - 2 * margin_nm - head_nm; }
};

Sheet sheet_of(Paper paper) {
    // ANSI Letter 8.5 × 11 in; ISO 216 A4 210 × 297 mm.
    return paper == Paper::letter ? Sheet{215'900'000, 279'400'000, "letter"}
                                  : Sheet{210 * mm_nm, 297 * mm_nm, "A4"};
}

/// Room about the metal for its dimensions.
FlatBox bounds_of(const Drawing& drawing) {
    FlatBox box{drawing.least.x - 8 * mm_nm, drawing.least.y - 42 * mm_nm,
                drawing.most.x + 8 * mm_nm, drawing.most.y + 8 * mm_nm};
    for (const DrawnWords& words : drawing.words) {
        box.x1 = std::max(box.x1, words.at.x + 50 * mm_nm * (words.at.x > drawing.most.x ? 1 : 0));
    }
    return box;
}

std::string text_at(std::int64_t x, std::int64_t y, const std::string& text) {
    return "<text x=\"" + mm_text(x) + "\" y=\"" + mm_text(y) + "\">" + xml_text(text) +
           "</text>\n";
}

std::string bar(std::int64_t y, std::int64_t length, const std::string& name) {
    return "<rect class=\"bar\" x=\"" + mm_text(margin_nm) + "\" y=\"" + mm_text(y) +
           "\" width=\"" + mm_text(length) + "\" height=\"" + mm_text(bar_nm) + "\"/>\n" +
           text_at(margin_nm + length + 3 * mm_nm, y + bar_nm, name);
}

std::string cross(std::int64_t x, std::int64_t y) {
    return "<path class=\"register\" d=\"M" + mm_text(x - cross_nm) + ',' + mm_text(y) + " L" +
           mm_text(x + cross_nm) + ',' + mm_text(y) + " M" + mm_text(x) + ',' +
           mm_text(y - cross_nm) + " L" + mm_text(x) + ',' + mm_text(y + cross_nm) + "\"/>\n";
}

/// Tiles one way: how many, and how far each steps on.
struct Tiles {
    std::int64_t count, step;
};
Tiles tiles_over(std::int64_t size, std::int64_t window) {
    const std::int64_t step = window - overlap_nm;
    return {size <= window ? 1 : (size - overlap_nm + step - 1) / step, step};
}

struct Tile {
    std::int64_t column, row, columns, rows;
};

/// Crosses in the middle of the overlaps, at the same places of the drawing on both sheets.
std::string crosses(const FlatBox& box, const Tile& tile, Tiles across, Tiles down,
                    const Sheet& sheet) {
    std::string text;
    const auto line = [](std::int64_t from, std::int64_t index, std::int64_t step) {
        return from + index * step + overlap_nm / 2;
    };
    const std::int64_t mid_x = box.x0 + tile.column * across.step + sheet.window_wide() / 2;
    const std::int64_t mid_y = box.y0 + tile.row * down.step + sheet.window_tall() / 2;
    for (std::int64_t column = tile.column; column <= tile.column + 1; ++column) {
        if (column > 0 && column < tile.columns) {
            const std::int64_t x = line(box.x0, column, across.step);
            text += cross(x, mid_y - 40 * mm_nm) + cross(x, mid_y + 40 * mm_nm);
        }
    }
    for (std::int64_t row = tile.row; row <= tile.row + 1; ++row) {
        if (row > 0 && row < tile.rows) {
            const std::int64_t y = line(box.y0, row, down.step);
            text += cross(mid_x - 40 * mm_nm, y) + cross(mid_x + 40 * mm_nm, y);
        }
    }
    return text;
}

std::string sheet_html(const Drawing& drawing, const FlatBox& box, const Tile& tile, Tiles across,
                       Tiles down, const Sheet& sheet, const PageWords& words) {
    const std::string wide = mm_text(sheet.wide), tall = mm_text(sheet.tall);
    const std::int64_t top = margin_nm + head_nm;
    const std::int64_t shift_x = margin_nm - box.x0 - tile.column * across.step;
    const std::int64_t shift_y = top - box.y0 - tile.row * down.step;
    const Text where = tile.columns * tile.rows == 1
                           ? say("one sheet")
                           : say("sheet row {1} of {2}, column {3} of {4}; lay crosses on crosses",
                                 tile.row + 1, tile.rows, tile.column + 1, tile.columns);
    std::string text = "<section><svg xmlns=\"http://www.w3.org/2000/svg\" width=\"" + wide +
                       "mm\" height=\"" + tall + "mm\" viewBox=\"0 0 " + wide + ' ' + tall +
                       "\">\n";
    text += text_at(margin_nm, margin_nm + 3 * mm_nm, drawing.title + "; " + words.in_words(where));
    text += bar(margin_nm + 6 * mm_nm, 101'600'000, words.in_words(say("{1}: measure it", "4 in")));
    text +=
        bar(margin_nm + 12 * mm_nm, 100 * mm_nm, words.in_words(say("{1}: measure it", "100 mm")));
    text += "<svg x=\"" + mm_text(margin_nm) + "\" y=\"" + mm_text(top) + "\" width=\"" +
            mm_text(sheet.window_wide()) + "\" height=\"" + mm_text(sheet.window_tall()) +
            "\" viewBox=\"" + mm_text(margin_nm - shift_x) + ' ' + mm_text(top - shift_y) + ' ' +
            mm_text(sheet.window_wide()) + ' ' + mm_text(sheet.window_tall()) + "\">\n";
    text += svg_elements(drawing) + crosses(box, tile, across, down, sheet);
    return text + "</svg></svg></section>\n";
}

}  // namespace

std::string template_page(const std::vector<Drawing>& ends, const std::string& title, Paper paper,
                          const PageWords& words) {
    const Sheet sheet = sheet_of(paper);
    std::string text = "<!DOCTYPE html>\n<html lang=\"" + words.language +
                       "\"><head><meta charset=\"utf-8\"/><title>" + xml_text(title) +
                       "</title>\n<style>@page{size:" + std::string(sheet.name) +
                       ";margin:0}body{margin:0}svg{display:block}" +
                       "section{page-break-after:always}section:last-child{page-break-after:auto}" +
                       std::string(svg_style()) +
                       ".bar{fill:#000}.register{fill:none;stroke:#000;stroke-width:0.2}"
                       "</style></head><body>\n";
    for (const Drawing& drawing : ends) {
        const FlatBox box = bounds_of(drawing);
        const Tiles across = tiles_over(box.x1 - box.x0, sheet.window_wide());
        const Tiles down = tiles_over(box.y1 - box.y0, sheet.window_tall());
        for (std::int64_t row = 0; row < down.count; ++row) {
            for (std::int64_t column = 0; column < across.count; ++column) {
                const Tile tile{column, row, across.count, down.count};
                text += sheet_html(drawing, box, tile, across, down, sheet, words);
            }
        }
    }
    return text + "</body></html>\n";
}

}  // namespace hemline
