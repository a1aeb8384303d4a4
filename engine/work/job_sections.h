// The trims as this job bends them: the catalogue's, with the legs, bends and hems that the crew
// keyed in.
#pragma once

#include "engine/record/job.h"
#include "engine/trim/section.h"

namespace hemline {

/// The section with the legs chosen; as it is where the catalogue's has another number of legs.
Section with_legs(Section section, const std::vector<LegChosen>& legs);
/// The legs as they are, to begin from.
std::vector<LegChosen> legs_of(const Section& section);

/// The catalogue's sections and trims with the job's own in their places.
Sections sections_on(const Sections& sections, const Job& job);
Catalogue catalogue_on(const Catalogue& catalogue, const Sections& sections, const Job& job);

}  // namespace hemline
