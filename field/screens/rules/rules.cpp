// The rules of this job: touch a rule and key in its new length, such as "the lap must be 8 in
// here".
#include <algorithm>
#include <iterator>

#include "engine/words/result.h"
#include "field/screens/page/frame.h"
#include "field/screens/page/keypad.h"
#include "field/screens/page/readback.h"
#include "field/screens/rules/fixed_lines.h"
#include "field/screens/rules/rule_meaning.h"
#include "field/screens/rules/site_rules.h"
#include "field/screens/screens.h"
#include "field/touch/box.h"

namespace hemline {

namespace {

constexpr float row_mm = 12, above_keys_mm = 60;

constexpr std::string_view fixed_line = "fixed_line";

/// New sticks have a separate screen, and the tape's class is not a length.
constexpr const char* rules_shown[] = {
    "fixed_line",    "seam_clear",   "boot_clear",        "hole_clear",
    "cricket_from",  "lap",          "lap_valley",        "cut_grid",
    "kerf",          "sliver",       "offcut_kept",       "screw_spacing",
    "screw_margin",  "bead_gap",     "bead_width",        "hem_notch_clear",
    "cleat_clear",   "seam_spacing", "seam_height",       "seam_foot",
    "closure_leg",   "closure_ear",  "tab_gable",         "tab_corner_out",
    "tab_corner_in", "tab_eave",     "tab_ridge",         "tab_hip",
    "tab_valley",    "turn_up",      "kick_out",          "apron_past",
    "apron_wrap",    "wall_lap",     "tab_wall",          "tab_open",
    "strip",         "panel_lip",    "side_gap",          "end_pan_least",
    "seam_off",      "order_grid",   "valley_open",       "clip_spacing",
    "clip_end",      "clip_zone",    "clip_zone_spacing",
};

/// What cuts may be rounded to: the tape's marks.
struct Grid {
    const char* value;
    Length length;
};
constexpr Grid grids[] = {{"1/16 in", sixteenths(1)},
                          {"1/32 in", nanometres(sixteenths(1).nm() / 2)},
                          {"1 mm", millimetres(1)}};

Text value_of(const State& state, const std::string& key) {
    if (key == fixed_line) {
        const auto* const line = std::find_if(
            std::begin(pinned_lines), std::end(pinned_lines),
            [&](const PinnedLine& one) { return one.line == state.job.practice.fixed_line; });
        return line == std::end(pinned_lines) ? say("the eave (assumed)") : say(line->words);
    }
    const auto length = rule_length(state.job.practice, key);
    return length ? Text(CloseLength{*length}) : Text();
}

/// The edge with a chosen lap that this practice leaves no room for, and why; empty: none.
Text no_room_on(const Job& job, const Practice& practice) {
    for (const EdgeWork& work : job.edges) {
        const auto fits = with_lap(practice, work.edge.kind, lap_on(work.edge, practice));
        if (work.edge.lap && !fits) {
            return say("Edge {1} has its own lap: {2}", work.edge.id, said(fits.problem()));
        }
    }
    return {};
}

Wished set_to(const State& state, RuleDraft& draft, const std::string& key,
              const std::string& value) {
    Wished wish;
    const Result<Practice> changed = with_rule(state.job.practice, key, value);
    if (!changed) {
        draft.length.refused = said(changed.problem());
        return wish;
    }
    if (Text why = no_room_on(state.job, *changed); !why.empty()) {
        draft.length.refused = std::move(why);
        return wish;
    }
    wish = Keep{RuleSet{key, value}, Where{Screen::rules, {}}};
    return wish;
}

Wished draw_grids(Ui& ui, const State& state, RuleDraft& draft) {
    const Frame frame = open_frame(ui, state, say("Rule · {1}", spoken_rule("cut_grid")),
                                   {{"leave", say("Back to the rules"), Look::primary}});
    Wished wish = frame.wish;
    Box body = frame.body;
    take_top(body, draw_rule_meaning(ui, state, "cut_grid", body) + ui.mm(gap_mm));
    const std::vector<Box> places =
        columns(take_top(body, ui.mm(row_mm)), static_cast<int>(std::size(grids)), ui.mm(gap_mm));
    for (std::size_t i = 0; i < std::size(grids); ++i) {
        const bool chosen = state.job.practice.cut_grid == grids[i].length;
        if (ui.button("grid " + std::string(grids[i].value), Text(grids[i].value), places[i],
                      chosen ? Look::chosen : Look::plain)) {
            wish = set_to(state, draft, "cut_grid", grids[i].value);
        }
    }
    take_top(body, ui.mm(gap_mm));
    take_top(body, draw_band(ui, draft.length.refused, body));
    ui.paragraph(body.x, body.y, body.w,
                 say("With 1 mm the whole job is keyed in and shown in millimeters."));
    if (frame.tapped == "leave") {
        draft.key.clear();
    }
    return wish;
}

Wished draw_lines(Ui& ui, const State& state, RuleDraft& draft) {
    const std::string key(fixed_line);
    const Frame frame =
        open_frame(ui, state, say("Rule · {1}: {2} now", spoken_rule(key), value_of(state, key)),
                   {{"leave", say("Back to the rules"), Look::primary}});
    Wished wish = frame.wish;
    Box body = frame.body;
    const std::vector<Box> places = columns(
        take_top(body, ui.mm(row_mm)), static_cast<int>(std::size(pinned_lines)), ui.mm(gap_mm));
    for (std::size_t i = 0; i < std::size(pinned_lines); ++i) {
        const bool chosen = state.job.practice.fixed_line == pinned_lines[i].line;
        if (ui.button("line " + std::string(pinned_lines[i].value), say(pinned_lines[i].words),
                      places[i], chosen ? Look::chosen : Look::plain)) {
            wish = set_to(state, draft, key, pinned_lines[i].value);
        }
    }
    take_top(body, ui.mm(gap_mm));
    Box words = ui.begin_scroll("line words", body);
    const float top = words.y;
    take_top(words, draw_rule_meaning(ui, state, key, words) + ui.mm(gap_mm));
    take_top(words,
             ui.paragraph(words.x, words.y, words.w,
                          say("Closures there are screwed to the deck; all others are riveted to "
                              "their pans. Panels over a valley are pinned at the ridge.")));
    ui.end_scroll(words.y - top);
    if (frame.tapped == "leave") {
        draft.key.clear();
    }
    return wish;
}

Wished draw_rule(Ui& ui, const State& state, RuleDraft& draft, const std::string& key) {
    const bool metric = state.marks == Marks::millimetre;
    take_typed(ui, draft.length, metric);
    const Frame frame = open_frame(
        ui, state, say("Rule · {1}: {2} now", spoken_rule(key), value_of(state, key)),
        {{"leave", say("Back to the rules")},
         {"keep", say("Use on this job"), is_empty(draft.length) ? Look::off : Look::primary}},
        {metric ? digit_keys : sixteenth_keys, above_keys_mm});
    draw_length_keys(ui, draft.length, frame.keys, metric);
    Box body = frame.body;
    take_top(body, draw_length_fields(ui, draft.length, body, tapes_of(state)) + ui.mm(gap_mm));
    Box words = ui.begin_scroll("rule words", body);
    const float top = words.y;
    take_top(words, draw_band(ui, draft.length.refused, words));
    take_top(words, draw_rule_meaning(ui, state, key, words));
    ui.end_scroll(words.y - top);
    if (frame.tapped == "leave") {
        draft.key.clear();
    } else if (frame.tapped == "keep" && !is_empty(draft.length)) {
        const Length length = shown_length(draft.length, metric);
        return set_to(state, draft, key,
                      print_length(length, metric ? Marks::millimetre : Marks::sixteenth));
    }
    return frame.wish;
}

/// One of a few answers, a touch each.
Wished draw_site_rule(Ui& ui, const State& state, RuleDraft& draft, const std::string& key) {
    const Frame frame =
        open_frame(ui, state, say("Rule · {1}: {2} now", spoken_rule(key), site_words(state, key)),
                   {{"leave", say("Back to the rules"), Look::primary}});
    Wished wish = frame.wish;
    Box list = ui.begin_scroll("site answers", frame.body);
    const float top = list.y;
    take_top(list, draw_rule_meaning(ui, state, key, list) + ui.mm(gap_mm));
    take_top(list, draw_band(ui, draft.length.refused, list));
    const std::vector<SiteAnswer> answers = site_answers(state, key);
    const std::string now = site_value(state.job.practice.site, key);
    const std::size_t wide = ui.portrait() ? 2 : 4;
    for (std::size_t i = 0; i < answers.size(); i += wide) {
        const auto places =
            columns(take_top(list, ui.mm(row_mm)), static_cast<int>(wide), ui.mm(gap_mm));
        for (std::size_t k = i; k < std::min(i + wide, answers.size()); ++k) {
            if (ui.button("answer " + answers[k].value, answers[k].words, places[k - i],
                          answers[k].value == now ? Look::chosen : Look::plain)) {
                wish = set_to(state, draft, key, answers[k].value);
            }
        }
        take_top(list, ui.mm(gap_mm));
    }
    ui.end_scroll(list.y - top);
    if (frame.tapped == "leave") {
        draft = {};
    }
    return wish;
}

/// The rows of the list: lengths, then what is said of the site.
struct RuleRow {
    std::string key;
    Text value;
};
std::vector<RuleRow> rows_shown(const State& state) {
    std::vector<RuleRow> shown;
    for (const char* key : rules_shown) {
        shown.push_back({key, value_of(state, key)});
    }
    for (const std::string& key : site_keys(state)) {
        shown.push_back({key, site_words(state, key)});
    }
    return shown;
}

}  // namespace

Wished draw_rules(Ui& ui, const State& state, Drafts& drafts) {
    RuleDraft& draft = drafts.rule;
    if (!draft.key.empty()) {
        return draft.key == "cut_grid"   ? draw_grids(ui, state, draft)
               : draft.key == fixed_line ? draw_lines(ui, state, draft)
               : is_site_key(draft.key)  ? draw_site_rule(ui, state, draft, draft.key)
                                         : draw_rule(ui, state, draft, draft.key);
    }
    const Frame frame = open_frame(ui, state, say("Rules of this job"),
                                   {{"leave", say("Back to the roof"), Look::primary}});
    Wished wish = frame.wish;
    Box list = ui.begin_scroll("rules", frame.body);
    const float top = list.y;
    const std::vector<RuleRow> shown = rows_shown(state);
    const std::size_t wide = ui.portrait() ? 1 : 2;
    for (std::size_t i = 0; i < shown.size(); i += wide) {
        const auto places =
            columns(take_top(list, ui.mm(row_mm)), static_cast<int>(wide), ui.mm(gap_mm));
        for (std::size_t k = i; k < std::min(i + wide, shown.size()); ++k) {
            const auto& [key, value] = shown[k];
            if (ui.button("rule " + key, glued(spoken_rule(key), ": ", value), places[k - i],
                          Look::plain, Size::bold)) {
                draft.key = key;
                if (draft.keyed != key) {  // what was keyed in for another rule is no answer
                    draft.keyed = key;
                    draft.length = {};
                    const auto length = rule_length(state.job.practice, key);
                    draft.length.field = length ? field_of(*length) : draft.length.field;
                }
            }
        }
        take_top(list, ui.mm(gap_mm));
    }
    ui.end_scroll(list.y - top - ui.mm(gap_mm));
    if (frame.tapped == "leave") {
        wish = Go{{Screen::roof, {}}};
    }
    return wish;
}

}  // namespace hemline
