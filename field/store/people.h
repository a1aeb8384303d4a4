// Who has held this tablet, and what for: kept on the device beside the screen's scale, part of no
// job.
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "engine/words/text.h"

namespace hemline {

/// The three ways into one job: the installer's, the foreman's, the apprentice's.
enum class Way : std::uint8_t { cut, tick_off, learn };
constexpr std::array<Way, 3> ways = {Way::cut, Way::tick_off, Way::learn};

std::string_view word_of(Way way);
Text spoken(Way way);
/// What somebody is called who has not said a name: "Installer", "Foreman", "Apprentice".
std::string_view usual_name(Way way);
/// Of a person who has not said: by those names, else they cut.
Way usual_way(std::string_view name);

struct Person {
    std::string name;
    Way way = Way::cut;

    bool operator==(const Person&) const = default;
};

/// This one holds it now: the last of the people, of whom so many are remembered.
void hold(std::vector<Person>& people, const Person& now);
constexpr std::size_t people_most = 8;

/// What they do on the job, as this tablet remembers; else as usual.
Way way_of(const std::vector<Person>& people, std::string_view name);

/// "cut Ada", and back; none for a line that says something else.
std::string print_person(const Person& person);
std::optional<Person> person_of(std::string_view line);

}  // namespace hemline
