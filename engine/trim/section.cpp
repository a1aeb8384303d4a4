#include "engine/trim/section.h"
#include "engine/words/result.h"

#include <algorithm>

#include <array>

namespace hemline {

namespace {

constexpr std::array<std::string_view, 4> hem_words = {"none", "open", "closed", "tear_drop"};
constexpr std::array<std::string_view, 4> lies_words = {"nothing", "deck", "wall", "fascia"};
constexpr std::array<std::string_view, 4> painted_words = {"upper", "under", "both", "none"};

constexpr Angle bend_most = degrees(175);  // past it a setback grows without end

template <std::size_t N, class Word>
std::string_view word_in(const std::array<std::string_view, N>& words, Word word) {
    const auto index = static_cast<std::size_t>(word);
    require(index < N, "every value of a section has its word");
    return words[index];
}

bool is_half_turn(const BendRule& bend) {
    return !bend.fold_of && absolute(bend.angle) == half_turn;
}

std::optional<Problem> check_leg(const Section& section, std::size_t i) {
    const SectionLeg& leg = section.legs[i];
    const Text name = spoken(leg.name);
    if (leg.width <= Length()) {
        return Problem{say("The {1} has no width.", name), say("Give it a width above 0.")};
    }
    if (leg.radius && *leg.radius < Length()) {
        return Problem{say("The bend before the {1} has a negative radius.", name),
                       say("Write the inside radius, or leave it empty.")};
    }
    if ((leg.hem != Hem::none) != (leg.name == LegName::hem)) {
        return Problem{say("Only a leg named hem has a kind of hem, and each of them has one."),
                       say("Name the leg hem and write open, closed or tear_drop, or neither.")};
    }
    if (i == 0) {
        return {};
    }
    // A hem at the first edge is folded where the next leg begins.
    const bool folds_hem = leg.hem != Hem::none || section.legs[i - 1].hem != Hem::none;
    if (folds_hem && !is_half_turn(leg.bend)) {
        return Problem{say("The hem beside the {1} is not folded over.", name),
                       say("Write a bend of 180 or -180.")};
    }
    if (!folds_hem && !leg.bend.fold_of &&
        (absolute(leg.bend.angle) >= bend_most || leg.bend.angle == Angle())) {
        return Problem{say("The bend before the {1} is 0, or 175 degrees and more.", name),
                       say("Write a bend below 175; a leg folded over is a hem.")};
    }
    return {};
}

}  // namespace

std::optional<Problem> check_section(const Section& section, int* leg) {
    const auto at = [leg](int index) {
        if (leg != nullptr) {
            *leg = index;
        }
    };
    at(-1);
    if (section.legs.empty() || section.legs.size() > legs_most) {
        return Problem{say("A section has 1 to 12 legs."), say("Add a leg, or take some away.")};
    }
    if (section.thickness <= Length()) {
        return Problem{say("The metal has no thickness."),
                       say("Write it as a decimal, as 0.0276 in.")};
    }
    for (std::size_t i = 0; i < section.legs.size(); ++i) {
        if (auto problem = check_leg(section, i)) {
            at(static_cast<int>(i));
            return problem;
        }
    }
    return {};
}

Section fitted_to(Section section, const Edge& edge) {
    for (SectionLeg& leg : section.legs) {
        if (leg.name == LegName::face && edge.face) {
            leg.width = *edge.face;
        }
        if (leg.name == LegName::flange && edge.flange) {
            leg.width = *edge.flange;
        }
    }
    return section;
}

std::size_t deck_leg(const Section& section) {
    std::size_t widest = section.legs.size();
    for (std::size_t i = 0; i < section.legs.size(); ++i) {
        if (section.legs[i].lies == LiesOn::deck &&
            (widest == section.legs.size() || section.legs[i].width > section.legs[widest].width)) {
            widest = i;
        }
    }
    return widest == section.legs.size() ? 0 : widest;
}

void Sections::put(const Section& section) {
    std::replace_if(
        all_.begin(), all_.end(), [&](const Section& own) { return own.trim == section.trim; },
        section);
}

const Section* Sections::find(std::string_view trim) const {
    for (const Section& section : all_) {
        if (section.trim == trim) {
            return &section;
        }
    }
    return nullptr;
}

std::string_view word_of(Hem hem) { return word_in(hem_words, hem); }
Text spoken(Hem hem) {
    switch (hem) {
        case Hem::none:
            break;
        case Hem::open:
            return say_of("hem", "open");
        case Hem::closed:
            return say_of("hem", "closed");
        case Hem::tear_drop:
            return say_of("hem", "tear-drop");
    }
    return say_of("hem", "none");
}

std::string_view word_of(LiesOn lies) { return word_in(lies_words, lies); }
std::string_view word_of(Painted painted) { return word_in(painted_words, painted); }

}  // namespace hemline
