// What is said once of the whole job and is no length: a row among the rules, and its answers.
#pragma once

#include <string>
#include <vector>

#include "field/state/state.h"

namespace hemline {

/// The keys to ask for on this job: metals, how trim is held, its temperature, the wind, and the
/// bearing of each edge that follows from no other.
std::vector<std::string> site_keys(const State& state);

bool is_site_key(const std::string& key);

/// What is said now, in words: "not said", "W", "painted aluminum".
Text site_words(const State& state, const std::string& key);

struct SiteAnswer {
    std::string value;  ///< as RuleSet keeps it
    Text words;
};
std::vector<SiteAnswer> site_answers(const State& state, const std::string& key);

}  // namespace hemline
