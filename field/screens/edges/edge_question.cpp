#include "field/screens/edges/edge_question.h"

#include <algorithm>
#include <initializer_list>

#include "engine/roof/edge_shape.h"
#include "engine/roof/hip.h"
#include "engine/words/path_text.h"
#include "field/screens/edges/trim_choice.h"
#include "field/touch/box.h"

namespace hemline {

namespace {

constexpr float answer_mm = 14;

Side side_of(EdgeField field) {
    return field == EdgeField::left || field == EdgeField::corner_left ? Side::left : Side::right;
}

constexpr const char* out_words = phrase("90° outside");
constexpr const char* in_words = phrase("270°, square inside");
constexpr const char* straight_on = phrase("180°, straight on");
constexpr const char* not_said = phrase("not said");

Text trim_words(const Edge& edge, const Catalogue& catalogue) {
    const Trim* const trim = catalogue.of(edge);
    return trim == nullptr ? spaced(edge.trim) : trim_words(*trim, edge.kind, catalogue);
}

/// An angle that needs no keys, by its words; or the angle stated.
Text corner_words(const Edge& edge, Side side) {
    if (const auto stated = stated_corner(edge, side)) {
        return Text(print_degrees(*stated));
    }
    const End end = end_at(edge, side);
    const bool over_corner = stands_over_corner(edge.kind), out = turns_out(edge.kind);
    if (over_corner ? out : end == End::corner_out) {
        return say(out_words);
    }
    return (over_corner ? !out : end == End::corner_in) ? say(in_words) : say(not_said);
}

/// The edge with one thing changed.
template <class Change>
Edge with(Edge edge, Change change) {
    change(edge);
    return edge;
}

void add_ends(std::vector<EdgeAnswer>& answers, const Edge& edge, Side side) {
    const std::string target = side == Side::left ? "left end " : "right end ";
    for (const End end : ends_of(edge.kind, side)) {
        const Text words = spoken(end);
        answers.push_back({target + words.english(), words, with_end(edge, side, end)});
    }
}

/// The angles that need no keys: the square corner that the end implies; at a wall or an open end
/// all of them.
void add_corners(std::vector<EdgeAnswer>& answers, const Edge& edge, EdgeField field) {
    const Side side = side_of(field);
    const auto add = [&](const char* words, std::optional<Angle> angle) {
        answers.push_back({"corner " + std::string(words), say(words),
                           with(edge, [&](Edge& one) { stated_corner(one, side) = angle; })});
    };
    Edge as_said = edge;
    as_said.corner_left.reset();
    as_said.corner_right.reset();
    const Text standing = corner_words(as_said, side);
    for (const char* words : {not_said, out_words, in_words}) {
        if (standing == words) {
            add(words, std::nullopt);
        }
    }
    if (standing == not_said) {
        add(out_words, square_out);
        add(in_words, square_in);
        add(straight_on, half_turn);
    }
}

void add_seams(std::vector<EdgeAnswer>& answers, const Edge& edge) {
    for (const Seam seam : {Seam::snap_lock, Seam::mechanical, Seam::nail_strip, Seam::unknown}) {
        const Text words = spoken(seam);
        answers.push_back(
            {"seam " + words.english(), words, with(edge, [&](Edge& one) { one.seam = seam; })});
    }
}

}  // namespace

Text question_of(EdgeField field, const Edge& edge) {
    switch (field) {
        case EdgeField::name:
            return say("What is it called?");
        case EdgeField::kind:
            return say("What is it?");
        case EdgeField::left:
            return is_sloped(edge.kind) ? say("What stands at its foot?")
                                        : say("Seen from outside: what stands at its left end?");
        case EdgeField::right:
            return is_sloped(edge.kind) ? say("What stands at its top?")
                                        : say("Seen from outside: what stands at its right end?");
        case EdgeField::corner_left:
        case EdgeField::corner_right:
            return say("What angle do the eaves make there, inside the building?");
        case EdgeField::first:
            return say("Which side is fitted first?");
        case EdgeField::wrap:
            return say("Does a fascia wrap go on behind the trim?");
        case EdgeField::trim:
            return say("Which trim goes on it?");
        case EdgeField::fascia:
            return say("How is the fascia cut?");
        case EdgeField::other_pitch:
            return say("What pitch has the other roof?");
        case EdgeField::seam:
            break;
    }
    return say("How is the panels' seam closed?");
}

Text name_of(EdgeField field, const Edge& edge) {
    switch (field) {
        case EdgeField::name:
            return say("Name");
        case EdgeField::kind:
            return say("Kind");
        case EdgeField::left:
            return is_sloped(edge.kind) ? say("Foot") : say("Left end");
        case EdgeField::right:
            return is_sloped(edge.kind) ? say("Top") : say("Right end");
        case EdgeField::corner_left:
            return is_sloped(edge.kind) ? say("Corner at its foot") : say("Corner at the left");
        case EdgeField::corner_right:
            return is_sloped(edge.kind) ? say("Corner at its top") : say("Corner at the right");
        case EdgeField::first:
            return say("Fitted first");
        case EdgeField::wrap:
            return say("Fascia wrap");
        case EdgeField::trim:
            return say("Trim");
        case EdgeField::fascia:
            return say("Fascia");
        case EdgeField::other_pitch:
            return say("Other roof's pitch");
        case EdgeField::seam:
            break;
    }
    return say("Panels' seam");
}

Text answer_of(EdgeField field, const Edge& edge, const Catalogue& catalogue) {
    switch (field) {
        case EdgeField::name:
            return Text(edge.id);
        case EdgeField::kind:
            return spoken(edge.kind);
        case EdgeField::left:
        case EdgeField::right:
            return spoken(end_at(edge, side_of(field)));
        case EdgeField::corner_left:
        case EdgeField::corner_right:
            return corner_words(edge, side_of(field));
        case EdgeField::first:
            return spoken(edge.first);
        case EdgeField::wrap:
            return edge.wrap ? say("with a wrap") : say("no wrap");
        case EdgeField::trim:
            return trim_words(edge, catalogue);
        case EdgeField::fascia:
            return edge.fascia == Fascia::plumb ? say("plumb") : say("square-cut");
        case EdgeField::other_pitch:
            return edge.pitch2 ? Text(*edge.pitch2) : say("the same");
        case EdgeField::seam:
            break;
    }
    return spoken(edge.seam);
}

bool is_keyed(EdgeField field) {
    return field == EdgeField::name || field == EdgeField::other_pitch ||
           field == EdgeField::corner_left || field == EdgeField::corner_right;
}

std::vector<EdgeAnswer> answers_to(EdgeField field, const Edge& edge, const Catalogue& catalogue) {
    std::vector<EdgeAnswer> answers;
    switch (field) {
        case EdgeField::kind:
            for (const KindOfEdge& one : kinds_of_edge()) {
                const Text words = spoken(one.kind);
                answers.push_back(
                    {"kind " + words.english(), words, made_to(edge, one.kind, catalogue)});
            }
            break;
        case EdgeField::left:
        case EdgeField::right:
            add_ends(answers, edge, side_of(field));
            break;
        case EdgeField::first:
            for (const Side side : {Side::left, Side::right}) {
                const std::string word(word_of(side));
                answers.push_back({"fitted first from the " + word, spoken(side),
                                   with(edge, [&](Edge& one) { one.first = side; })});
            }
            break;
        case EdgeField::wrap:
            for (const bool wrap : {false, true}) {
                const Text words = wrap ? say("with a wrap") : say("no wrap");
                answers.push_back({"fascia wrap " + words.english(), words,
                                   with(edge, [&](Edge& one) { one.wrap = wrap; })});
            }
            break;
        case EdgeField::trim:
            for (const Trim* trim : trims_for(edge.kind, catalogue)) {
                if (trim->panels == Panels::under && must_lie_over(edge)) {
                    continue;
                }
                answers.push_back({"trim " + trim->id, trim_words(*trim, edge.kind, catalogue),
                                   with(edge, [&](Edge& one) { one.trim = trim->id; })});
            }
            break;
        case EdgeField::fascia:
            for (const Fascia fascia : {Fascia::plumb, Fascia::square_cut}) {
                const Text words = fascia == Fascia::plumb ? say("plumb") : say("square-cut");
                answers.push_back({"fascia " + words.english(), words,
                                   with(edge, [&](Edge& one) { one.fascia = fascia; })});
            }
            break;
        case EdgeField::seam:
            add_seams(answers, edge);
            break;
        case EdgeField::corner_left:
        case EdgeField::corner_right:
            add_corners(answers, edge, field);
            break;
        case EdgeField::other_pitch:
            answers.push_back({"pitch the same", say("the same"),
                               with(edge, [](Edge& one) { one.pitch2.reset(); })});
            break;
        case EdgeField::name:
            break;
    }
    return answers;
}

const EdgeAnswer* draw_answers_in(Ui& ui, const std::vector<EdgeAnswer>& answers,
                                  const Text& stands, bool long_words, Box& list) {
    const EdgeAnswer* touched = nullptr;
    const std::size_t wide = (long_words ? 1 : 2) + (ui.portrait() ? 0 : 1);
    for (std::size_t i = 0; i < answers.size(); i += wide) {
        const auto places =
            columns(take_top(list, ui.mm(answer_mm)), static_cast<int>(wide), ui.mm(gap_mm));
        for (std::size_t k = i; k < std::min(i + wide, answers.size()); ++k) {
            const bool chosen = answers[k].words == stands;
            if (ui.button(answers[k].target, answers[k].words, places[k - i],
                          chosen ? Look::chosen : Look::plain)) {
                touched = &answers[k];
            }
        }
        take_top(list, ui.mm(gap_mm));
    }
    return touched;
}

const EdgeAnswer* draw_edge_answers(Ui& ui, const std::vector<EdgeAnswer>& answers,
                                    const Text& stands, bool long_words, Box body) {
    Box list = ui.begin_scroll("answers", body);
    const float top = list.y;
    const EdgeAnswer* const touched = draw_answers_in(ui, answers, stands, long_words, list);
    ui.end_scroll(list.y - top - ui.mm(gap_mm));
    return touched;
}

}  // namespace hemline
