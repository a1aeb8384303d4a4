#include "field/screens/roof/roof_reach.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "field/screens/roof/tilted_box.h"

namespace hemline {

namespace {

constexpr float touch_mm = 11;
constexpr float finger_mm = 9;            // how far beside an edge a finger still means it
constexpr float unsure_mm = 3.5F;         // edges no farther apart than that may both be meant
constexpr float aim_mm = target_min / 2;  // how far from its aim a gloved finger comes down
constexpr int aims = 16;                  ///< places along an edge that are looked at

/// How far outside the box, along one side of the page; negative inside.
float outside(Box box, ImVec2 at) {
    return std::max(std::max(box.x - at.x, at.x - box.right()),
                    std::max(box.y - at.y, at.y - box.bottom()));
}

float distance_to(const SheetLine& line, ImVec2 at) {
    const float x = at.x - line.from.x, y = at.y - line.from.y;
    const float t = std::clamp(x * line.along.x + y * line.along.y, 0.0F, line.length);
    return std::hypot(x - line.along.x * t, y - line.along.y * t);
}

/// Places along the line that may be aimed at.
std::vector<ImVec2> places_along(const SheetLine& line) {
    std::vector<ImVec2> places;
    for (int i = 0; i <= aims; ++i) {
        places.push_back(moved(line.from, line.along, line.length * static_cast<float>(i) / aims));
    }
    return places;
}

}  // namespace

std::vector<LetterTouch> letters_touched(const Ui& ui, const std::vector<LetterDrawn>& drawn) {
    std::vector<LetterTouch> letters;
    const float half = ui.mm(touch_mm) / 2;
    for (const LetterDrawn& one : drawn) {
        const Box box{one.middle.x - half, one.middle.y - half, 2 * half, 2 * half};
        const bool meets =
            std::any_of(letters.begin(), letters.end(), [&](const LetterTouch& other) {
                const Box both = common_of(inset(other.box, -ui.mm(gap_mm)), box);
                return both.w > 0 && both.h > 0;
            });
        if (one.line->work != nullptr && !meets) {
            letters.push_back({one.line, box});
        }
    }
    return letters;
}

RoofReach::RoofReach(const Ui& ui, const RoofSheet& sheet, std::vector<LetterTouch> letters)
    : ui_(ui), sheet_(sheet), letters_(std::move(letters)) {
    for (const SheetLine& line : sheet.lines) {
        const bool has_touch =
            std::any_of(letters_.begin(), letters_.end(),
                        [&](const LetterTouch& letter) { return letter.line == &line; });
        if (line.work == nullptr || has_touch) {
            continue;
        }
        const std::vector<ImVec2> places = places_along(line);
        const bool covered = std::all_of(places.begin(), places.end(), [&](ImVec2 place) {
            return clear_at(place) < ui.mm(aim_mm);
        });
        unlettered_.push_back({&line, covered});
    }
}

float RoofReach::clear_at(ImVec2 place) const {
    float clear = 1e9F;
    for (const LetterTouch& letter : letters_) {
        clear = std::min(clear, outside(letter.box, place));
    }
    return clear;
}

bool RoofReach::is_unlettered(const std::string& edge) const {
    return std::any_of(unlettered_.begin(), unlettered_.end(),
                       [&](const Unlettered& one) { return one.line->work->edge.id == edge; });
}

std::size_t RoofReach::unlettered(const std::vector<std::string>& edges) const {
    return static_cast<std::size_t>(std::count_if(
        edges.begin(), edges.end(), [&](const std::string& edge) { return is_unlettered(edge); }));
}

std::vector<std::string> RoofReach::at_letter(const LetterTouch& letter) const {
    std::vector<std::string> edges = {letter.line->work->edge.id};
    for (const Unlettered& one : unlettered_) {
        const std::vector<ImVec2> places = places_along(*one.line);
        const bool near = std::any_of(places.begin(), places.end(), [&](ImVec2 place) {
            return outside(letter.box, place) < ui_.mm(aim_mm);
        });
        if (one.covered && near) {
            edges.push_back(one.line->work->edge.id);
        }
    }
    return edges;
}

std::string RoofReach::nearest(const std::vector<std::string>& edges, ImVec2 touch) const {
    std::string found;
    float least = 1e9F;
    for (const SheetLine& line : sheet_.lines) {
        const bool meant = line.work != nullptr &&
                           std::find(edges.begin(), edges.end(), line.work->edge.id) != edges.end();
        if (meant && distance_to(line, touch) < least) {
            least = distance_to(line, touch);
            found = line.work->edge.id;
        }
    }
    return found;
}

std::vector<std::string> RoofReach::beside_letters(ImVec2 touch) const {
    struct Near {
        bool lettered;
        float far;
        std::string edge;
    };
    std::vector<Near> near;
    float nearest = ui_.mm(finger_mm);
    for (const SheetLine& line : sheet_.lines) {
        const float far = distance_to(line, touch);
        if (line.work != nullptr && far < ui_.mm(finger_mm)) {
            near.push_back({!is_unlettered(line.work->edge.id), far, line.work->edge.id});
            nearest = std::min(nearest, far);
        }
    }
    std::sort(near.begin(), near.end(), [](const Near& a, const Near& b) {
        return std::pair(a.lettered, a.far) < std::pair(b.lettered, b.far);
    });
    std::vector<std::string> edges;
    for (const Near& one : near) {
        if (!one.lettered || one.far < nearest + ui_.mm(unsure_mm)) {
            edges.push_back(one.edge);
        }
    }
    return edges;
}

}  // namespace hemline
