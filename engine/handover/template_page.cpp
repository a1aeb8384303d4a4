#include "engine/handover/template_page.h"

#include <algorithm>

#include "engine/handover/drawing.h"
#include "engine/handover/paper_words.h"
#include "engine/handover/svg.h"

namespace hemline {

namespace {

constexpr std::int64_t margin_nm = 12 * mm_nm;  // printers leave this much blank
constexpr std::int64_t spare_nm = mm_nm;        // so that rounding does not begin another sheet
constexpr std::int64_t head_nm = 24 * mm_nm;    // title and check bars
constexpr std::int64_t overlap_nm = 12 * mm_nm;
constexpr std::int64_t cross_nm = 4 * mm_nm;
constexpr std::int64_t bar_nm = 3 * mm_nm;
// Letters of 3 mm, at the width of a wide plain font (0.62 of the height), on the 186 mm of a
// narrow sheet.
constexpr std::size_t line_letters = 100, sheet_letters = 60;

struct Sheet {
    std::int64_t wide, tall;
    std::string_view name;
    /// Of the drawing's window on the sheet.
    [[nodiscard]] std::int64_t window_wide() const { return wide - 2 * margin_nm; }
    [[nodiscard]] std::int64_t window_tall() const {
        return tall - 2 * margin_nm - head_nm - spare_nm;
    }
};

Sheet sheet_of(Paper paper) {
    // ANSI Letter 8.5 × 11 in; ISO 216 A4 210 × 297 mm.
    return paper == Paper::letter ? Sheet{215'900'000, 279'400'000, "letter"}
                                  : Sheet{210 * mm_nm, 297 * mm_nm, "A4"};
}

/// The length of a word in letters of 3 mm.
std::int64_t long_nm(const DrawnWords& words) {
    return static_cast<std::int64_t>(letters_in(words.text)) * 19 * mm_nm / 10;
}

/// The metal and the words about it.
FlatBox bounds_of(const Drawing& drawing) {
    FlatBox box{drawing.least.x, drawing.least.y, drawing.most.x, drawing.most.y};
    for (const DrawnWords& words : drawing.words) {
        const bool upright = words.turned == Turned::upright;
        box.x0 = std::min(box.x0, words.at.x - (upright ? 3 * mm_nm : 0));
        box.x1 = std::max(box.x1, words.at.x + (upright ? mm_nm : long_nm(words)));
        box.y0 = std::min(box.y0, words.at.y - (upright ? long_nm(words) : 3 * mm_nm));
    }
    return {box.x0 - mm_nm, box.y0 - mm_nm, box.x1 + mm_nm, box.y1 + 2 * mm_nm};
}

std::string text_at(std::int64_t x, std::int64_t y, const std::string& text,
                    std::string_view more = "") {
    return "<text x=\"" + mm_text(x) + "\" y=\"" + mm_text(y) + "\"" + std::string(more) + ">" +
           xml_text(text) + "</text>\n";
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

/// Tiles in one direction: how many, and the step from each to the next.
struct Tiles {
    std::int64_t count, step;
};
Tiles tiles_over(std::int64_t size, std::int64_t window) {
    const std::int64_t step = window - overlap_nm;
    return {size <= window ? 1 : (size - overlap_nm + step - 1) / step, step};
}

/// The part of a drawing on a sheet.
struct Tile {
    std::int64_t column = 0, row = 0;
};

/// A drawing and the sheets that it takes.
struct Tiled {
    const Drawing& drawing;
    const Sheet& sheet;
    FlatBox box;
    Tiles across, down;
    std::vector<Tile> tiles = {};

    Tiled(const Drawing& drawn, const Sheet& paper)
        : drawing(drawn),
          sheet(paper),
          box(bounds_of(drawn)),
          across(tiles_over(box.x1 - box.x0, paper.window_wide())),
          down(tiles_over(box.y1 - box.y0, paper.window_tall())) {
        for (std::int64_t row = 0; row < down.count; ++row) {
            for (std::int64_t column = 0; column < across.count; ++column) {
                if (shows_more({column, row})) {
                    tiles.push_back({column, row});
                }
            }
        }
    }
    [[nodiscard]] bool has(const Tile& tile) const {
        return std::any_of(tiles.begin(), tiles.end(), [&](const Tile& one) {
            return one.column == tile.column && one.row == tile.row;
        });
    }
    [[nodiscard]] bool shows_more(const Tile& tile) const;
    [[nodiscard]] std::string crosses(const Tile& tile) const;
};

/// Whether the sheet has lines of the metal that are not on earlier sheets.
bool Tiled::shows_more(const Tile& tile) const {
    const std::int64_t x0 = box.x0 + tile.column * across.step + (tile.column > 0 ? overlap_nm : 0);
    const std::int64_t y0 = box.y0 + tile.row * down.step + (tile.row > 0 ? overlap_nm : 0);
    const std::int64_t x1 = box.x0 + tile.column * across.step + sheet.window_wide();
    const std::int64_t y1 = box.y0 + tile.row * down.step + sheet.window_tall();
    const auto lies_there = [&](const FlatPoint& a, const FlatPoint& b) {
        return std::max(a.x, b.x) > x0 && std::min(a.x, b.x) < x1 && std::max(a.y, b.y) > y0 &&
               std::min(a.y, b.y) < y1;
    };
    return std::any_of(drawing.lines.begin(), drawing.lines.end(), [&](const DrawnLine& line) {
        for (std::size_t i = 0; i + 1 < line.points.size() + (line.closed ? 1 : 0); ++i) {
            if (line.layer != Layer::mark &&
                lies_there(line.points[i], line.points[(i + 1) % line.points.size()])) {
                return true;
            }
        }
        return false;
    });
}

/// Crosses in the middle of the overlaps, at the same places of the drawing on both sheets.
std::string Tiled::crosses(const Tile& tile) const {
    const std::int64_t x0 = box.x0 + tile.column * across.step;
    const std::int64_t y0 = box.y0 + tile.row * down.step;
    const std::int64_t mid_x = x0 + sheet.window_wide() / 2;
    const std::int64_t mid_y = y0 + sheet.window_tall() / 2;
    std::string text;
    for (const std::int64_t next : {std::int64_t{-1}, std::int64_t{1}}) {
        if (has({tile.column + next, tile.row})) {
            const std::int64_t x = x0 + (next < 0 ? 0 : across.step) + overlap_nm / 2;
            text += cross(x, mid_y - 40 * mm_nm) + cross(x, mid_y + 40 * mm_nm);
        }
        if (has({tile.column, tile.row + next})) {
            const std::int64_t y = y0 + (next < 0 ? 0 : down.step) + overlap_nm / 2;
            text += cross(mid_x - 40 * mm_nm, y) + cross(mid_x + 40 * mm_nm, y);
        }
    }
    return text;
}

struct PageNumber {
    std::size_t page, pages;
};

/// Job, day and page above; then what the sheet shows, and the bars.
std::string head_svg(const Tiled& tiled, const Tile& tile, PageNumber number, const PaperHead& head,
                     const PageWords& words) {
    const Text where =
        tiled.tiles.size() == 1
            ? say("one sheet")
            : say("sheet row {1} of {2}, column {3} of {4}; lay crosses on crosses", tile.row + 1,
                  tiled.down.count, tile.column + 1, tiled.across.count);
    const std::string day = words.in_words(head.day);
    const std::string page = words.in_words(say("page {1} of {2}", number.page, number.pages));
    std::string text =
        text_at(margin_nm, margin_nm + 3 * mm_nm,
                shortened(head.job, sheet_letters) + (head.job.empty() ? "" : " · ") + day);
    text +=
        text_at(tiled.sheet.wide - margin_nm, margin_nm + 3 * mm_nm, page, " text-anchor=\"end\"");
    const auto lines = wrapped(tiled.drawing.title + "; " + words.in_words(where), line_letters);
    for (std::size_t i = 0; i < std::min<std::size_t>(2, lines.size()); ++i) {
        text += text_at(margin_nm, margin_nm + static_cast<std::int64_t>(7 + 4 * i) * mm_nm,
                        lines[i] + (i == 1 && lines.size() > 2 ? "…" : ""));
    }
    text +=
        bar(margin_nm + 14 * mm_nm, 101'600'000, words.in_words(say("{1}: measure it", "4 in")));
    return text + bar(margin_nm + 19 * mm_nm, 100 * mm_nm,
                      words.in_words(say("{1}: measure it", "100 mm")));
}

std::string sheet_html(const Tiled& tiled, const Tile& tile, PageNumber number,
                       const PaperHead& head, const PageWords& words) {
    const Sheet& sheet = tiled.sheet;
    const std::string wide = mm_text(sheet.window_wide());
    const std::string tall = mm_text(head_nm + sheet.window_tall());
    const std::string window = mm_text(sheet.window_wide()) + ' ' + mm_text(sheet.window_tall());
    const std::string margin = mm_text(margin_nm);
    std::string text = "<section><svg xmlns=\"http://www.w3.org/2000/svg\" width=\"" + wide +
                       "mm\" height=\"" + tall + "mm\" viewBox=\"" + margin + ' ' + margin + ' ' +
                       wide + ' ' + tall + "\">\n" + head_svg(tiled, tile, number, head, words);
    text += "<svg x=\"" + mm_text(margin_nm) + "\" y=\"" + mm_text(margin_nm + head_nm) +
            "\" width=\"" + mm_text(sheet.window_wide()) + "\" height=\"" +
            mm_text(sheet.window_tall()) + "\" viewBox=\"" +
            mm_text(tiled.box.x0 + tile.column * tiled.across.step) + ' ' +
            mm_text(tiled.box.y0 + tile.row * tiled.down.step) + ' ' + window + "\">\n";
    text += svg_elements(tiled.drawing) + tiled.crosses(tile);
    return text + "</svg></svg></section>\n";
}

}  // namespace

std::string template_page(const std::vector<Drawing>& ends, const std::string& title,
                          const PaperHead& head, Paper paper, const PageWords& words) {
    const Sheet sheet = sheet_of(paper);
    std::string text = "<!DOCTYPE html>\n<html lang=\"" + words.language +
                       "\"><head><meta charset=\"utf-8\"/><title>" + xml_text(title) +
                       "</title>\n<style>@page{size:" + std::string(sheet.name) +
                       ";margin:12mm}body{margin:0}svg{display:block}" +
                       "section{break-after:page}section:last-child{break-after:auto}" +
                       std::string(svg_style()) +
                       ".bar{fill:#000}.register{fill:none;stroke:#000;stroke-width:0.2}"
                       "</style></head><body>\n";
    std::vector<Tiled> all;
    std::size_t pages = 0;
    for (const Drawing& drawing : ends) {
        all.emplace_back(drawing, sheet);
        pages += all.back().tiles.size();
    }
    std::size_t page = 0;
    for (const Tiled& tiled : all) {
        for (const Tile& tile : tiled.tiles) {
            text += sheet_html(tiled, tile, {++page, pages}, head, words);
        }
    }
    return text + "</body></html>\n";
}

}  // namespace hemline
