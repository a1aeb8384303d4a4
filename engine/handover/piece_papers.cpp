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

std::string marks_table(const Card& card, Marks marks, const PageWords& words) {
    const auto written = [&](const Text& text) { return xml_text(words.in_words(text)); };
    std::string html = "<table><tr><th></th>";
    for (const Text& heading :
         {say("on the tape"), say_of("tape", "mark"), say("do"), say("waste")}) {
        html += "<th>" + written(heading) + "</th>";
    }
    html += "</tr>\n";
    for (std::size_t i = 0; i < card.marks.size(); ++i) {
        const Mark& mark = card.marks[i];
        html += "<tr><td>" + std::to_string(i + 1) + "</td><td><b>" +
                xml_text(print_length(mark.at, marks)) + "</b></td><td>" +
                written(spoken(mark.kind)) + "</td><td>" + written(deed_of(mark.kind)) +
                "</td><td>" +
                written(mark.toward == Side::left ? say("to the left") : say("to the right")) +
                "</td></tr>\n";
    }
    return html + "</table>\n";
}

Text screws_words(const Card& card, Marks marks) {
    std::vector<Text> places;
    for (const Length screw : card.screws) {
        places.emplace_back(print_length(screw, marks));
    }
    return places.empty() ? Text() : say("Screws at {1}.", joined(places, ", "));
}

/// What to take, and where the tape hooks.
Text take_words(const Card& card, Marks marks) {
    const std::string stick = print_length(card.stick_length, marks);
    const Text take =
        card.offcut ? say("Take the offcut of {1}.", stick) : say("Take a stick of {1}.", stick);
    const Text hook = card.hooks == Side::left
                          ? say("Hook the tape on the left end, face toward you.")
                          : say("Hook the tape on the right end, face toward you.");
    return joined({take, hook}, " ");
}

/// Empty when the piece can be cut.
Text waits_words(const Card& card) {
    return card.waits_for.empty() ? Text() : say("NOT YET TO CUT: {1}", card.waits_for);
}

std::string paragraph(const std::string& words, const char* style = "p") {
    return words.empty() ? words
                         : "<" + std::string(style) + ">" + xml_text(words) + "</" + style + ">\n";
}

}  // namespace

std::string title_of(const Card& card, Marks marks, const PageWords& words) {
    const Text title = say("Edge {1}, piece {2}, {3}, cut {4}, upper face up", card.edge,
                           card.piece, card.trim, print_length(card.cut, marks));
    return words.in_words(joined({waits_words(card), title}, " "));
}

std::vector<Drawing> end_drawings(const FlatPattern& pattern, const std::string& title, Marks marks,
                                  const PageWords& words) {
    std::vector<Drawing> ends;
    for (const Side side : {Side::left, Side::right}) {
        const std::string name = words.in_words(side == Side::left ? say("left end: {1}", title)
                                                                   : say("right end: {1}", title));
        ends.push_back(part_of(pattern, name, marks, side, work_reach(pattern, side) + past_work));
    }
    return ends;
}

std::string card_page(const Card& card, const std::optional<FlatPattern>& pattern, Marks marks,
                      Paper paper, const PageWords& words) {
    const auto written = [&](const Text& text) { return words.in_words(text); };
    const std::string title = title_of(card, marks, words);
    const std::string wide = mm_text(wide_nm), tall = mm_text(flags_nm + tall_nm);
    std::string html =
        "<!DOCTYPE html>\n<html lang=\"" + words.language +
        "\"><head><meta charset=\"utf-8\"/><title>" + xml_text(title) +
        "</title>\n<style>@page{size:" + (paper == Paper::letter ? "letter" : "A4") +
        ";margin:12mm}body{margin:0;font:12pt sans-serif}h1{font-size:34pt;margin:0 0 2mm}"
        "h2{font-size:14pt;margin:0 0 2mm}p{margin:0 0 2mm}table{border-collapse:collapse}"
        "td,th{padding:1mm 4mm 1mm 0;text-align:left;border-bottom:0.2mm solid #777}" +
        std::string(svg_style()) +
        ".metal path{vector-effect:non-scaling-stroke;stroke-width:1px}</style></head><body>\n";
    html += paragraph(written(say("Edge {1}, {2}, piece {3} of {4}", card.edge, card.trim_name,
                                  card.piece, card.pieces)),
                      "h2");
    html += paragraph(written(say("Cut {1}", print_length(card.cut, marks))), "h1");
    html += paragraph(written(waits_words(card)), "h2");
    html += paragraph(written(take_words(card, marks)));
    html += "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"" + wide + "mm\" height=\"" + tall +
            "mm\" viewBox=\"0 0 " + wide + ' ' + tall + "\" overflow=\"visible\">\n" +
            flags_svg(card) + (pattern ? metal_svg(*pattern, title, marks) : "") + "</svg>\n";
    html += paragraph(
        written(say("Marks are in their places along the metal; its width is not to scale.")));
    html += marks_table(card, marks, words);
    html += paragraph(written(screws_words(card, marks)));
    html += paragraph(
        written(say("Cut with gloves and eye protection. Local codes, the maker's printed "
                    "instructions and a licensed professional go before this page.")));
    return html + "</body></html>\n";
}

}  // namespace hemline
