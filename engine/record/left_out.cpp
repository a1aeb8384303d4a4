#include "engine/record/left_out.h"

#include <utility>

#include "engine/dividing/piece_bounds.h"
#include "engine/words/path_text.h"
#include "engine/words/result.h"

namespace hemline {

namespace {

/// Past these a screen would say nothing else.
constexpr std::size_t said_most = 8;

}  // namespace

void LeftOut::add(const std::string& thing, Problem problem) {
    std::optional<Problem>& own = problems_[thing];
    if (own || kept_ < said_most) {
        kept_ += own ? 0 : 1;
        own = std::move(problem);
    }
}

void LeftOut::mend(const std::string& thing) {
    if (const auto own = problems_.find(thing); own != problems_.end()) {
        kept_ -= own->second ? 1 : 0;
        problems_.erase(own);
    }
}

std::vector<Problem> LeftOut::all() const {
    std::vector<Problem> said;
    for (const auto& [thing, problem] : problems_) {
        if (problem) {
            said.push_back(*problem);
        }
    }
    if (const std::size_t more = problems_.size() - kept_; more > 0) {
        said.push_back({say_count("{1} thing more on this job is past any roof and left out.",
                                  "{1} things more on this job are past any roof and left out.",
                                  static_cast<std::int64_t>(more)),
                        say("Say anew, or cross out, what is named first.")});
    }
    return said;
}

Problem too_many_edges(std::size_t left_out, const std::string& first) {
    return {say_count("A job holds {2} edges, and {1} more is left out: {3}.",
                      "A job holds {2} edges, and {1} more are left out, from {3} on.",
                      static_cast<std::int64_t>(left_out), edges_most, first),
            say("Start another job for that part of the roof.")};
}

Problem too_many_stock_lengths(std::size_t said) {
    return {say("Sticks were said to come in {1} lengths: only the {2} longest are used.", said,
                stock_lengths_most),
            say("Choose the lengths anew that the supplier really has.")};
}

Problem too_many_bodies(const std::string& body) {
    return {
        say("A job holds {1} roofs that are walked round, and {2} is left out.", bodies_most, body),
        say("Start another job for that roof.")};
}

Problem too_many_legs(const std::string& trim, std::size_t said) {
    return {say("The section of {1} was said to have {2} legs: it is left as the catalogue has it.",
                spaced(trim), said),
            say("Say the section anew, leg by leg.")};
}

Problem too_many_cuts(const std::string& edge, std::size_t said) {
    return {say("The plan picked cuts edge {1} into {2} pieces, more than {3}: it is left out.",
                edge, said, pieces_most),
            say("Pick a plan anew.")};
}

Problem rule_refused(const Problem& why) {
    return {glued(why.what, " ", say("The rule stays as it was.")), why.mend};
}

}  // namespace hemline
