// The trims as this job bends them: those of the catalogue, with the legs, bends and hems that the
// crew keyed in.
#pragma once

#include "engine/record/job.h"
#include "engine/trim/section.h"

namespace hemline {

/// The section with the chosen legs; unchanged where the catalogue's section has another number of
/// legs.
Section with_legs(Section section, const std::vector<LegChosen>& legs);
/// The present legs of a section, to start changing from.
std::vector<LegChosen> legs_of(const Section& section);

/// The catalogue's sections and trims, with those changed by the job replaced.
Sections sections_on(const Sections& sections, const Job& job);
Catalogue catalogue_on(const Catalogue& catalogue, const Sections& sections, const Job& job);

}  // namespace hemline
