#include "field/store/people.h"

#include <algorithm>

namespace hemline {

std::string_view word_of(Way way) {
    switch (way) {
        case Way::cut:
            return "cut";
        case Way::tick_off:
            return "tick off";
        case Way::learn:
            return "learn";
    }
    return "cut";
}

Text spoken(Way way) {
    switch (way) {
        case Way::cut:
            return say("cut");
        case Way::tick_off:
            return say("check off");
        case Way::learn:
            return say("learn");
    }
    return say("cut");
}

std::string_view usual_name(Way way) {
    switch (way) {
        case Way::cut:
            return phrase("Installer");
        case Way::tick_off:
            return phrase("Foreman");
        case Way::learn:
            return phrase("Apprentice");
    }
    return phrase("Installer");
}

Way usual_way(std::string_view name) {
    const auto found =
        std::find_if(ways.begin(), ways.end(), [&](Way way) { return usual_name(way) == name; });
    return found == ways.end() ? Way::cut : *found;
}

void hold(std::vector<Person>& people, const Person& now) {
    people.erase(std::remove_if(people.begin(), people.end(),
                                [&](const Person& other) { return other.name == now.name; }),
                 people.end());
    people.push_back(now);
    if (people.size() > people_most) {
        people.erase(people.begin());
    }
}

Way way_of(const std::vector<Person>& people, std::string_view name) {
    const auto found = std::find_if(people.begin(), people.end(),
                                    [&](const Person& person) { return person.name == name; });
    return found == people.end() ? usual_way(name) : found->way;
}

std::string print_person(const Person& person) {
    return std::string(word_of(person.way)) + " " + person.name;
}

std::optional<Person> person_of(std::string_view line) {
    const bool is_one_line = std::none_of(line.begin(), line.end(), [](char letter) {
        return static_cast<unsigned char>(letter) < ' ';
    });
    for (const Way way : ways) {
        const std::string begins = std::string(word_of(way)) + " ";
        if (is_one_line && line.size() > begins.size() && line.rfind(begins, 0) == 0) {
            return Person{std::string(line.substr(begins.size())), way};
        }
    }
    return std::nullopt;
}

}  // namespace hemline
