// The words that a procedures file may use: how often, what is asked, numbers to put in, limits.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "engine/measure/length_text.h"
#include "engine/trim/practice.h"
#include "engine/work/procedure.h"

namespace hemline {

std::optional<Each> each_of(std::string_view word);
std::optional<Only> only_of(std::string_view word);
std::optional<Asks> asks_of(std::string_view word);

/// True when the step comes once for each piece or lap, not once for the edge.
constexpr bool is_of_pieces(Each each) {
    return each != Each::edge && each != Each::sent_back && each != Each::fifth_seam &&
           each != Each::cut_pan;
}
/// The run whose pieces the step goes through.
TrimRole role_of(Each each);

/// The limits of a count that mean "as many as planned".
constexpr std::string_view screws_planned = "screws";
constexpr std::string_view closures_planned = "closures";
constexpr std::string_view rivets_planned = "rivets";
constexpr std::string_view strip_screws_planned = "strip_screws";
constexpr std::string_view clips_planned = "clips";
/// The limit of a length that means "half the open valley".
constexpr std::string_view half_planned = "half";
/// And the least from a seam to a pipe's center.
constexpr std::string_view seam_least_planned = "seam_least";
struct PlannedCounts {
    std::int64_t screws = 0, closures = 0, rivets = 0, strip_screws = 0, clips = 0;
};

/// A length of practice by its key ("lap", "hook_gap_most"); none when there is no such key.
std::optional<Length> practice_length(const Practice& practice, std::string_view key);
/// A limit of a length: a practice key, or a length as people write it.
std::optional<Length> length_limit(std::string_view word, const Practice& practice);
/// A limit of a count: a whole number from 0, or "screws" and its like for as many as planned.
std::optional<std::int64_t> count_limit(std::string_view word, const PlannedCounts& planned);

/// The marks lengths are printed on: those of the grid that cuts lie on.
Marks marks_of(const Practice& practice);

/// Every word in braces: "cut" of "Cut {cut}". Unpaired braces are ignored.
std::vector<std::string> words_in_braces(std::string_view text);

}  // namespace hemline
