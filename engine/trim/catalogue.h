// The trims a job can use: generic cross-sections and what each serves, read from assets/.
//
//      flange (on the deck)
//     ________
//             |  face (over the fascia)
//             |
//              \  kick
//             ⊂   hem
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "engine/measure/slope.h"
#include "engine/quantity/length.h"
#include "engine/roof/edge.h"
#include "engine/words/result.h"

namespace hemline {

/// The part a trim plays on its edge: the edge's own trim, the wrap behind it, the cleat it hooks.
enum class TrimRole : std::uint8_t { main = 0, wrap = 1, cleat = 2 };
/// Flange: the leg on the roof. Face: the one across the bend: over the fascia or the barge, up the
/// wall, or on the other roof.
enum class LegName : std::uint8_t { flange = 0, face = 1, kick = 2, hem = 3 };

/// One leg, from the deck outward.
struct Leg {
    LegName name = LegName::flange;
    Length width;

    bool operator==(const Leg&) const = default;
};

struct Trim {
    std::string id;    ///< "eave_rolled"
    std::string name;  ///< for people
    EdgeKind kind = EdgeKind::eave;
    std::vector<EdgeKind> also;  ///< further kinds it serves: one cleat for eave and gable
    TrimRole role = TrimRole::main;
    std::vector<Leg> legs;
    std::optional<Slope> least, most;  ///< pitch limits, both included; none: no limit of its own
    std::vector<Seam> seams;           ///< panels it serves
    std::string source;                ///< of its limits

    bool operator==(const Trim&) const = default;
};

/// Whether the trim is made for edges of that kind.
bool serves(const Trim& trim, EdgeKind kind);
/// Width of a named leg; 0 when the trim has none.
Length leg_width(const Trim& trim, LegName name);
/// Flat width: the sum of the legs (bend allowance left out; a hem counts once folded flat).
Length girth(const Trim& trim);
/// The trim with the edge's own face and flange, where the edge states them.
Trim fitted_to(Trim trim, const Edge& edge);

class Catalogue {
  public:
    /// Reads assets/catalogue/trims.csv:
    /// id,name,kind,role,flange,face,kick,hem,least,most,seams,source. Problem: names line, column
    /// and the mend. Ids are unique.
    static Result<Catalogue> read(std::string_view csv);

    /// Puts the trim in the place of the one of its id, if there is one.
    void put(const Trim& trim);

    [[nodiscard]] const std::vector<Trim>& trims() const { return trims_; }
    [[nodiscard]] const Trim* find(std::string_view id) const;
    /// The first trim of that kind and role in the file; nullptr when there is none yet.
    [[nodiscard]] const Trim* default_for(EdgeKind kind, TrimRole role = TrimRole::main) const;
    /// The edge's main trim: the one it names, or its kind's default. nullptr when unknown.
    [[nodiscard]] const Trim* of(const Edge& edge) const;

  private:
    std::vector<Trim> trims_;
};

std::string_view word_of(TrimRole);
std::string_view word_of(LegName);
Text spoken(LegName);

}  // namespace hemline
