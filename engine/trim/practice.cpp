#include "engine/trim/practice.h"

#include <algorithm>
#include <array>

#include "engine/measure/length_text.h"
#include "engine/trim/site_set.h"
#include "engine/words/csv.h"
#include "engine/words/quote.h"
#include "engine/words/result.h"

namespace hemline {

namespace {

/// What a length must be besides readable.
enum class Bound { any, above_zero, spacing, grid };

struct LengthRule {
    std::string_view key;
    Length Practice::*field;
    Bound bound;
};

constexpr std::array<LengthRule, 48> length_rules = {{
    {"stock", &Practice::stock, Bound::above_zero},
    {"lap", &Practice::lap, Bound::above_zero},
    {"sliver", &Practice::sliver, Bound::any},
    {"offcut_kept", &Practice::offcut_kept, Bound::any},
    {"cut_grid", &Practice::cut_grid, Bound::grid},
    {"kerf", &Practice::kerf, Bound::any},
    {"tab_gable", &Practice::tab_gable, Bound::any},
    {"tab_corner_out", &Practice::tab_corner_out, Bound::any},
    {"tab_corner_in", &Practice::tab_corner_in, Bound::any},
    {"tab_wall", &Practice::tab_wall, Bound::any},
    {"tab_open", &Practice::tab_open, Bound::any},
    {"tab_eave", &Practice::tab_eave, Bound::any},
    {"tab_ridge", &Practice::tab_ridge, Bound::any},
    {"tab_hip", &Practice::tab_hip, Bound::any},
    {"tab_valley", &Practice::tab_valley, Bound::any},
    {"turn_up", &Practice::turn_up, Bound::any},
    {"kick_out", &Practice::kick_out, Bound::any},
    {"apron_past", &Practice::apron_past, Bound::above_zero},
    {"apron_wrap", &Practice::apron_wrap, Bound::above_zero},
    {"wall_lap", &Practice::wall_lap, Bound::above_zero},
    {"lap_valley", &Practice::lap_valley, Bound::above_zero},
    {"seam_spacing", &Practice::seam_spacing, Bound::spacing},
    {"seam_height", &Practice::seam_height, Bound::above_zero},
    {"seam_foot", &Practice::seam_foot, Bound::any},
    {"seam_clear", &Practice::seam_clear, Bound::any},
    {"boot_clear", &Practice::boot_clear, Bound::any},
    {"hole_clear", &Practice::hole_clear, Bound::any},
    {"cricket_from", &Practice::cricket_from, Bound::any},
    {"panel_lip", &Practice::panel_lip, Bound::above_zero},
    {"side_gap", &Practice::side_gap, Bound::any},
    {"end_pan_least", &Practice::end_pan_least, Bound::above_zero},
    {"seam_off", &Practice::seam_off, Bound::any},
    {"order_grid", &Practice::order_grid, Bound::grid},
    {"valley_open", &Practice::valley_open, Bound::any},
    {"clip_spacing", &Practice::clip_spacing, Bound::spacing},
    {"clip_end", &Practice::clip_end, Bound::any},
    {"clip_zone", &Practice::clip_zone, Bound::any},
    {"clip_zone_spacing", &Practice::clip_zone_spacing, Bound::spacing},
    {"strip", &Practice::strip, Bound::above_zero},
    {"closure_leg", &Practice::closure_leg, Bound::above_zero},
    {"closure_ear", &Practice::closure_ear, Bound::any},
    {"cleat_clear", &Practice::cleat_clear, Bound::any},
    {"hem_notch_clear", &Practice::hem_notch_clear, Bound::any},
    {"bead_gap", &Practice::bead_gap, Bound::above_zero},
    {"bead_width", &Practice::bead_width, Bound::above_zero},
    {"screw_spacing", &Practice::screw_spacing, Bound::spacing},
    {"screw_margin", &Practice::screw_margin, Bound::any},
    {"hook_gap_most", &Practice::hook_gap_most, Bound::any},
}};

struct TapeWord {
    std::string_view word;
    Tape tape;
};

constexpr std::array<TapeWord, 7> tape_words = {{
    {"nist_hb44", {TapeClass::nist_hb44, true}},
    {"mid_1", {TapeClass::mid_1, true}},
    {"mid_2", {TapeClass::mid_2, true}},
    {"mid_3", {TapeClass::mid_3, true}},
    {"mid_1_no_hook", {TapeClass::mid_1, false}},
    {"mid_2_no_hook", {TapeClass::mid_2, false}},
    {"mid_3_no_hook", {TapeClass::mid_3, false}},
}};

Problem is_zero(std::string_view key, const std::string& value) {
    return {say("{1} {2} is zero.", spoken_rule(key), quoted(value)),
            say("Give {1} a length.", spoken_rule(key)), 0};
}

/// If screws and seams were closer together, they would fill a card and the memory.
constexpr Length spacing_least = inches(1);
/// With a finer grid there would be too many ways to divide an edge.
constexpr Length grid_least = tenths_of_millimetre(1);
/// Longer than any stick or strip that is carried to a roof.
constexpr Length stock_most = millimetres(100'000);

std::optional<Problem> is_too_small(const LengthRule& rule, Length length,
                                    const std::string& value) {
    const Text key = spoken_rule(rule.key);
    if (rule.bound == Bound::spacing && length < spacing_least) {
        return Problem{say("{1} {2} is closer than anything is set out.", key, quoted(value)),
                       say("Give {1} at least 1 in (25.4 mm).", key), 0};
    }
    if (rule.bound == Bound::grid && length < grid_least) {
        return Problem{say("{1} {2} is finer than anything is cut.", key, quoted(value)),
                       say("Give {1} at least 0.1 mm.", key), 0};
    }
    return {};
}

std::optional<Problem> set_length(Practice& practice, const LengthRule& rule,
                                  std::string_view value) {
    const Result<Length> length = parse_length(value);
    if (!length) {
        Problem problem = length.problem();
        problem.what = glued(spoken_rule(rule.key), " ", problem.what);
        return problem;
    }
    if (rule.bound != Bound::any && *length == Length()) {
        return is_zero(rule.key, std::string(value));
    }
    if (auto problem = is_too_small(rule, *length, std::string(value))) {
        return problem;
    }
    practice.*rule.field = *length;
    return {};
}

std::optional<Problem> set_fixed_line(Practice& practice, std::string_view value) {
    for (const auto& [word, line] : {std::pair("eave", FixedLine::eave),
                                     {"ridge", FixedLine::ridge},
                                     {"", FixedLine::unsaid}}) {
        if (value == word) {
            practice.fixed_line = line;
            return {};
        }
    }
    return Problem{say("{1} is no line that panels are pinned along.", quoted(value)),
                   say("Write eave or ridge, or leave it empty."), 0};
}

std::optional<Problem> set_rule(Practice& practice, std::string_view key, std::string_view value) {
    for (const LengthRule& rule : length_rules) {
        if (rule.key == key) {
            return set_length(practice, rule, value);
        }
    }
    if (key == "fixed_line") {
        return set_fixed_line(practice, value);
    }
    if (SiteSet site = set_site(practice.site, key, value); site.known) {
        return site.problem;
    }
    if (key != "tape") {
        return Problem{say("There is no rule named {1}.", quoted(key)),
                       say("Use a key of the practice file, such as lap, stock or screw_spacing.")};
    }
    for (const TapeWord& known : tape_words) {
        if (known.word == value) {
            practice.tape = known.tape;
            return {};
        }
    }
    return Problem{
        say("tape {1} is not a tape class.", quoted(value)),
        say("Write nist_hb44, mid_1, mid_2 or mid_3 (mid_2_no_hook without an end hook)."), 0};
}

Length longest_tab(const Practice& practice) {
    return std::max({practice.tab_gable, practice.tab_corner_out, practice.tab_corner_in,
                     practice.tab_wall, practice.tab_open, practice.tab_eave, practice.tab_ridge,
                     practice.tab_hip, practice.tab_valley, practice.turn_up, practice.kick_out,
                     end_fold_least(practice)});
}

Text in_quotes(Length length) { return glued("\"", length, "\""); }

/// Rules between values, without which no run would be possible.
std::optional<Problem> check_together(const Practice& practice) {
    const Length stock = practice.stock;
    if (practice.stock > stock_most) {
        return Problem{say("A stick of {1} is longer than any that is carried to a roof.", stock),
                       say("Give stock at most 328 ft (100 m).")};
    }
    for (const auto& [key, lap] :
         {std::pair{"lap", practice.lap}, std::pair{"lap_valley", practice.lap_valley}}) {
        if (lap >= practice.stock) {
            return Problem{say("{1} {2} is not shorter than the stock of {3}.", spoken_rule(key),
                               in_quotes(lap), stock),
                           say("Make the lap shorter, or the stock longer.")};
        }
        if (practice.bead_gap >= lap) {
            return Problem{say("{1} {2} does not fit in the {3} of {4}.", spoken_rule("bead_gap"),
                               in_quotes(practice.bead_gap), spoken_rule(key), lap),
                           say("Make the gap between the beads smaller than the lap.")};
        }
    }
    const Length tab_most = longest_tab(practice);
    if (std::max(practice.lap, practice.lap_valley) + tab_most * 2 >= practice.stock) {
        return Problem{say("The lap and two tabs of {1} leave nothing of the stock of {2}.",
                           in_quotes(tab_most), stock),
                       say("Make the tabs shorter, or the stock longer.")};
    }
    if (practice.sliver > practice.stock) {
        return Problem{
            say("sliver {1} is longer than the stock of {2}.", in_quotes(practice.sliver), stock),
            say("Make the sliver limit shorter, or the stock longer.")};
    }
    if (practice.apron_wrap >= practice.apron_past) {
        return Problem{
            say("The wall leg round a corner, {1}, is not shorter than the headwall's metal "
                "past the corner, {2}.",
                practice.apron_wrap, practice.apron_past),
            say("Make the wall leg shorter, or the metal past the corner longer.")};
    }
    if (practice.seam_foot >= practice.seam_spacing) {
        return Problem{say("{1} {2} leaves nothing of a pan of {3}.", spoken_rule("seam_foot"),
                           in_quotes(practice.seam_foot), practice.seam_spacing),
                       say("Make the seam's foot narrower, or the pan wider.")};
    }
    if (practice.kerf + practice.cut_grid >= practice.stock) {
        return Problem{
            say("The kerf and the marks that cuts lie on are together not shorter than the stock "
                "of {1}.",
                stock),
            say("Make them shorter, or the stock longer.")};
    }
    return {};
}

}  // namespace

Result<Practice> with_rule(const Practice& practice, std::string_view key, std::string_view value) {
    Practice changed = practice;
    if (auto problem = set_rule(changed, key, value)) {
        return *problem;
    }
    if (auto problem = check_together(changed)) {
        return *problem;
    }
    return changed;
}

std::optional<Length> rule_length(const Practice& practice, std::string_view key) {
    for (const LengthRule& rule : length_rules) {
        if (rule.key == key) {
            return practice.*rule.field;
        }
    }
    return {};
}

Result<Practice> with_stock(const Practice& practice, Length stock) {
    Practice changed = practice;
    changed.stock = stock;
    if (auto problem = check_together(changed)) {
        return *problem;
    }
    return changed;
}

Result<Practice> practice_of(const std::vector<PracticeRule>& rules) {
    Practice practice;
    for (const PracticeRule& rule : rules) {
        if (auto problem = set_rule(practice, rule.key, rule.value)) {
            return *problem;
        }
    }
    if (auto problem = check_together(practice)) {
        return *problem;
    }
    return practice;
}

Result<std::vector<PracticeRule>> read_practice_rules(std::string_view csv) {
    const auto read = read_table(csv);
    if (const auto* problem = std::get_if<TableProblem>(&read)) {
        return said_of(*problem);
    }
    const Table& table = *std::get_if<Table>(&read);
    const auto key = table.column("key");
    const auto value = table.column("value");
    const auto source = table.column("source");
    const auto meaning = table.column("meaning");
    if (!key || !value || !source || !meaning || table.header.size() != 4) {
        return Problem{Text("Line 1: the practice file has other columns than it should."),
                       Text("Write the header key,value,source,meaning.")};
    }
    std::vector<PracticeRule> rules;
    for (const auto& row : table.rows) {
        const std::string at = "Line " + std::to_string(row[*key].line) + ": ";
        const std::string& name = row[*key].text;
        for (const PracticeRule& before : rules) {
            if (before.key == name) {
                return Problem{Text(at + "the rule " + quoted(name) + " stands there twice."),
                               Text("Keep one of the two.")};
            }
        }
        Practice trial;
        if (auto problem = set_rule(trial, name, row[*value].text)) {
            const bool is_key = spoken_rule(name) == name;
            problem->what = glued(at, is_key ? "" : name + ": ", problem->what);
            return *problem;
        }
        rules.push_back({name, row[*value].text, row[*source].text, row[*meaning].text});
    }
    return rules;
}

FixedLine fixed_line_of(const Practice& practice) {
    return practice.fixed_line == FixedLine::unsaid ? FixedLine::eave : practice.fixed_line;
}

Length end_fold_least(const Practice& practice) { return practice.seam_height + sixteenths(8); }

Length lap_on(EdgeKind kind, const Practice& practice) {
    return facts_of(kind).in_water ? practice.lap_valley : practice.lap;
}

Length lap_on(const Edge& edge, const Practice& practice) {
    return edge.lap.value_or(lap_on(edge.kind, practice));
}

Length screw_gap_least(Length lap) { return lap + lap_margin_least * 2; }

std::string_view lap_rule(EdgeKind kind) { return facts_of(kind).in_water ? "lap_valley" : "lap"; }

Result<Practice> with_lap(const Practice& practice, EdgeKind kind, Length lap) {
    if (lap <= Length()) {
        return is_zero(std::string(lap_rule(kind)), print_length(lap));
    }
    Practice changed = practice;
    (facts_of(kind).in_water ? changed.lap_valley : changed.lap) = lap;
    if (auto problem = check_together(changed)) {
        return *problem;
    }
    return changed;
}

Length end_allowance(End end, Side side, Side first, const Practice& practice) {
    switch (end) {
        case End::gable:
            return practice.tab_gable;
        case End::corner_out:
            return side == first ? practice.tab_corner_out : Length();
        case End::corner_in:
            return side == first ? practice.tab_corner_in : Length();
        case End::wall:
            return practice.tab_wall;
        case End::open:
            return practice.tab_open;
        case End::eave:
            return practice.tab_eave;
        case End::ridge:
            return practice.tab_ridge;
        case End::hip:
            return practice.tab_hip;
        case End::valley:
            return practice.tab_valley;
    }
    stop("an end without its allowance");
}

}  // namespace hemline
