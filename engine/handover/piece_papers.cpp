#include "engine/handover/piece_papers.h"

#include <algorithm>

#include "engine/handover/drawing.h"
#include "engine/handover/paper_words.h"
#include "engine/handover/sheets.h"
#include "engine/handover/spread.h"
#include "engine/handover/svg.h"
#include "engine/work/fixing.h"
#include "engine/work/mark_deeds.h"
#include "engine/work/piece_pattern.h"

namespace hemline {

namespace {

constexpr Length past_work = sixteenths(8);  // a lap's end then fits across one sheet
constexpr std::int64_t wide_nm = 180 * mm_nm, tall_nm = 28 * mm_nm;  // of the metal on the page
constexpr std::int64_t flags_nm = 16 * mm_nm;                        // above it
constexpr std::int64_t number_foot_nm = 5 * mm_nm, letter_nm = 5 * mm_nm / 2;
constexpr int points_most = 11, points_least = 9, length_points = 28;

/// `part` of `whole`, scaled to a line of that length; 0 where `whole` is 0.
std::int64_t scaled(std::int64_t part, std::int64_t whole, std::int64_t line) {
    return whole == 0
               ? 0
               : static_cast<std::int64_t>(static_cast<double>(part) / static_cast<double>(whole) *
                                           static_cast<double>(line));
}

/// Marks at the same place on the tape share a flag: "2–4".
struct Flag {
    std::int64_t at = 0;  ///< on the page
    std::string numbers;
};

std::vector<Flag> flags_of(const Card& card) {
    std::vector<Flag> flags;
    for (std::size_t i = 0; i < card.marks.size();) {
        std::size_t last = i;
        while (last + 1 < card.marks.size() && card.marks[last + 1].at == card.marks[i].at) {
            ++last;
        }
        flags.push_back({scaled(card.marks[i].at.nm(), card.cut.nm(), wide_nm),
                         std::to_string(i + 1) + (last > i ? "–" + std::to_string(last + 1) : "")});
        i = last + 1;
    }
    return flags;
}

/// The numbers of the marks in a row above the metal, each with a line down to its place.
std::string flags_svg(const Card& card) {
    const std::vector<Flag> flags = flags_of(card);
    std::vector<Spread> wanted;
    for (const Flag& flag : flags) {
        const auto letters = static_cast<std::int64_t>(letters_in(flag.numbers));
        wanted.push_back({flag.at, letters * letter_nm + mm_nm});
    }
    const std::vector<std::int64_t> middles = spread_out(wanted, 0, wide_nm);
    std::string text;
    for (std::size_t i = 0; i < flags.size(); ++i) {
        const std::string x = mm_text(middles[i]);
        text += "<path class=\"cut\" d=\"M" + x + ',' + mm_text(number_foot_nm + mm_nm) + " L" +
                mm_text(flags[i].at) + ',' + mm_text(flags_nm) +
                "\"/><text class=\"number\" text-anchor=\"middle\" x=\"" + x + "\" y=\"" +
                mm_text(number_foot_nm) + "\">" + flags[i].numbers + "</text>\n";
    }
    return text;
}

/// The flat metal stretched to the width and height on the page.
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

Text waste_words(const Card& card, const Mark& mark) {
    if (!leaves_waste(card, mark)) {
        return say_of("waste", "none");
    }
    return mark.toward == Side::left ? say("to the left") : say("to the right");
}

void add_marks(Sheets& sheets, const Card& card, const std::optional<FlatPattern>& pattern,
               Marks marks) {
    sheets.table({{{}, 8},
                  {say("on the tape"), 38, ColumnLook::strong},
                  {say_of("tape", "mark"), 29},
                  {say("do"), 84},
                  {say("waste"), 27}});
    for (std::size_t i = 0; i < card.marks.size(); ++i) {
        const Mark& mark = card.marks[i];
        sheets.row({Text(std::to_string(i + 1)), Text(print_length(mark.at, marks)),
                    spoken(mark.kind), deed_of(card, mark, pattern), waste_words(card, mark)});
    }
}

Text places_words(const ScrewLine& line, Marks marks) {
    std::vector<Text> places;
    for (const Length screw : line.at) {
        places.emplace_back(print_length(screw, marks));
    }
    return joined(places, ", ");
}

/// The places of every line of screws, and how far in it lies; of screws in closures also their
/// places from a seam, which decide on the roof.
Text screws_words(const Card& card, Marks marks) {
    if (count_of(card.screws) == 0) {
        return card.screws.empty() ? say("No screw: it hangs in its hems.")
                                   : say("No screw: nowhere does a whole head lie in the metal.");
    }
    if (clips_hems(card)) {
        return say("Clips outside each hem at {1}.", places_words(card.screws.front(), marks));
    }
    std::vector<Text> told;
    if (card.screwed_to == ScrewedTo::closures) {
        told.push_back(say("Two screws a pan, {1} from a seam.", card.screw_places));
    }
    const bool alike = card.screws.front().at == card.screws.back().at;
    for (const ScrewLine& line : card.screws) {
        const bool near = &line == &card.screws.front();
        if (!line.at.empty() && (near || !alike)) {
            told.push_back(
                alike  ? say("Screws at {1}.", places_words(line, marks))
                : near ? say("Screws of the leg on this roof at {1}.", places_words(line, marks))
                       : say("Screws of the leg on the other roof at {1}.",
                             places_words(line, marks)));
        }
    }
    const auto leg = std::find_if(card.legs.begin(), card.legs.end(), [&](const Leg& one) {
        return one.name == card.screws.front().leg;
    });
    if (card.role == TrimRole::main && leg != card.legs.end() && leg->name != LegName::kick) {
        told.push_back(say("Their line: {1} from the outer edge of the leg.",
                           print_length(screw_line_of(leg->width), marks)));
    }
    return joined(told, " ");
}

/// What to take, and where the tape hooks.
Text take_words(const Card& card, Marks marks) {
    const std::string stick = print_length(card.stick_length, marks);
    const Text take =
        card.offcut ? say("Take the drop of {1}.", stick) : say("Take a stick of {1}.", stick);
    const Text hook = card.hooks == Side::left
                          ? say("Hook the tape on the left end; {1}.", leg_toward_you(card))
                          : say("Hook the tape on the right end; {1}.", leg_toward_you(card));
    return joined({take, hook}, " ");
}

/// Empty when the piece can be cut.
Text waits_words(const Card& card) {
    return card.waits_for.empty() ? Text() : say("NOT YET TO CUT: {1}", card.waits_for);
}

/// The whole card, on sheets whose letters are set.
void add_card(Sheets& sheets, const Card& card, const std::optional<FlatPattern>& pattern,
              Marks marks, const Text& about) {
    const std::string wide = mm_text(wide_nm), tall = mm_text(flags_nm + tall_nm);
    sheets.heading(about);
    sheets.title(say("Cut {1}", print_length(card.cut, marks)), length_points);
    if (!card.waits_for.empty()) {
        sheets.heading(waits_words(card));
    }
    sheets.paragraph(take_words(card, marks));
    sheets.drawing("<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"" + wide + "mm\" height=\"" +
                       tall + "mm\" viewBox=\"0 0 " + wide + ' ' + tall +
                       "\" overflow=\"visible\">\n" + flags_svg(card) +
                       (pattern ? metal_svg(*pattern, about.english(), marks) : "") + "</svg>\n",
                   static_cast<int>((flags_nm + tall_nm) / mm_nm));
    sheets.note(say("Marks are in their places along the metal; its width is not to scale."));
    add_marks(sheets, card, pattern, marks);
    sheets.paragraph(screws_words(card, marks));
    sheets.note(
        say("Cut with gloves and eye protection. Local codes, the maker's printed "
            "instructions and a licensed professional go before this page."));
}

}  // namespace

std::string title_of(const Card& card, Marks marks, const PageWords& words) {
    const Text title = say("Edge {1}, piece {2}, {3}, cut {4}, upper face up", card.edge,
                           card.piece, card.trim_name, print_length(card.cut, marks));
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
                      const PaperHead& head, Paper paper, const PageWords& words) {
    const Text about =
        say("Edge {1}, {2}, piece {3} of {4}", card.edge, card.trim_name, card.piece, card.pieces);
    // A card is one sheet: what has many marks gets smaller letters.
    int points = points_most;
    Sheets sheets(paper, head, about, points, words);
    add_card(sheets, card, pattern, marks, about);
    while (sheets.count() > 1 && points > points_least) {
        sheets = Sheets(paper, head, about, --points, words);
        add_card(sheets, card, pattern, marks, about);
    }
    return sheets.html(std::string(svg_style()) +
                       ".metal path{vector-effect:non-scaling-stroke;stroke-width:1px}"
                       ".number{font:bold 4px sans-serif;fill:#000}");
}

}  // namespace hemline
