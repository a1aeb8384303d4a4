// The permitted divisions of an edge, and the least that they are worth.
#pragma once

#include <map>

#include "tests/certificate/joint_task.h"

namespace certificate {

/// One division: its cuts in fitting order.
struct Listed {
    Int laps = 0;
    bool unbalanced = false;
    std::vector<Int> cuts;
};

/// Every way to make up so much metal from so many pieces.
struct AnyWay {
    Int laps = 0;
    bool unbalanced = false;
    Int pieces = 0, metal = 0;
};

/// Every division that an edge may take with so many laps beyond the fewest.
struct Divisions {
    std::vector<Listed> listed;
    std::vector<AnyWay> any;
};

Int fewest_pieces(const JointEdge& edge);

/// What the cut of a piece adds to what it covers.
Int extra_of(const JointEdge& edge, std::size_t piece, std::size_t pieces);

/// Visible ends alike to a sixteenth of an inch, whole sticks between.
bool is_balanced(const JointEdge& edge, const std::vector<Int>& covers);

/// Some division into so many pieces is balanced.
bool can_balance(const JointEdge& edge, std::size_t pieces);

Divisions divisions_of(const JointEdge& edge, Int laps_most);

int class_of(Int laps, bool unbalanced);

Int worth_of(const JointWorths& worths, Int piece);

/// The least worth of so many pieces that make up so much, for edges with the same grid, stick and
/// sliver.
class LeastWorth {
  public:
    LeastWorth(const JointEdge& edge, const JointWorths& worths);

    /// None where so many permitted pieces make up less, or more.
    std::optional<Int> of(Int pieces, Int metal);
    /// With a piece in each range: the ends of the ranges rise, so the pieces in rising order lie
    /// in them too.
    [[nodiscard]] std::optional<Int> within(const Ranges& ranges, Int metal) const;

  private:
    struct Step {
        Int top = 0, worth = 0;  ///< the longest piece, in grid units, that is worth no more
    };
    void widen(std::size_t width);

    Int grid_, shortest_, longest_;
    std::vector<Step> steps_;
    std::vector<std::vector<Int>> least_;  ///< by pieces, then grid units made up at least
};

/// What the edge is worth at least, laps and balance priced too, by class; only of divisions in the
/// ranges, if any.
std::map<int, Int> least_by_class(const Divisions& divisions, const JointEdge& edge,
                                  const JointWorths& worths, const Ranges& ranges,
                                  LeastWorth& least);

}  // namespace certificate
