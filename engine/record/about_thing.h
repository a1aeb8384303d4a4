// What an event is about: the thing that it says is so, or does something to.
#pragma once

#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <variant>

#include "engine/record/event.h"

namespace hemline {

/// The edge that a fact is about; empty when it is about the job.
std::string edge_in(const Fact& fact);

/// The value that a fact says, under its name in the JSON of `conflicts`.
struct ValueSaid {
    const char* name;
    std::variant<Length, Slope> value;
};
/// None: only words can tell it (describe()).
std::optional<ValueSaid> value_in(const Fact& fact);

/// Whether everybody answers that step for himself, in every procedure. Two answers are then those
/// of two people and do not disagree.
bool is_personal(std::string_view step);

/// What events are about, told in their order: what is said of metal on hand is about what an
/// earlier event left or counted.
class Things {
  public:
    /// What the event is about, given the events taken in before it.
    [[nodiscard]] Thing of(const Event& event) const;
    void take_in(const Event& event);

  private:
    friend struct ThingOf;
    friend struct MetalLeft;

    /// What an event left or counted.
    struct Metal {
        EventId first;  ///< before anybody measured it or counted it again
        std::string edge;
        TrimRole role = TrimRole::main;
        bool one = true;  ///< not a pile, of which two may be measured
    };
    [[nodiscard]] const Metal* left_by(EventId id) const;
    /// The metal that a count corrects; nullptr: the count adds metal.
    [[nodiscard]] const Metal* corrected_by(const Event& event) const;
    /// The stick or offcut that is measured or spoiled; nullptr: a new stick, or a stick of a pile.
    [[nodiscard]] const Metal* one_of(const MetalTaken& metal) const;

    std::map<EventId, Metal> metal_;
};

}  // namespace hemline
