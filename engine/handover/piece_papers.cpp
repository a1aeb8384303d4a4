#include "engine/handover/piece_papers.h"

#include <algorithm>

#include "engine/handover/svg.h"
#include "engine/work/piece_pattern.h"

namespace hemline {

namespace {

constexpr Length past_work = inches(1);
constexpr std::int64_t mm_nm = 1'000'000;
constexpr std::int64_t wide_nm = 180 * mm_nm, tall_nm = 42 * mm_nm;  // of the metal on the page
constexpr std::int64_t flags_nm = 26 * mm_nm, flag_row_nm = 5 * mm_nm;
constexpr std::size_t flag_rows = 4;  // so that marks close together keep their numbers apart

std::string on_one_line(std::string text) {
    std::replace_if(
        text.begin(), text.end(),
        [](char c) { return static_cast<unsigned char>(c) < 0x20 || c == 0x7F; }, ' ');
    return text;
}

/// `part` of `whole` on a line so long; 0 where there is no whole.
std::int64_t scaled(std::int64_t part, std::int64_t whole, std::int64_t line) {
    return whole == 0
               ? 0
               : static_cast<std::int64_t>(static_cast<double>(part) / static_cast<double>(whole) *
                                           static_cast<double>(line));
}

/// The numbers of the marks above the metal, each on a stem down to its place.
std::string flags_svg(const Card& card) {
    std::string text;
    for (std::size_t i = 0; i < card.marks.size(); ++i) {
        const std::int64_t x = scaled(card.marks[i].at.nm(), card.cut.nm(), wide_nm);
        const std::int64_t y = flag_row_nm * static_cast<std::int64_t>(1 + i % flag_rows);
        text += "<path class=\"cut\" d=\"M" + mm_text(x) + ',' + mm_text(y + mm_nm) + " V" +
                mm_text(flags_nm) + "\"/><text text-anchor=\"middle\" x=\"" + mm_text(x) +
                "\" y=\"" + mm_text(y) + "\">" + std::to_string(i + 1) + "</text>\n";
    }
    return text;
}

/// The flat metal pulled to the width and height that there are.
std::string metal_svg(const FlatPattern& pattern, const std::string& title, Marks marks) {
    Drawing drawing = drawing_of(pattern, title, marks);
    drawing.words.clear();
    auto& lines = drawing.lines;
    lines.erase(std::remove_if(lines.begin(), lines.end(),
                               [](const DrawnLine& line) { return line.layer == Layer::mark; }),
                lines.end());
    return "<svg x=\"0\" y=\"" + mm_text(flags_nm) + "\" width=\"" + mm_text(wide_nm) +
           "\" height=\"" + mm_text(tall_nm) + "\" viewBox=\"0 0 " + mm_text(drawing.most.x) + ' ' +
           mm_text(drawing.most.y) + "\" preserveAspectRatio=\"none\" class=\"metal\">\n" +
           svg_elements(drawing) + "</svg>\n";
}

std::string marks_table(const Card& card, Marks marks) {
    std::string html =
        "<table><tr><th></th><th>on the tape</th><th>mark</th><th>do</th><th>waste</th></tr>\n";
    for (std::size_t i = 0; i < card.marks.size(); ++i) {
        const Mark& mark = card.marks[i];
        html += "<tr><td>" + std::to_string(i + 1) + "</td><td><b>" +
                xml_text(print_length(mark.at, marks)) + "</b></td><td>" +
                xml_text(spoken(mark.kind).english()) + "</td><td>" +
                xml_text(deed_of(mark.kind).english()) + "</td><td>to the " +
                std::string(word_of(mark.toward)) + "</td></tr>\n";
    }
    return html + "</table>\n";
}

std::string screws_words(const Card& card, Marks marks) {
    std::string words;
    for (const Length screw : card.screws) {
        words += (words.empty() ? "Screws at " : ", ") + print_length(screw, marks);
    }
    return words.empty() ? words : words + '.';
}

std::string paragraph(const std::string& words, const char* style = "p") {
    return words.empty() ? words
                         : "<" + std::string(style) + ">" + xml_text(words) + "</" + style + ">\n";
}

}  // namespace

std::string title_of(const Card& card, Marks marks) {
    std::string title = "Edge " + on_one_line(card.edge) + ", piece " + std::to_string(card.piece) +
                        ", " + card.trim + ", cut " + print_length(card.cut, marks) +
                        ", upper face up";
    if (!card.waits_for.empty()) {
        title = "NOT YET TO CUT: " + on_one_line(card.waits_for.english()) + " " + title;
    }
    return title;
}

std::vector<Drawing> end_drawings(const FlatPattern& pattern, const std::string& title,
                                  Marks marks) {
    std::vector<Drawing> ends;
    for (const Side side : {Side::left, Side::right}) {
        const std::string name = std::string(word_of(side)) + " end: ";
        ends.push_back(
            part_of(pattern, name + title, marks, side, work_reach(pattern, side) + past_work));
    }
    return ends;
}

std::string card_page(const Card& card, const std::optional<FlatPattern>& pattern, Marks marks,
                      Paper paper) {
    const std::string title = title_of(card, marks);
    const std::string wide = mm_text(wide_nm), tall = mm_text(flags_nm + tall_nm);
    std::string html =
        "<!DOCTYPE html>\n<html lang=\"en\"><head><meta charset=\"utf-8\"/><title>" +
        xml_text(title) +
        "</title>\n<style>@page{size:" + (paper == Paper::letter ? "letter" : "A4") +
        ";margin:12mm}body{margin:0;font:12pt sans-serif}h1{font-size:34pt;margin:0 0 2mm}"
        "h2{font-size:14pt;margin:0 0 2mm}p{margin:0 0 2mm}table{border-collapse:collapse}"
        "td,th{padding:1mm 4mm 1mm 0;text-align:left;border-bottom:0.2mm solid #777}" +
        std::string(svg_style()) +
        ".metal path{vector-effect:non-scaling-stroke;stroke-width:1px}</style></head><body>\n";
    html +=
        "<h2>" +
        xml_text("Edge " + on_one_line(card.edge) + ", " + card.trim_name.english() + ", piece " +
                 std::to_string(card.piece) + " of " + std::to_string(card.pieces)) +
        "</h2>\n<h1>Cut " + xml_text(print_length(card.cut, marks)) + "</h1>\n";
    html += paragraph(card.waits_for.empty() ? "" : "NOT YET TO CUT: " + card.waits_for.english(),
                      "h2");
    html += paragraph((card.offcut ? "Take the offcut of " : "Take a stick of ") +
                      print_length(card.stick_length, marks) + ". Hook the tape on the " +
                      std::string(word_of(card.hooks)) + " end, face toward you.");
    html += "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"" + wide + "mm\" height=\"" + tall +
            "mm\" viewBox=\"0 0 " + wide + ' ' + tall + "\" overflow=\"visible\">\n" +
            flags_svg(card) + (pattern ? metal_svg(*pattern, title, marks) : "") + "</svg>\n";
    html += paragraph("Marks are in their places along the metal; its width is not to scale.");
    html += marks_table(card, marks);
    html += paragraph(screws_words(card, marks));
    html += paragraph(
        "Cut with gloves and eye protection. Local codes, the maker's printed instructions and a "
        "licensed professional go before this page.");
    return html + "</body></html>\n";
}

}  // namespace hemline
