// Where the words about a section find room: beside what they are of, or led out to the nearest
// free place by a line that crosses no other words.
#pragma once

#include <imgui.h>

#include <optional>
#include <utility>
#include <vector>

#include "field/touch/ui.h"

namespace hemline {

/// What is drawn already.
struct ProfileTaken {
    std::vector<Box> lines, words;
    std::vector<std::pair<ImVec2, ImVec2>> leaders;

    void add_line(const std::vector<ImVec2>& stroke);
};

/// clear: nothing at all where its line would meet another; must: even where it crosses others.
enum class Need { clear, room, must };

/// Of a leg from a to b, or of a point, a == b. On the upper side or else the other, further off,
/// or toward its ends; else anywhere on the page, as near as there is room, at first where its line
/// keeps off the section and all other lines; empty: there is none.
std::optional<Box> place_beside(const Ui& ui, ImVec2 a, ImVec2 b, Box size, Box page,
                                const ProfileTaken& taken, Need need);

/// Where the leader to a place ends; its beginning is the middle of a and b.
ImVec2 leader_end(ImVec2 middle, Box place);

}  // namespace hemline
