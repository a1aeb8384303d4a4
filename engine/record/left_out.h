// What a journal says that no roof can have (far too long, far too many): it stays in the record,
// but the job leaves it out and says so.
#pragma once

#include <cstddef>
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "engine/words/result.h"

namespace hemline {

/// The most edges of a job.
constexpr std::size_t edges_most = 2000;
/// Roofs of one job that are each walked round.
constexpr std::size_t bodies_most = 40;
/// Lengths that new sticks come in.
constexpr std::size_t stock_lengths_most = 16;

class LeftOut {
  public:
    /// `thing`: what it is about. Of several about the same thing the last holds.
    void add(const std::string& thing, Problem problem);
    /// The thing was said again with a value that a roof can have.
    void mend(const std::string& thing);
    [[nodiscard]] bool empty() const { return problems_.empty(); }
    /// The first few, and how many more there are.
    [[nodiscard]] std::vector<Problem> all() const;

  private:
    /// Only as many problems are kept as are shown; of the others only what they are about.
    std::map<std::string, std::optional<Problem>> problems_;
    std::size_t kept_ = 0;
};

Problem too_many_edges(std::size_t left_out, const std::string& first);
Problem too_many_stock_lengths(std::size_t said);
Problem too_many_bodies(const std::string& body);
Problem too_many_legs(const std::string& trim, std::size_t said);
Problem too_many_cuts(const std::string& edge, std::size_t said);
/// The rule is not taken up: why, and what to do.
Problem rule_refused(const Problem& why);

}  // namespace hemline
