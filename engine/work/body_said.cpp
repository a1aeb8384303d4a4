#include "engine/work/body_said.h"

#include "engine/record/body_pitch.h"

namespace hemline {

namespace {

/// What two readings agree on, else the latest that stands.
std::optional<Length> read_so_far(const Job& job, const std::string& edge) {
    const EdgeWork* const work = job.find(edge);
    if (work == nullptr) {
        return {};
    }
    if (const std::optional<Length> agreed = work->length(job.practice)) {
        return agreed;
    }
    for (auto reading = work->readings.rbegin(); reading != work->readings.rend(); ++reading) {
        if (!reading->struck && reading->of == ReadingOf::edge) {
            return reading->length;
        }
    }
    return {};
}

/// Of a level side whose edges are all read.
std::optional<Length> read_along(const Job& job, const SideWalked& side) {
    if (side.kind != SideKind::eave && side.kind != SideKind::transition) {
        return {};
    }
    Length sum;
    for (const std::string& edge : side.edges) {
        const std::optional<Length> read = read_so_far(job, edge);
        if (!read) {
            return {};
        }
        sum += *read;
    }
    return side.edges.empty() ? std::nullopt : std::optional(sum);
}

bool ends_under_host(const WalkedBody& body, std::size_t side) {
    const std::size_t n = body.sides.size();
    return body.host && (body.sides[(side + 1) % n].kind == SideKind::open ||
                         body.sides[(side + n - 1) % n].kind == SideKind::open);
}

}  // namespace

bool is_read_along(const Job& job, const SideWalked& side) {
    return read_along(job, side).has_value();
}

RoofBody body_said(const Job& job, const WalkedBody& walked, const SaidHow& how,
                   std::optional<Slope> pitch) {
    RoofBody body = {walked.id, {}, {}};
    if (walked.host) {
        body.host =
            RunsInto{walked.host->eave, walked.host->along, walked.host->up, walked.host->rise};
    }
    for (std::size_t i = 0; i < walked.sides.size(); ++i) {
        const SideWalked& side = walked.sides[i];
        BodySide made{side.id, side.kind, side.length, side.corner, {}, side.meets};
        const bool is_as_walked = how.from == LengthsFrom::walk ||
                                  (how.as_walked.count(side.id) > 0 && side.length) ||
                                  ends_under_host(walked, i);
        if (const auto read = is_as_walked ? std::nullopt : read_along(job, side)) {
            const auto covered = how.covered.find(side.id);
            made.length = covered == how.covered.end() ? *read : *read + covered->second;
        }
        if (!is_upright(side.kind)) {
            made.pitch = pitch_over(job, side);
            made.pitch = made.pitch ? made.pitch : side.pitch ? side.pitch : pitch;
        }
        body.sides.push_back(std::move(made));
    }
    return body;
}

}  // namespace hemline
