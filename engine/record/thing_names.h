// What a thing that tablets disagree about is called by those who know its step and its trim.
#pragma once

#include <functional>
#include <string>
#include <string_view>

#include "engine/record/conflict.h"
#include "engine/words/text.h"

namespace hemline {

/// Without one of these the id stands.
struct ThingNames {
    std::function<Text(const Thing&)> step;
    std::function<Text(const std::string&)> trim;
};
Text name_of(const Thing& thing, const ThingNames& names);
/// As Conflict::what().
Text what_of(const Conflict& conflict, const ThingNames& names);

/// The name of a thing of Subject::rule that is a trim's section: this, then the trim's id.
inline constexpr std::string_view section_thing = "section of ";

}  // namespace hemline
