#include "engine/work/roof_outline.h"

#include "engine/roof/edge_shape.h"
#include "engine/roof/walk_rings.h"
#include "engine/words/result.h"

namespace hemline {

namespace {

std::optional<Length> length_so_far(const EdgeWork& work, const Practice& practice) {
    if (const std::optional<Length> agreed = work.length(practice)) {
        return agreed;
    }
    std::optional<Length> latest;
    for (const RecordedReading& reading : work.readings) {
        if (reading.of == ReadingOf::edge && !reading.struck) {
            latest = reading.length;
        }
    }
    return latest;
}

/// "left end" of its row's words.
Text end_words(const std::string& field) {
    return end_spoken(field.find("left") != std::string::npos ? Side::left : Side::right);
}

Text corner_words(Angle inside) {
    if (inside == square_out) {
        return say("an outside corner");
    }
    return inside == square_in ? say("an inside corner") : say("{1} inside", print_degrees(inside));
}

}  // namespace

std::optional<RoofOutline> outline_of(const Job& job) {
    std::vector<WalkedEdge> edges;
    for (const EdgeWork& work : job.edges) {
        if (is_around_house(work.edge.kind)) {
            edges.push_back({work.edge, length_so_far(work, job.practice)});
        }
    }
    if (edges.empty() || edges.size() > outline_edges_most) {
        return std::nullopt;
    }
    const std::size_t circle = full_circle(edges, job.practice.tape);
    const std::size_t n = circle == 0 ? edges.size() : circle;
    const Result<Outline> outline = trace_outline(std::span(edges).first(n), job.practice.tape);
    if (!outline) {
        return std::nullopt;
    }
    RoofOutline roof{*outline, {}};
    for (std::size_t i = n; i < edges.size(); ++i) {
        roof.beside.push_back(edges[i].edge.id);
    }
    return roof;
}

Text state_words(const Outline& outline) {
    if (!outline.turn_left) {
        return outline.state == OutlineState::misses
                   ? say("Two edges say different things of one corner.")
                   : say("A corner is not known yet.");
    }
    if (*outline.turn_left != Angle() && outline.state == OutlineState::misses) {
        return say(
            "These sides do not come full circle: their corners turn by {1}, not 360°. A "
            "side is not on this job, or a corner is not as said.",
            print_degrees(full_turn - *outline.turn_left));
    }
    if (outline.crossing) {
        return say("The walk comes back, and its sides cross on the way: a corner is not as said.");
    }
    const CloseLength miss{outline.miss}, allowed{outline.allowed};
    switch (outline.state) {
        case OutlineState::closes:
            return say("The roof closes: {1} off, and the tapes allow {2}.", miss, allowed);
        case OutlineState::open:
            return say("Not all is read yet. What is read agrees.");
        case OutlineState::misses:
            break;
    }
    return say("The roof fails to close by {1}; the tapes allow {2}.", miss, allowed);
}

Text suspect_words(const Suspect& suspect) {
    const Text why = spoken(suspect.kind);
    if (!suspect.corner_from) {
        return say("{1}: {2}, not {3} ({4})", suspect.edge, suspect.to, suspect.from, why);
    }
    const Text end = end_words(suspect.field);
    const Text from = corner_words(*suspect.corner_from), to = corner_words(*suspect.corner_to);
    return suspect.also_edge.empty()
               ? say("{1}, {2}: {3}, not {4} ({5})", suspect.edge, end, to, from, why)
               : say("{1}, {2}: {3}, not {4} ({5}), and {6}'s {7}", suspect.edge, end, to, from,
                     why, suspect.also_edge, end_words(suspect.also_field));
}

}  // namespace hemline
