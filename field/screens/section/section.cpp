// The trim's cross-section, edited on its drawing: a dimension is touched, another value keyed in,
// and drawing, girth, brake marks and the bends that cannot be made change at once.
#include <algorithm>

#include "engine/measure/angle_text.h"
#include "engine/roof/edge_shape.h"
#include "engine/trim/brake.h"
#include "engine/words/result.h"
#include "engine/work/job_sections.h"
#include "engine/work/piece_pattern.h"
#include "field/screens/page/frame.h"
#include "field/screens/page/keypad.h"
#include "field/screens/page/readback.h"
#include "field/screens/screens.h"
#include "field/screens/section/draw_profile.h"
#include "field/screens/section/section_words.h"
#include "field/state/edge_view.h"
#include "field/touch/box.h"

namespace hemline {

namespace {

constexpr float row_mm = 12, words_part = 0.34F, above_keys_mm = 60;
constexpr std::size_t digits_most = 5;

/// The section with what is keyed in so far.
Section as_keyed(Section section, const SectionDraft& draft, bool metric) {
    if (draft.leg >= 0 && !is_empty(draft.length)) {
        const auto picked = static_cast<std::size_t>(draft.leg);
        const LegName name = section.legs[picked].name;
        for (SectionLeg& leg : section.legs) {  // both hems of a cap have the same width
            leg.width = leg.name == name ? shown_length(draft.length, metric) : leg.width;
        }
    }
    if (draft.bend >= 0 && !draft.degrees.empty()) {
        const auto angle = parse_degrees(draft.degrees);
        if (angle) {
            section.legs[static_cast<std::size_t>(draft.bend) + 1].bend = {
                std::nullopt, draft.up ? -*angle : *angle};
        }
    }
    if (draft.hem_kind) {
        for (SectionLeg& leg : section.legs) {  // both hems of a cap are of the same kind
            leg.hem = leg.hem == Hem::none ? Hem::none : *draft.hem_kind;
        }
    }
    return section;
}

Text brake_marks_words(const Blank& blank) {
    const std::vector<Text> marks(blank.marks.begin(), blank.marks.end());
    return say("Brake marks: {1}", joined(marks, ", "));
}

/// What is wrong with the section; else its girth and marks; then the bends that cannot be made.
float draw_findings(Ui& ui, const Section& section, const std::vector<double>& bends, Box box) {
    const float top = box.y;
    const auto wrong = check_section(section);
    const Result<Blank> blank = blank_of(section, bends);
    if (wrong || !blank) {
        const Problem& problem = wrong ? *wrong : blank.problem();
        return draw_band(ui, said(problem), box);
    }
    for (const BrakeStep& step : brake_order(section, bends, *blank)) {
        if (!step.in_the_way.empty()) {
            take_top(box, draw_band(ui,
                                    say("The bend before the {1} cannot be made: {2}",
                                        spoken(section.legs[step.bend + 1].name), step.in_the_way),
                                    box));
        }
    }
    take_top(box,
             ui.paragraph(box.x, box.y, box.w, say("Stretch-out {1}", blank->girth), Size::bold));
    take_top(box, ui.paragraph(box.x, box.y, box.w, brake_marks_words(*blank), Size::small));
    return box.y - top;
}

/// Of a section that can be made; what is wrong takes what room there is.
float findings_height(const Ui& ui, const Section& section, const std::vector<double>& bends,
                      float w) {
    const Result<Blank> blank = blank_of(section, bends);
    if (check_section(section) || !blank) {
        return ui.page().h;
    }
    const auto steps = brake_order(section, bends, *blank);
    const bool all_made = std::all_of(
        steps.begin(), steps.end(), [](const BrakeStep& step) { return step.in_the_way.empty(); });
    return all_made ? ui.line_height(Size::bold) +
                          ui.paragraph_height(w, brake_marks_words(*blank), Size::small) + ui.mm(1)
                    : ui.page().h;
}

void key_degrees(SectionDraft& draft, char key) {
    if (key == '\b') {
        if (!draft.degrees.empty()) {
            draft.degrees.pop_back();
        }
    } else if (key != 0 && draft.degrees.size() < digits_most &&
               (key != '.' || draft.degrees.find('.') == std::string::npos)) {
        draft.degrees += key;
    }
}

void pick(SectionDraft& draft, const Touched& picked) {
    if (picked.leg >= 0 || picked.bend >= 0 || picked.hem >= 0) {
        draft = {picked.leg, picked.bend, picked.hem, {}, "", picked.bend >= 0, {}};
        draft.length.field = 1;  // no leg is a foot wide
    }
}

/// The three kinds of hem; a touch draws the section with it.
void draw_hems(Ui& ui, const Section& section, SectionDraft& draft, Box row) {
    const Hem now = section.legs[static_cast<std::size_t>(draft.hem)].hem;
    constexpr Hem hems[] = {Hem::open, Hem::closed, Hem::tear_drop};
    const auto places = columns(row, 3, ui.mm(gap_mm));
    for (std::size_t i = 0; i < 3; ++i) {
        if (ui.button(words_of(hems[i]).english(), words_of(hems[i]), places[i],
                      now == hems[i] ? Look::chosen : Look::plain)) {
            draft.hem_kind = hems[i];
        }
    }
}

/// The event that saves it: the face or flange of the edge where the edge states it, else the legs
/// of the trim.
Fact kept(const EdgeWork& work, const Section& section, int leg) {
    if (leg >= 0) {
        const SectionLeg& changed = section.legs[static_cast<std::size_t>(leg)];
        Edge edge = work.edge;
        if (changed.name == LegName::face && edge.face) {
            edge.face = changed.width;
            return EdgeAdded{said_anew(work, edge)};
        }
        if (changed.name == LegName::flange && edge.flange) {
            edge.flange = changed.width;
            return EdgeAdded{said_anew(work, edge)};
        }
    }
    return SectionChosen{section.trim, legs_of(section)};
}

/// The actions of the draft while something is being keyed in.
std::vector<Action> actions_for(const State& state, const Section& section, bool keying,
                                bool good) {
    if (keying) {
        return {way_back({"drop", say("Leave it as it was")}),
                {"keep", say("Keep it so"), good ? Look::primary : Look::off}};
    }
    const bool own = state.job.sections.count(section.trim) > 0;
    return {{"leave", say("Roof")},
            {"as catalogue", say("As the catalogue"), own ? Look::plain : Look::off},
            {"done", say("Done"), Look::primary}};
}

Where back_from(const Where& where) {
    Where back = where;
    back.screen = Screen::folded;
    return back;
}

double deck_fall(const Section& section, const Edge& edge) {
    const bool on_deck = section.legs[deck_leg(section)].lies == LiesOn::deck;
    const double pitch = degrees_of(edge.pitch.value_or(rise_in_12(6)));
    const bool up = is_cap(edge.kind);
    return !on_deck ? 90 : up ? -pitch : pitch;
}

}  // namespace

Wished draw_section(Ui& ui, const State& state, Drafts& drafts) {
    SectionDraft& draft = drafts.section;
    const EdgeWork* const work = edge_of(state, state.where.edge);
    const Result<Card> card = card_in_hand(state, state.where);
    const auto standing =
        card ? section_of(*card, state.sections) : Result<Section>(card.problem());
    if (work == nullptr || !standing) {
        return Go{{Screen::roof, {}}};
    }
    const int legs = static_cast<int>(standing->legs.size());
    if (draft.leg >= legs || draft.bend >= legs - 1 || draft.hem >= legs) {
        draft = {};  // the draft was for a different section
    }
    const bool metric = state.marks == Marks::millimetre;
    if (draft.leg >= 0) {
        take_typed(ui, draft.length, metric);
    }
    const Section section = as_keyed(*standing, draft, metric);
    const auto bends = bends_of(section, roof_at(work->edge));
    const SectionDraft now = draft;
    const bool keying = now.leg >= 0 || now.bend >= 0 || now.hem >= 0;
    const bool good =
        bends && !check_section(section) && blank_of(section, *bends) && section != *standing;
    const KeysWanted keys = !keying || now.hem >= 0 ? KeysWanted{}
                            : now.bend >= 0
                                ? KeysWanted{digit_keys, above_keys_mm}
                                : KeysWanted{metric ? digit_keys : sixteenth_keys, above_keys_mm};
    const Frame frame = open_frame(ui, state, say("{1} · section", card->trim_name),
                                   actions_for(state, section, keying, good), keys);
    Wished wish = frame.wish;
    Box body = frame.body;
    if (now.leg >= 0) {
        draw_length_keys(ui, draft.length, frame.keys, metric);
        take_top(body, draw_length_fields(ui, draft.length, body, tapes_of(state)) + ui.mm(gap_mm));
    } else if (now.bend >= 0) {
        key_degrees(draft, draw_digit_keys(ui, frame.keys, true));
        const auto places = columns(take_top(body, ui.mm(row_mm)), 2, ui.mm(gap_mm));
        for (const bool up : {true, false}) {
            if (ui.button(up ? "turned up" : "turned down", up ? say("up") : say("down"),
                          places[up ? 0 : 1], now.up == up ? Look::chosen : Look::plain)) {
                draft.up = up;
            }
        }
        ui.text(body.x, body.y, say("{1}° bend", (now.degrees.empty() ? "…" : now.degrees)),
                Size::title);
        take_top(body, ui.line_height(Size::title) + ui.mm(gap_mm));
    }
    if (now.hem >= 0) {
        draw_hems(ui, section, draft, take_top(body, ui.mm(row_mm)));
        take_top(body, ui.mm(gap_mm));
    }
    if (!bends) {
        ui.paragraph(body.x, body.y, body.w, said(bends.problem()));
    } else {
        const float most = body.h * words_part;
        const Box words =
            take_bottom(body, std::min(most, findings_height(ui, section, *bends, body.w)));
        pick(draft, draw_profile(ui,
                                 {section,
                                  *bends,
                                  deck_fall(section, work->edge),
                                  now.hem >= 0 ? now.hem : now.leg,
                                  now.bend,
                                  state.marks,
                                  now.hem,
                                  {},
                                  true},
                                 body));
        ui.end_scroll(draw_findings(ui, section, *bends, ui.begin_scroll("section words", words)));
    }
    if (frame.tapped == "keep" && good) {
        wish = Keep{kept(*work, section, now.leg), state.where};
    } else if (frame.tapped == "drop") {
        draft = {};
    } else if (frame.tapped == "as catalogue") {
        wish = Keep{SectionChosen{section.trim, {}}, state.where};
    } else if (frame.tapped == "done") {
        wish = Go{back_from(state.where)};
    } else if (frame.tapped == "leave") {
        wish = Go{{Screen::roof, {}}};
    }
    return wish;
}

}  // namespace hemline
