// A body as a job says it: its walk, with readings in place of what was stated, and pitches.
#pragma once

#include <map>
#include <optional>
#include <set>
#include <string>

#include "engine/body/roof.h"
#include "engine/record/job.h"

namespace hemline {

enum class LengthsFrom { readings, walk };

/// Where the lengths of sides come from, by their ids.
struct SaidHow {
    LengthsFrom from = LengthsFrom::readings;
    std::set<std::string> as_walked;        ///< in spite of readings
    std::map<std::string, Length> covered;  ///< under another body, where no edge is read
};

/// `pitch`: of eaves without one. Of a side that ends under another roof readings say nothing: how
/// far it goes there nobody can read.
RoofBody body_said(const Job& job, const WalkedBody& walked, const SaidHow& how,
                   std::optional<Slope> pitch);

/// Whether all that lies along it is read.
bool is_read_along(const Job& job, const SideWalked& side);

}  // namespace hemline
