#include "engine/work/job_sections.h"

namespace hemline {

Section with_legs(Section section, const std::vector<LegChosen>& legs) {
    if (legs.size() != section.legs.size()) {
        return section;
    }
    for (std::size_t i = 0; i < legs.size(); ++i) {
        section.legs[i].width = legs[i].width;
        section.legs[i].hem = legs[i].hem;
        if (i > 0 && legs[i].bend) {
            section.legs[i].bend = {std::nullopt, *legs[i].bend};
        }
    }
    return section;
}

std::vector<LegChosen> legs_of(const Section& section) {
    std::vector<LegChosen> legs;
    for (std::size_t i = 0; i < section.legs.size(); ++i) {
        const SectionLeg& leg = section.legs[i];
        LegChosen chosen{leg.width, leg.hem, {}};
        if (i > 0 && !leg.bend.fold_of) {
            chosen.bend = leg.bend.angle;
        }
        legs.push_back(chosen);
    }
    return legs;
}

Sections sections_on(const Sections& sections, const Job& job) {
    Sections own = sections;
    for (const auto& [trim, legs] : job.sections) {
        if (const Section* const section = sections.find(trim)) {
            own.put(with_legs(*section, legs));
        }
    }
    return own;
}

Catalogue catalogue_on(const Catalogue& catalogue, const Sections& sections, const Job& job) {
    Catalogue own = catalogue;
    for (const auto& [id, legs] : job.sections) {
        const Trim* const trim = catalogue.find(id);
        const Section* const section = sections.find(id);
        if (trim == nullptr || section == nullptr || section->legs.size() != legs.size()) {
            continue;
        }
        Trim changed = *trim;
        for (Leg& leg : changed.legs) {
            for (std::size_t i = legs.size(); i-- > 0;) {  // the first of a name is the trim's
                leg.width = section->legs[i].name == leg.name ? legs[i].width : leg.width;
            }
        }
        own.put(changed);
    }
    return own;
}

}  // namespace hemline
