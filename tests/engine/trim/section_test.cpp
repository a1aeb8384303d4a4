#include "engine/trim/section.h"

#include <rapidcheck.h>

#include "engine/trim/catalogue.h"
#include "engine/words/result.h"
#include "tests/engine/trim/sections.h"

using namespace hemline;

namespace {

const std::string section_header =
    "trim,leg,width,bend,radius,hem,lies,metal,thickness,painted,source\n";

/// What is wrong and what to do in a single string, or "" when the file is read.
std::string problem_of(const std::string& rows) {
    const auto read = Sections::read(section_header + rows);
    return read ? "" : said(read.problem()).english();
}

}  // namespace

TEST_CASE("every trim of the trade has a section, and each kind of hem is there") {
    const Sections sections = sections_of_assets();
    for (const char* trim :
         {"eave_rolled", "eave_two_part", "fascia_wrap", "cleat", "gable", "ridge_cap", "hip_cap",
          "valley", "sidewall", "headwall", "transition", "high_eave"}) {
        const Section* section = sections.find(trim);
        REQUIRE_MESSAGE(section != nullptr, trim);
        CHECK_MESSAGE(!check_section(*section), trim);
        for (const SectionLeg& leg : section->legs) {
            CHECK_FALSE(leg.source.empty());
        }
    }
    for (const Hem hem : {Hem::open, Hem::closed, Hem::tear_drop}) {
        bool there = false;
        for (const Section& section : sections.all()) {
            for (const SectionLeg& leg : section.legs) {
                there = there || leg.hem == hem;
            }
        }
        CHECK(there);
    }
}

TEST_CASE("the widest leg on the deck is the deck's, and of two as wide the first") {
    Section section;
    for (const auto& [inches_wide, lies] :
         {std::pair(9, LiesOn::wall), {4, LiesOn::deck}, {6, LiesOn::deck}, {6, LiesOn::deck}}) {
        SectionLeg leg;
        leg.width = inches(inches_wide);
        leg.lies = lies;
        section.legs.push_back(leg);
    }
    CHECK(deck_leg(section) == 2);
}

TEST_CASE("a section and its trim in the catalogue agree leg by leg") {
    const Sections sections = sections_of_assets();
    const auto catalogue = Catalogue::read(asset("catalogue/trims.csv"));
    REQUIRE(catalogue.ok());
    int compared = 0;
    for (const Trim& trim : catalogue->trims()) {
        const Section* section = sections.find(trim.id);
        REQUIRE_MESSAGE(section != nullptr, trim.id << " has no section");
        for (const Leg& leg : trim.legs) {
            Length width;
            for (const SectionLeg& other : section->legs) {
                if (word_of(other.name) == word_of(leg.name) && width == Length()) {
                    width = other.width;
                }
            }
            CHECK_MESSAGE(width == leg.width, trim.id << ' ' << word_of(leg.name));
            ++compared;
        }
    }
    CHECK(compared > 10);
}

TEST_CASE("24 gauge galvanized is 0.0276 in, as the gauge tables have it") {
    // TRADE tables of the US standard gauge: 24 galvanized .0276 in.
    const Sections sections = sections_of_assets();
    for (const Section& section : sections.all()) {
        CHECK(section.thickness == Length::of_nm(701'040));
        CHECK(section.metal == "galvanized steel");
    }
}

TEST_CASE("a bad row names its line, its column and the mend") {
    const std::string flange = "a,flange,4 in,,,,deck,steel,0.03 in,upper,mine\n";
    struct Case {
        std::string rows, says;
    };
    const Case cases[] = {
        {"a,lip,4 in,,,,deck,steel,0.03 in,upper,mine\n", "Line 2, column 3: leg \"lip\""},
        {"a,flange,4,,,,deck,steel,0.03 in,upper,mine\n", "Line 2, column 10: width"},
        {"a,flange,4 in,90,,,deck,steel,0.03 in,upper,mine\n", "Line 2, column 15: bend stands"},
        {"a,flange,4 in,,,,deck,,0.03 in,upper,mine\n", "Name the metal"},
        {"a,flange,4 in,,,,deck,steel,thin,upper,mine\n", "thickness"},
        {"a,flange,4 in,,,,deck,steel,0 in,upper,mine\n", "no thickness"},
        {"a,flange,4 in,,,,deck,steel,0.03 in,top,mine\n", "painted \"top\""},
        {"a,flange,4 in,,,,deck,steel,0.03 in,upper,\n", "Name the source"},
        {",flange,4 in,,,,deck,steel,0.03 in,upper,mine\n", "trim is empty"},
        {flange + "a,face,3 in,ninety,,,,,,,mine\n", "Line 3, column 13: bend \"ninety\""},
        {flange + "a,face,3 in,1e2,,,,,,,mine\n", "is no bend"},
        {flange + "a,face,3 in,176,,,,,,,mine\n", "Line 3, column 13: bend is wrong."},
        {flange + "a,face,3 in,0,,,,,,,mine\n", "0, or 175"},
        {flange + "a,hem,3 in,90,,open,,,,,mine\n", "Write a bend of 180 or -180."},
        {flange + "a,hem,3 in,180,,,,,,,mine\n", "Line 3, column 17: hem is wrong."},
        {flange + "a,face,3 in,90,,rolled,,,,,mine\n", "hem \"rolled\""},
        {flange + "a,face,3 in,90,,,floor,,,,mine\n", "lies \"floor\""},
        {flange + "a,face,3 in,90,,,,zinc,,,mine\n", "metal stands at"},
        {flange + "a,face,0 in,90,,,,,,,mine\n", "Line 3, column 8: width is wrong."},
        {flange + "b,flange,4 in,,,,deck,steel,0.03 in,upper,mine\n" + flange, "a second time"},
        {flange + "a,face,3 in,90,nan,,,,,,mine\n", "radius"},
    };
    for (const Case& one : cases) {
        const std::string said = problem_of(one.rows);
        CHECK_MESSAGE(said.find(one.says) != std::string::npos, one.rows << "said: " << said);
    }
    CHECK(problem_of(flange + "a,face,3 in,-22.5,1/8 in,,,,,,mine\n").empty());
    CHECK_FALSE(Sections::read("trim,leg\n").ok());
    CHECK_FALSE(Sections::read("").ok());
}

TEST_CASE("no bytes stop the reader") {
    const std::string whole = asset("catalogue/sections.csv");
    CHECK(rc::check([&](std::size_t at, std::uint8_t byte) {
        std::string spoilt = whole;
        spoilt[at % spoilt.size()] = static_cast<char>(byte);
        const auto read = Sections::read(spoilt);
        const bool said = read.ok() || !read.problem().what.empty();
        RC_ASSERT(said);
    }));
}

TEST_CASE("an edge's own face and flange replace the section's") {
    const Section plain = *sections_of_assets().find("eave_rolled");
    Edge edge;
    edge.face = inches(5);
    edge.flange = inches(3);
    const Section fitted = fitted_to(plain, edge);
    CHECK(fitted.legs[0].width == inches(3));
    CHECK(fitted.legs[1].width == inches(5));
    CHECK(fitted.legs[2] == plain.legs[2]);
    CHECK(deck_leg(fitted) == 0);
    CHECK(deck_leg(*sections_of_assets().find("valley")) == 1);
}
