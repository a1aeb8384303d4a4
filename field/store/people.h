// Who has held this tablet, and in which role: kept on the device beside the screen's scale, not
// part of a job.
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "engine/words/text.h"

namespace hemline {

/// The three roles on a job: installer, foreman, apprentice.
enum class Way : std::uint8_t { cut, tick_off, learn };
constexpr std::array<Way, 3> ways = {Way::cut, Way::tick_off, Way::learn};

std::string_view word_of(Way way);
Text spoken(Way way);
/// The name of somebody who gave no name: "Installer", "Foreman", "Apprentice".
std::string_view usual_name(Way way);
/// The role of a person who has not said: by those names, else installer.
Way usual_way(std::string_view name);

struct Person {
    std::string name;
    Way way = Way::cut;

    bool operator==(const Person&) const = default;
};

/// This person holds the tablet now and becomes the last of the people; only so many are
/// remembered.
void hold(std::vector<Person>& people, const Person& now);
constexpr std::size_t people_most = 8;

/// Their role on the job, as this tablet remembers it; else the usual.
Way way_of(const std::vector<Person>& people, std::string_view name);

/// "cut Ada", and back; none for any other line.
std::string print_person(const Person& person);
std::optional<Person> person_of(std::string_view line);

}  // namespace hemline
