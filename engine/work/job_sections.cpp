#include "engine/work/job_sections.h"

#include <algorithm>

namespace hemline {

namespace {

bool has_hems_of(const Section& section, const std::vector<LegChosen>& legs) {
    return std::equal(legs.begin(), legs.end(), section.legs.begin(), section.legs.end(),
                      [](const LegChosen& chosen, const SectionLeg& leg) {
                          return (chosen.hem != Hem::none) == (leg.hem != Hem::none);
                      });
}

/// The legs from the section's own first edge. A sidewall's were once recorded from the other edge,
/// and the journals that hold them must go on to mean the same metal.
std::vector<LegChosen> from_first_edge(const Section& section, std::vector<LegChosen> legs) {
    if (has_hems_of(section, legs)) {
        return legs;
    }
    std::vector<LegChosen> turned(legs.rbegin(), legs.rend());
    for (std::size_t i = 0; i < turned.size(); ++i) {
        // A bend stands at the later of its two legs.
        turned[i].bend = i == 0 ? std::nullopt : legs[turned.size() - i].bend;
    }
    return has_hems_of(section, turned) ? turned : legs;
}

}  // namespace

Section with_legs(Section section, const std::vector<LegChosen>& chosen) {
    if (chosen.size() != section.legs.size()) {
        return section;
    }
    const std::vector<LegChosen> legs = from_first_edge(section, chosen);
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
    for (Section section : sections.all()) {
        for (SectionLeg& leg : section.legs) {
            leg.width = leg.as_seam ? job.practice.seam_height : leg.width;
        }
        own.put(section);
    }
    for (const auto& [trim, legs] : job.sections) {
        if (const Section* const section = sections.find(trim)) {
            own.put(with_legs(*section, legs));
        }
    }
    return own;
}

Catalogue catalogue_on(const Catalogue& catalogue, const Sections& sections, const Job& job) {
    Catalogue own = catalogue;
    own.put_seam_height(job.practice.seam_height);
    for (const auto& [id, legs] : job.sections) {
        const Trim* const trim = catalogue.find(id);
        const Section* const section = sections.find(id);
        if (trim == nullptr || section == nullptr || section->legs.size() != legs.size()) {
            continue;
        }
        Trim changed = *trim;
        const Section bent = with_legs(*section, legs);
        for (Leg& leg : changed.legs) {
            for (std::size_t i = legs.size(); i-- > 0;) {  // the first of a name is the trim's
                leg.width = bent.legs[i].name == leg.name ? bent.legs[i].width : leg.width;
            }
        }
        own.put(changed);
    }
    return own;
}

}  // namespace hemline
