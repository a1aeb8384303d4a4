// Names for the edges that a walk gives: letters that are free, in walking order.
#pragma once

#include <set>
#include <string>
#include <vector>

#include "engine/work/roof_body.h"

namespace hemline {

/// Letters that neither the job nor the walk uses.
class FreeLetters {
  public:
    FreeLetters(const Job& job, const std::vector<SideWalked>& sides);
    std::string next();

  private:
    void take(const std::vector<SideWalked>& sides);

    std::set<std::string> taken_;
    std::size_t n_ = 0;
};

/// The end, or the usual one where the kind cannot have that.
End end_it_can_have(EdgeKind kind, Side side, End end);

/// Names the edge, says where it lies and gives it the usual trim of its kind; `roof.walked` is
/// told the names along its sides.
void add_edge(const Job& job, BodyOnJob& roof, const EdgeOnBody& edge, FreeLetters& free,
              const Catalogue& catalogue, std::vector<Fact>& facts);

}  // namespace hemline
