// Sets what was said once of the whole job, by its key.
#pragma once

#include <optional>
#include <string_view>

#include "engine/trim/site.h"
#include "engine/words/result.h"

namespace hemline {

/// Sets a rule of the site: "panel_metal", "treated_wood", "trim_held", "metal_now",
/// "metal_coldest", "metal_hottest", "wind_from", "bearing.A", "first.A", "seams.N" ("right 2 in");
/// an empty value takes back what was said.
/// Nullopt: there is no such key. The problem inside: the value cannot be right; empty: it is set.
struct SiteSet {
    bool known = true;
    std::optional<Problem> problem;
};
SiteSet set_site(Site& site, std::string_view key, std::string_view value);

}  // namespace hemline
