#include "engine/work/roof_outline.h"

#include "engine/measure/angle_text.h"

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

/// How many of the edges make a walk that comes full circle: as many as can, else all.
std::size_t full_circle(std::span<const WalkedEdge> edges, Tape tape) {
    for (std::size_t n = edges.size(); n > 2; --n) {
        if (close_walk(lay_walk(edges.first(n), tape)).turn_left_udeg == 0) {
            return n;
        }
    }
    return edges.size();
}

/// "left end" of its row's words.
std::string end_words(const std::string& field) {
    return (field.find("left") != std::string::npos ? "left" : "right") + std::string(" end");
}

std::string corner_words(std::int64_t udeg) {
    if (udeg == 90'000'000) {
        return "an outside corner";
    }
    return udeg == 270'000'000 ? "an inside corner" : print_degrees(udeg) + " inside";
}

}  // namespace

std::optional<RoofOutline> outline_of(const Job& job) {
    std::vector<WalkedEdge> edges;
    for (const EdgeWork& work : job.edges) {
        if (is_walked(work.edge.kind)) {
            edges.push_back({work.edge, length_so_far(work, job.practice)});
        }
    }
    if (edges.empty() || edges.size() > outline_edges_most) {
        return std::nullopt;
    }
    const std::size_t n = full_circle(edges, job.practice.tape);
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

std::string state_words(const Outline& outline, Marks marks) {
    if (!outline.turn_left_udeg) {
        return outline.state == OutlineState::misses
                   ? "Two edges say different things of one corner."
                   : "A corner is not known yet.";
    }
    if (*outline.turn_left_udeg != 0 && outline.state == OutlineState::misses) {
        return "These sides do not come full circle: their corners turn by " +
               print_degrees(360'000'000 - *outline.turn_left_udeg) +
               ", not 360°. A side is not on this job, or a corner is not as said.";
    }
    switch (outline.state) {
        case OutlineState::closes:
            return "The roof closes: " + print_length(outline.miss, marks) +
                   " off, and the tapes allow " + print_length(outline.allowed, marks) + ".";
        case OutlineState::open:
            return "Not all is read yet. What is read agrees.";
        case OutlineState::misses:
            break;
    }
    return "The roof fails to close by " + print_length(outline.miss, marks) +
           "; the tapes allow " + print_length(outline.allowed, marks) + ".";
}

std::string suspect_words(const Suspect& suspect, Marks marks) {
    const std::string why = " (" + std::string(spoken(suspect.kind)) + ")";
    if (!suspect.corner_from) {
        return suspect.edge + ": " + print_length(suspect.to, marks) + ", not " +
               print_length(suspect.from, marks) + why;
    }
    std::string words = suspect.edge + ", " + end_words(suspect.field) + ": " +
                        corner_words(*suspect.corner_to) + ", not " +
                        corner_words(*suspect.corner_from) + why;
    if (!suspect.also_edge.empty()) {
        words += ", and " + suspect.also_edge + "'s " + end_words(suspect.also_field);
    }
    return words;
}

}  // namespace hemline
