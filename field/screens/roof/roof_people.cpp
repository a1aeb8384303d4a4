#include "field/screens/roof/roof_people.h"

#include <algorithm>

#include "field/touch/box.h"

namespace hemline {

namespace {

constexpr float h_mm = 12, least_w_mm = 24;
constexpr std::size_t near_most = 5;

bool has(const std::vector<Person>& people, std::string_view name) {
    return std::any_of(people.begin(), people.end(),
                       [&](const Person& person) { return person.name == name; });
}

/// The holder, then who held this tablet and who wrote on this job, the latest first.
std::vector<Person> known(const State& state) {
    std::vector<Person> people;
    if (!state.by.empty()) {
        people.push_back({state.by, state.way});
    }
    for (auto person = state.people.rbegin(); person != state.people.rend(); ++person) {
        if (!has(people, person->name)) {
            people.push_back(*person);
        }
    }
    for (auto event = state.events.rbegin();
         event != state.events.rend() && people.size() < people_most; ++event) {
        if (!event->by.empty() && !has(people, event->by)) {
            people.push_back({event->by, usual_way(event->by)});
        }
    }
    return people;
}

Text label_of(const Person& person) { return glued(say(person.name), "\n", spoken(person.way)); }

}  // namespace

std::vector<Person> people_near(const State& state, std::size_t most) {
    std::vector<Person> left = known(state), near;
    for (const Way way : ways) {
        const auto latest = std::find_if(left.begin(), left.end(),
                                         [&](const Person& person) { return person.way == way; });
        if (latest != left.end()) {
            near.push_back(*latest);
            left.erase(latest);
        } else {
            near.push_back({std::string(usual_name(way)), way});
        }
    }
    for (const Person& person : left) {
        if (near.size() < most && !has(near, person.name)) {
            near.push_back(person);
        }
    }
    std::stable_sort(near.begin(), near.end(), [](const Person& a, const Person& b) {
        return std::pair(a.way, a.name) < std::pair(b.way, b.name);
    });
    return near;
}

void draw_people(Ui& ui, const State& state, Box& box, Wished& wish) {
    const float gap = ui.mm(gap_mm);
    float least = ui.mm(least_w_mm);
    for (const Person& person : people_near(state, near_most)) {
        least = std::max(least, ui.label_width(label_of(person)));
    }
    const auto room = static_cast<std::size_t>((box.w + gap) / (least + gap));
    const std::vector<Person> people =
        people_near(state, std::clamp(room, std::size_t{3}, near_most));
    // Where the names do not all fit on a line, they take two lines, or a line each.
    const std::size_t wide =
        room >= people.size() ? people.size() : std::clamp(room, std::size_t{1}, std::size_t{2});
    std::vector<Box> places;
    for (std::size_t i = 0; i < people.size(); i += wide) {
        const Box line = take_top(box, ui.mm(h_mm));
        take_top(box, gap);
        const std::vector<Box> row = columns(line, static_cast<int>(wide), gap);
        places.insert(places.end(), row.begin(), row.end());
    }
    std::vector<Text> labels;
    labels.reserve(people.size());
    for (const Person& person : people) {
        labels.push_back(label_of(person));
    }
    const Size largest = ui.label_size(labels, places.front());
    for (std::size_t i = 0; i < people.size(); ++i) {
        const bool holds = people[i].name == state.by && people[i].way == state.way;
        if (!ui.button("person " + people[i].name, labels[i], places[i],
                       holds ? Look::chosen : Look::plain, largest)) {
            continue;
        }
        if (holds) {
            wish = Go{{Screen::person, {}}};
        } else {
            wish = HoldTablet{people[i]};
        }
    }
}

}  // namespace hemline
