#include "engine/work/confirm.h"

#include <algorithm>
#include <set>
#include <string_view>

#include "engine/work/card.h"
#include "engine/work/procedure_words.h"

namespace hemline {
namespace {

/// Parts of the procedures.
constexpr std::string_view before_part = "Before", foreman_part = "Foreman";

bool is_under_the_trim(Each each) { return each == Each::wrap_piece || each == Each::cleat_piece; }

/// Looked at before anything else, or asked of the foreman: by itself.
bool stands_alone(const Step& step) {
    return step.rule->part == before_part || step.rule->part == foreman_part;
}

bool can_be_confirmed(const Step& step) {
    return !step.done && step.waits_for.empty() && step.doubt.empty() && as_asked(step).has_value();
}

/// A piece of cleat that is only cut to its length.
bool is_plain(const Card& card) {
    return card.role == TrimRole::cleat &&
           std::all_of(card.marks.begin(), card.marks.end(),
                       [](const Mark& mark) { return mark.kind == MarkKind::end_cut; });
}

bool is_same_mark(const Mark& one, const Mark& other) {
    return one.kind == other.kind && one.at == other.at && one.toward == other.toward;
}

}  // namespace

std::optional<Answer> as_asked(const Step& step) {
    if (step.rule->each == Each::sent_back) {
        return {};
    }
    switch (step.rule->asks) {
        case Asks::done:
            return Answer();
        case Asks::seen:
            return Answer{AnswerKind::seen, {}, 0, {}};
        case Asks::count:
            return step.count_least
                       ? std::optional(Answer{AnswerKind::count, {}, *step.count_least, {}})
                       : std::nullopt;
        case Asks::length:
            return step.length_least && step.rule->each == Each::trim_lap
                       ? std::optional(Answer{AnswerKind::length, *step.length_least, 0, {}})
                       : std::nullopt;
        default:
            return {};
    }
}

std::optional<std::size_t> next_for_installer(const std::vector<Step>& steps) {
    const std::optional<std::size_t> next = next_step(steps);
    if (!next || held_step(steps) || steps[*next].rule->asks == Asks::tick) {
        return next;
    }
    std::set<std::string_view> parts = {steps[*next].rule->part};
    for (const std::size_t i : confirmed_with(steps, *next)) {
        parts.insert(steps[i].rule->part);
    }
    const auto cut = std::find_if(steps.begin(), steps.end(), [&](const Step& step) {
        return !step.done && parts.count(step.rule->part) > 0 && step.rule->asks == Asks::cut &&
               is_under_the_trim(step.rule->each) && step.waits_for.empty();
    });
    return cut == steps.end() ? next : std::optional(static_cast<std::size_t>(cut - steps.begin()));
}

std::vector<std::size_t> confirmed_with(const std::vector<Step>& steps, std::size_t next) {
    std::vector<std::size_t> together;
    const Step& first = steps[next];
    if (!can_be_confirmed(first)) {
        return together;
    }
    const bool of_trim = first.piece > 0 && role_of(first.rule->each) == TrimRole::main;
    std::string_view part = first.rule->part;  // that the confirmation has come to
    const auto goes_along = [&](const Step& step) {
        const bool same_part = step.rule->part == part;
        return of_trim ? step.piece == first.piece && !is_under_the_trim(step.rule->each)
                       : (same_part && is_under_the_trim(step.rule->each)) ||
                             (step.piece == 0 &&
                              (same_part || (!stands_alone(first) && !stands_alone(step))));
    };
    for (std::size_t i = next; i < steps.size() && goes_along(steps[i]); ++i) {
        part = steps[i].rule->part;
        if (can_be_confirmed(steps[i])) {
            together.push_back(i);
        } else if (!steps[i].done && steps[i].rule->asks != Asks::length) {
            break;
        }
    }
    return together;
}

bool are_cut_in_one_go(const Card& one, const Card& other) {
    const bool own_sticks = one.stick > 0 && other.stick > 0 && one.stick != other.stick &&
                            one.stick_from == Length() && other.stick_from == Length();
    const bool alike = one.cut == other.cut && one.covers == other.covers &&
                       one.left == other.left && one.right == other.right &&
                       one.hooks == other.hooks && one.hand == other.hand &&
                       one.screws == other.screws &&
                       std::equal(one.marks.begin(), one.marks.end(), other.marks.begin(),
                                  other.marks.end(), is_same_mark);
    return one.role == other.role && own_sticks && (alike || (is_plain(one) && is_plain(other)));
}

}  // namespace hemline
