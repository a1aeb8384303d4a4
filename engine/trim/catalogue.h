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
#include "engine/words/result_declared.h"

namespace hemline {

/// In place of a leg's width: as high as the job's seams.
constexpr std::string_view seam_height_word = "seam_height";

/// The part a trim plays on its edge: the main trim, the fascia wrap behind it, or the cleat it
/// hooks on.
enum class TrimRole : std::uint8_t { main = 0, wrap = 1, cleat = 2 };
/// Flange: the leg on the roof. Face: the leg across the bend: over the fascia or the fly rafter,
/// up the wall, or on the other roof.
enum class LegName : std::uint8_t { flange = 0, face = 1, kick = 2, hem = 3 };

/// Whether a trim lies on the deck, under the panels, or goes on over them: it decides order,
/// fastening and steps.
enum class Panels : std::uint8_t { under = 0, over = 1 };

/// One leg, from the deck outward.
struct Leg {
    LegName name = LegName::flange;
    Length width;
    bool as_seam = false;  ///< as high as the job's seams

    bool operator==(const Leg&) const = default;
};

struct Trim {
    std::string id;    ///< "eave_rolled"
    std::string name;  ///< for people
    EdgeKind kind = EdgeKind::eave;
    std::vector<EdgeKind> also;  ///< further kinds it serves, as a cleat for eave and gable
    TrimRole role = TrimRole::main;
    Panels panels = Panels::under;
    std::vector<Leg> legs;
    std::optional<Slope> least, most;  ///< pitch limits, both included; none: no limit
    std::vector<Seam> seams;           ///< panels that it suits
    std::string source;                ///< source of its limits

    bool operator==(const Trim&) const = default;
};

/// Metal that others hold on, cut in straight lengths and butted: a hook strip, a zee, a channel.
///
///      hook strip           zee                  channel
///           ____ lip             ____ top        |  wall leg
///   base ___| riser         ____|  web           |____| seam side, as high as a seam
struct Strip {
    std::string id, name;
    std::vector<EdgeKind> kinds;
    Panels panels = Panels::under;  ///< of the trims that it goes with, on a kind that has both
    std::vector<Leg> legs;          ///< flange: on the deck or the pan
    std::string source;

    bool operator==(const Strip&) const = default;
};

/// Whether the trim is made for edges of that kind.
bool serves(const Trim& trim, EdgeKind kind);
/// Width of a named leg; 0 when the trim has none.
Length leg_width(const Trim& trim, LegName name);
/// Flat width: the sum of the legs (bend allowance left out; a hem counts once folded flat).
Length girth(const Trim& trim);
Length girth(const Strip& strip);
/// The trim with the face and flange that the edge states, where it does.
Trim fitted_to(Trim trim, const Edge& edge);

class Catalogue {
  public:
    /// Reads assets/catalogue/trims.csv:
    /// id,name,kind,role,panels,flange,face,kick,hem,least,most,seams,source. Problem: names line,
    /// column and what to fix. Ids are unique. A row of the role `strip` is a strip.
    static Result<Catalogue> read(std::string_view csv);

    /// Replaces the trim of the same id, if there is one.
    void put(const Trim& trim);
    /// Legs that are as high as a seam get that height.
    void put_seam_height(Length height);

    [[nodiscard]] const std::vector<Trim>& trims() const { return trims_; }
    [[nodiscard]] const std::vector<Strip>& strips() const { return strips_; }
    /// What the edge's main trim goes with; nullptr where it needs none.
    [[nodiscard]] const Strip* strip_for(const Edge& edge) const;
    [[nodiscard]] const Trim* find(std::string_view id) const;
    /// The first trim of that kind and role in the file; nullptr when there is none yet.
    [[nodiscard]] const Trim* default_for(EdgeKind kind, TrimRole role = TrimRole::main) const;
    /// The edge's main trim: the trim it names, or the default of its kind; where only a trim over
    /// the panels can end as the edge does, the first such. nullptr when unknown.
    [[nodiscard]] const Trim* of(const Edge& edge) const;

  private:
    std::vector<Trim> trims_;
    std::vector<Strip> strips_;
};

/// Whether a trim under the panels cannot end as the edge does: a sidewall whose foot is at an
/// outside corner of the wall runs out on panels (common practice, no published source).
bool must_lie_over(const Edge& edge);

std::string_view word_of(TrimRole);
std::string_view word_of(Panels);
std::string_view word_of(LegName);
Text spoken(LegName);

}  // namespace hemline
