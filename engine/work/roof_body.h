// The bodies of a job, worked out from their walks, together where they are tied: what each edge
// should measure, which edges of the roof the job lacks, and which edges of the job have no place
// on it.
//
//   walk, pitches, readings of its sides ──▶ planes and edges ──▶ each held against the job's
#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "engine/body/body.h"
#include "engine/record/event.h"
#include "engine/record/job.h"

namespace hemline {

class Catalogue;
struct RoofBody;

/// An edge of the roof, and the edges of the job that lie there.
struct EdgeOnBody {
    BodyEdge worked;
    PlaceOnBody place;
    std::vector<std::string> edges;  ///< along a side in rows there may be several; none: lacking
    Length expected, off;            ///< what it should measure, and how far that may be off
};

/// One of the bodies that are worked out together.
struct BodyInRoof {
    std::string id;
    std::size_t first = 0, sides = 0;  ///< which of all sides are its own
    std::optional<HostSaid> host;
};

/// A body of the job, or several: those that run into one another, or lie on one another.
struct BodyOnJob {
    std::string id;       ///< of the first
    bool closed = false;  ///< the walk was said to have come back; an open one is by itself
    std::vector<BodyInRoof> bodies;
    std::vector<SideWalked> walked;  ///< through all bodies
    std::vector<BodySide> sides;     ///< with readings in place of what was stated, and pitches
    /// Where each side begins, in nm, and where the last ends; unknown lengths are guessed. Of one
    /// body that is not worked out.
    std::vector<PlanVector> corners;
    std::optional<Body> worked;     ///< none: open, or `problem` says why not
    std::vector<EdgeOnBody> edges;  ///< of `worked`, in its order
    std::vector<std::string> without_place;
    std::optional<Problem> problem;
    Text lesson;  ///< roof_lesson(); of roof_bodies() alone
};

/// The body that the side is one of.
const BodyInRoof& body_with(const BodyOnJob& roof, std::size_t side);
/// As they are worked out.
std::vector<RoofBody> bodies_of(const BodyOnJob& roof);

/// A body of the job, or one that the job does not have yet, with those of the job that it is tied
/// to; alone, with the problem, where they make no roof together. `pitch`: of its eaves without
/// one.
BodyOnJob roof_body(const Job& job, const WalkedBody& walked, std::optional<Slope> pitch = {});
/// All of them; a body that fails is left out of the roof that the others make.
std::vector<BodyOnJob> roof_bodies(const Job& job);

/// The walk, and an edge for all that follows from it and the job lacks, on the roofs it is tied to
/// too: a new edge takes the next free letter, in walking order and by its foot, and its kind's
/// usual trim. `pitch`: of all its eaves without one, said of the first.
std::vector<Fact> facts_of_walk(const Job& job, WalkedBody walked, std::optional<Slope> pitch,
                                const Catalogue& catalogue);
/// Of several bodies at once, that the job does not have yet, from a desk: a pitch that several
/// eaves have is said of the first. Problem: as their roofs have it.
Result<std::vector<Fact>> facts_of_walks(const Job& job, const std::vector<WalkedBody>& walks,
                                         const Catalogue& catalogue);
/// The name of the next side of a walk.
std::string next_side(const Job& job, const std::vector<SideWalked>& walked);
/// The walk of sides that were said at a desk; their pitches are stated.
WalkedBody walk_of(std::string id, const RoofBody& body);
/// Only the edges that the job lacks.
std::vector<Fact> lacking_edges(const Job& job, const BodyOnJob& body, const Catalogue& catalogue);
/// The job's eaves and gables, in the order added, as a walk that nobody said; none where they do
/// not come full circle.
std::optional<WalkedBody> body_of_rows(const Job& job);

/// What the roof says of an edge's length.
struct ExpectedLength {
    Length length, off;
};
/// None where the edge lies on no body, or shares its line with others.
std::optional<ExpectedLength> expected_of(std::span<const BodyOnJob> bodies, std::string_view edge);
/// How far a length may be off, as people are told it: up to a whole sixteenth.
Length told_margin(Length off);
/// Why a reading outside what is expected is doubted, and what would explain it; empty when it lies
/// within.
Text roof_doubt(Length reading, const ExpectedLength& expected, Tape tape);

/// A, B … Z, AA …, without I and O, which are read as 1 and 0.
std::string edge_letters(std::size_t n);

}  // namespace hemline
