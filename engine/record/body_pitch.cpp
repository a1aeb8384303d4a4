#include "engine/record/body_pitch.h"

#include <map>
#include <vector>

namespace hemline {

namespace {

/// A transition's upper roof is the body's.
template <class AnyEdge>
auto& over_of(AnyEdge& edge) {
    return facts_of(edge.kind).fold == FoldFrom::change_of_pitch ? edge.pitch2 : edge.pitch;
}

std::optional<Slope> pitch_of(const Job& job, const std::string& edge) {
    const EdgeWork* const work = job.find(edge);
    return work == nullptr ? std::nullopt : over_of(work->edge);
}

/// Of the roofs over all sides: a body's own go before others of the same name.
struct PitchesOverSides {
    std::map<std::pair<std::string, std::string>, std::optional<Slope>> own;
    std::map<std::string, std::optional<Slope>> any;

    void say(const std::string& body, const std::string& side, const std::optional<Slope>& pitch) {
        own.emplace(std::pair(body, side), pitch);
        any.emplace(side, pitch);
    }
    [[nodiscard]] std::optional<Slope> over(const std::string& body,
                                            const std::string& side) const {
        if (const auto known = own.find({body, side}); known != own.end()) {
            return known->second;
        }
        const auto known = any.find(side);
        return known == any.end() ? std::nullopt : known->second;
    }
    /// Where one body stands on another's roof, or runs into it.
    [[nodiscard]] bool is_between(const PlaceOnBody& place) const {
        return !place.other.empty() && own.count({place.body, place.other}) == 0;
    }
};

void give(std::optional<Slope>& pitch, const std::optional<Slope>& over) {
    pitch = pitch ? pitch : over;
}

/// Of the two sides that it lies between; of a wall between two bodies the lower roof's.
void give_both(Edge& edge, const PlaceOnBody& place, const PitchesOverSides& pitches) {
    std::vector<std::optional<Slope>> found;
    for (const std::string& side : {place.side, place.other}) {
        if (const std::optional<Slope> over = pitches.over(place.body, side)) {
            found.push_back(over);
        }
    }
    if (found.empty()) {
        return;
    }
    const bool on_two = facts_of(edge.kind).roofs == 2;
    give(edge.pitch, !on_two && pitches.is_between(place) ? found.back() : found.front());
    if (found.size() > 1 && on_two) {
        give(edge.pitch2, found.back());
    }
}

/// A transition on which an eave lies has that eave's.
PitchesOverSides pitches_over_sides(const Job& job) {
    PitchesOverSides pitches;
    for (const bool meets : {false, true}) {
        for (const WalkedBody& body : job.bodies) {
            for (const SideWalked& side : body.sides) {
                if (side.meets.empty() != meets) {
                    pitches.say(body.id, side.id,
                                meets ? pitches.over("", side.meets) : pitch_over(job, side));
                }
            }
        }
    }
    return pitches;
}

}  // namespace

std::optional<Slope> pitch_over(const Job& job, const SideWalked& side) {
    for (const std::string& edge : side.edges) {
        if (const std::optional<Slope> own = pitch_of(job, edge)) {
            return own;
        }
    }
    return pitch_of(job, side.pitch_from);
}

void share_pitches(Job& job) {
    const PitchesOverSides pitches = pitches_over_sides(job);
    for (const WalkedBody& body : job.bodies) {
        for (const SideWalked& side : body.sides) {
            for (const std::string& edge : side.edges) {
                const EdgeWork* const work = job.find(edge);
                const bool is_on_it = work != nullptr && side.meets.empty() &&
                                      !(work->place && pitches.is_between(*work->place));
                if (is_on_it) {
                    const auto place = static_cast<std::size_t>(work - job.edges.data());
                    give(over_of(job.edges[place].edge), pitches.over(body.id, side.id));
                }
            }
        }
        for (EdgeWork& work : job.edges) {
            if (work.place && work.place->body == body.id) {
                give_both(work.edge, *work.place, pitches);
            }
        }
    }
}

}  // namespace hemline
