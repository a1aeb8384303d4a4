// What a journal says that is past any roof: it stays in the record, the job does without it, and
// says so.
#pragma once

#include <cstddef>
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "engine/words/result.h"

namespace hemline {

/// Edges that one job holds.
constexpr std::size_t edges_most = 2000;
/// Lengths that new sticks come in.
constexpr std::size_t stock_lengths_most = 16;

class LeftOut {
  public:
    /// `thing`: what it is about; said of it again, the last one holds.
    void add(const std::string& thing, Problem problem);
    /// The thing was said anew, as a roof can have it.
    void mend(const std::string& thing);
    [[nodiscard]] bool empty() const { return problems_.empty(); }
    /// The first few, and how many more there are.
    [[nodiscard]] std::vector<Problem> all() const;

  private:
    /// No more problems are kept than are said; of the others only what they are about.
    std::map<std::string, std::optional<Problem>> problems_;
    std::size_t kept_ = 0;
};

Problem too_many_edges(std::size_t left_out, const std::string& first);
Problem too_many_stock_lengths(std::size_t said);
Problem too_many_legs(const std::string& trim, std::size_t said);
Problem too_many_cuts(const std::string& edge, std::size_t said);
/// The rule is not taken up: why, and what to do.
Problem rule_refused(const Problem& why);

}  // namespace hemline
