// An edge of the roof: its kind, how its two ends finish, and the pitch behind it.
//
//   seen from outside, facing the edge:      left ________________ right
//   on a sloped edge left is its foot; on a ridge, the end named first on the job.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "engine/measure/slope.h"
#include "engine/quantity/angle.h"
#include "engine/quantity/length.h"
#include "engine/roof/edge_kind.h"

namespace hemline {

enum class Side : std::uint8_t { left = 0, right = 1 };
enum class Fascia : std::uint8_t { plumb = 0, square_cut = 1 };
/// How the panels' seam is closed; unknown: each is judged.
enum class Seam : std::uint8_t { unknown = 0, snap_lock = 1, mechanical = 2, nail_strip = 3 };
/// What a run must look like from the ground: balanced, or free to run out to one side.
enum class Looks : std::uint8_t { by_preference = 0, balanced = 1, free = 2 };

struct Edge {
    std::string id;  ///< "A", "C2": unique on the job
    EdgeKind kind = EdgeKind::eave;
    std::string trim;  ///< catalogue id; empty: the kind's default
    End left = End::open;
    End right = End::open;
    std::optional<Slope> pitch;
    Side first = Side::left;  ///< the side that is fitted first
    Seam seam = Seam::unknown;
    Looks looks = Looks::by_preference;
    Fascia fascia = Fascia::plumb;
    bool wrap = false;             ///< a fascia wrap goes on before the cleat
    std::optional<Length> face;    ///< overrides the trim's face
    std::optional<Length> flange;  ///< overrides the trim's flange
    std::optional<Length> lap;     ///< overrides the job's rule, of trim and wrap
    std::string metal, colour;     ///< with thickness: sticks are shared only within one pool
    std::optional<Length> thickness;
    std::optional<Slope> pitch2;  ///< the other roof's pitch (ridge, hip, valley, transition)
    std::optional<Angle> corner_left, corner_right;  ///< plan angle inside the building

    bool operator==(const Edge&) const = default;
};

constexpr End end_at(const Edge& edge, Side side) {
    return side == Side::left ? edge.left : edge.right;
}
/// The plan angle stated at that end.
constexpr std::optional<Angle>& stated_corner(Edge& edge, Side side) {
    return side == Side::left ? edge.corner_left : edge.corner_right;
}
constexpr std::optional<Angle> stated_corner(const Edge& edge, Side side) {
    return side == Side::left ? edge.corner_left : edge.corner_right;
}
constexpr Side other(Side side) { return side == Side::left ? Side::right : Side::left; }

/// From the words of the readings file: "eave", "corner_out", "snap_lock"; none where unknown.
std::string_view word_of(End);
std::string_view word_of(Side);
std::string_view word_of(Seam);
std::string_view word_of(Looks);
std::string_view word_of(Fascia);
std::optional<End> end_of(std::string_view word);
std::optional<Side> side_of(std::string_view word);
std::optional<Seam> seam_of(std::string_view word);
std::optional<Looks> looks_of(std::string_view word);
std::optional<Fascia> fascia_of(std::string_view word);

/// The same for people: "outside corner", "snap-lock", "square-cut".
Text spoken(End);
Text spoken(Side);
Text spoken(Seam);
/// "left end".
Text end_spoken(Side);

}  // namespace hemline
