// A trim's cross-section: its legs in order, the bends between them, and what the metal is.
//
//      flange (on the deck)          the path runs from the free edge of the first leg to that of
//     ________  upper face           the last; "upper" is the face on its left, up and outside here
//             |
//        face |  upper face          bend + folds away from the upper face (here: down),
//             |                      bend − folds toward it (here the kick: out)
//              \  kick: −30
//              ⊂  hem: +180
//
//   For a screen: read the sections once, find a section by its trim's id and fit it to the edge;
//   bends_of() says how its legs turn, and check_section() what is wrong with it.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "engine/measure/slope.h"
#include "engine/quantity/length.h"
#include "engine/roof/edge.h"
#include "engine/trim/catalogue.h"
#include "engine/words/result_declared.h"

namespace hemline {

enum class Hem : std::uint8_t { none = 0, open = 1, closed = 2, tear_drop = 3 };
enum class LiesOn : std::uint8_t { nothing = 0, deck = 1, wall = 2, fascia = 3 };
enum class Painted : std::uint8_t { upper = 0, under = 1, both = 2, none = 3 };

/// The bend before a leg: fixed, or the fold of a kind of edge, which depends on the roof.
struct BendRule {
    std::optional<EdgeKind> fold_of;
    Angle angle;  ///< signed; unused where fold_of is set

    bool operator==(const BendRule&) const = default;
};

struct SectionLeg {
    LegName name = LegName::flange;
    Length width;                  ///< to the mould lines, outside to outside
    BendRule bend;                 ///< from the leg before; unused at the first leg
    std::optional<Length> radius;  ///< inside the bend; none: one thickness (FAA, annealed metal)
    Hem hem = Hem::none;
    LiesOn lies = LiesOn::nothing;
    std::string source;
    bool as_seam = false;  ///< as high as the job's seams

    bool operator==(const SectionLeg&) const = default;
};

struct Section {
    std::string trim;  ///< the trim's id: "eave_rolled"
    std::string metal;
    Length thickness;
    Painted painted = Painted::upper;
    std::vector<SectionLeg> legs;

    bool operator==(const Section&) const = default;
};

/// The most legs of a section.
constexpr std::size_t legs_most = 12;

/// Nothing, or what keeps the section from being made: no legs or too many, a width or thickness
/// not above 0, a fixed bend of 175° or more that is not a hem, a hem that is not folded by 180°.
/// `leg`, when given, gets the index of the leg that is wrong (-1: the whole section).
std::optional<Problem> check_section(const Section& section, int* leg = nullptr);

/// The section with the face and flange that the edge states, where it does.
Section fitted_to(Section section, const Edge& edge);

/// Index of the leg that lies on the deck (the widest of them), else of the first leg.
std::size_t deck_leg(const Section& section);

class Sections {
  public:
    /// Reads assets/catalogue/sections.csv, one row for each leg, a trim's rows together:
    /// trim,leg,width,bend,radius,hem,lies,metal,thickness,painted,source. `bend` is degrees
    /// ("-30") or a kind of edge, empty at a trim's first leg; metal, thickness and painted stand
    /// at the first leg only. Problem: names line, column and what to fix.
    static Result<Sections> read(std::string_view csv);

    /// Replaces the section of the same trim, if there is one.
    void put(const Section& section);

    [[nodiscard]] const std::vector<Section>& all() const { return all_; }
    [[nodiscard]] const Section* find(std::string_view trim) const;

  private:
    std::vector<Section> all_;
};

std::string_view word_of(Hem);
std::string_view word_of(LiesOn);
std::string_view word_of(Painted);
/// For people; empty for a leg without a hem.
Text spoken(Hem);

}  // namespace hemline
