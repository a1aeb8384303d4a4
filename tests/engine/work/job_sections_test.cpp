// The trims as a job bends them: what plan, card and pattern then use.
#include "engine/work/job_sections.h"

#include <doctest/doctest.h>

#include "engine/record/event.h"
#include "engine/trim/girth.h"
#include "tests/engine/trim/sections.h"

using namespace hemline;

namespace {

Job with_face(Length face) {
    const Sections sections = sections_of_assets();
    std::vector<LegChosen> legs = legs_of(*sections.find("eave_rolled"));
    legs[1].width = face;
    legs[2].bend = -degrees(20);
    Job job;
    Event event;
    event.id = {1, 1};
    event.fact = SectionChosen{"eave_rolled", legs};
    apply(job, event);
    return job;
}

}  // namespace

TEST_CASE("A leg keyed in is the section's and the trim's, and the blank is as much wider") {
    const Sections sections = sections_of_assets();
    const Catalogue catalogue = Catalogue::read(asset("catalogue/trims.csv")).value();
    const Job job = with_face(inches(5));
    const Sections own = sections_on(sections, job);
    const Section& before = *sections.find("eave_rolled");
    const Section& after = *own.find("eave_rolled");
    CHECK(after.legs[1].width == inches(5));
    CHECK(after.legs[1].bend == before.legs[1].bend);  // the roof's still
    CHECK(after.legs[2].bend.angle == -degrees(20));
    const Catalogue own_trims = catalogue_on(catalogue, sections, job);
    const Trim& trim = *own_trims.find("eave_rolled");
    CHECK(leg_width(trim, LegName::face) == inches(5));
    CHECK(leg_width(trim, LegName::flange) ==
          leg_width(*catalogue.find("eave_rolled"), LegName::flange));
    // 1 1/2 in more of face is 1 1/2 in more of blank, whatever the allowances of the same bends.
    Section same_bends = after;
    same_bends.legs[1].width = before.legs[1].width;
    const auto girth = [](const Section& section) {
        return blank_of(section, bends_at(section, 5)).value().girth;
    };
    CHECK(girth(after) - girth(same_bends) == inches(5) - before.legs[1].width);
    CHECK(*own.find("gable") == *sections.find("gable"));
}

TEST_CASE("Legs of another count, and a trim that is not there, change nothing") {
    const Sections sections = sections_of_assets();
    const Catalogue catalogue = Catalogue::read(asset("catalogue/trims.csv")).value();
    Job job;
    job.sections["eave_rolled"] = {{inches(9), Hem::none, {}}};
    job.sections["nothing"] = {{inches(9), Hem::none, {}}};
    CHECK(sections_on(sections, job).all() == sections.all());
    CHECK(catalogue_on(catalogue, sections, job).trims() == catalogue.trims());
}

TEST_CASE("Sidewall legs recorded from the hem's edge bend the same metal from the wall leg's") {
    // The order until the wall leg came first: hem, deck leg, wall leg; hem folded by -180.
    const Sections sections = sections_of_assets();
    const Catalogue catalogue = Catalogue::read(asset("catalogue/trims.csv")).value();
    Job job;
    job.sections["sidewall"] = {{sixteenths(12), Hem::open, {}},
                                {inches(6), Hem::none, -degrees(180)},
                                {inches(9), Hem::none, -degrees(85)}};
    const Section own = *sections_on(sections, job).find("sidewall");
    REQUIRE(own.legs.size() == 3);
    CHECK(own.legs[0].name == LegName::face);
    CHECK(own.legs[0].width == inches(9));
    CHECK(own.legs[1].name == LegName::flange);
    CHECK(own.legs[1].width == inches(6));
    CHECK(own.legs[1].bend.angle == -degrees(85));
    CHECK(own.legs[2].hem == Hem::open);
    CHECK(own.legs[2].width == sixteenths(12));
    CHECK(own.legs[2].bend.angle == -degrees(180));
    CHECK_FALSE(check_section(own).has_value());
    const Catalogue trims = catalogue_on(catalogue, sections, job);
    const Trim& trim = *trims.find("sidewall");
    CHECK(leg_width(trim, LegName::face) == inches(9));
    CHECK(leg_width(trim, LegName::flange) == inches(6));
}
