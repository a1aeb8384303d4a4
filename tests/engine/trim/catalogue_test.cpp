#include <doctest/doctest.h>
#include <rapidcheck.h>

#include <string>
#include <vector>

#include "engine/trim/catalogue.h"
#include "engine/words/result.h"
#include "tests/engine/trim/sections.h"

using namespace hemline;

namespace {

const std::string header =
    "id,name,kind,role,panels,flange,face,kick,hem,least,most,seams,source\n";

}  // namespace

TEST_CASE("The catalogue's first main trim of a kind is its default") {
    const Catalogue trims = catalogue_of_assets();
    REQUIRE(trims.default_for(EdgeKind::eave) != nullptr);
    CHECK(trims.default_for(EdgeKind::eave)->id == "eave_rolled");
    CHECK(trims.default_for(EdgeKind::eave, TrimRole::wrap)->id == "fascia_wrap");
    CHECK(trims.default_for(EdgeKind::eave, TrimRole::cleat)->id == "cleat");
    CHECK(trims.default_for(EdgeKind::ridge, TrimRole::wrap) == nullptr);
}

TEST_CASE("Every kind of edge has a trim, and one cleat serves all that hook on one") {
    const Catalogue trims = catalogue_of_assets();
    for (const KindOfEdge& one : kinds_of_edge()) {
        CAPTURE(one.word);
        CHECK((trims.default_for(one.kind) != nullptr) == (one.lies != Lies::on_no_line));
    }
    for (const EdgeKind kind : {EdgeKind::eave, EdgeKind::gable, EdgeKind::high_eave}) {
        REQUIRE(trims.default_for(kind, TrimRole::cleat) != nullptr);
        CHECK(trims.default_for(kind, TrimRole::cleat)->id == "cleat");
    }
    CHECK(trims.default_for(EdgeKind::valley, TrimRole::cleat) == nullptr);
}

TEST_CASE("Base flashings stand 8 in up the wall and lie 4 in or more under the roof") {
    // UFGS 07600.
    const Catalogue trims = catalogue_of_assets();
    for (const char* id : {"sidewall", "headwall"}) {
        CHECK(leg_width(*trims.find(id), LegName::face) >= inches(8));
        CHECK(leg_width(*trims.find(id), LegName::flange) >= inches(4));
    }
}

TEST_CASE("An edge has the trim it names, or its kind's default") {
    const Catalogue trims = catalogue_of_assets();
    Edge edge;
    CHECK(trims.of(edge)->id == "eave_rolled");
    edge.trim = "eave_two_part";
    CHECK(trims.of(edge)->id == "eave_two_part");
    edge.trim = "nothing";
    CHECK(trims.of(edge) == nullptr);
    CHECK(trims.find("nothing") == nullptr);
}

TEST_CASE("Every trim of the catalogue has legs, panels it serves and a source") {
    const Catalogue trims = catalogue_of_assets();
    for (const Trim& trim : trims.trims()) {
        CAPTURE(trim.id);
        CHECK(girth(trim) > Length());
        CHECK_FALSE(trim.seams.empty());
        CHECK_FALSE(trim.source.empty());
        CHECK_FALSE(trim.name.empty());
    }
}

TEST_CASE("Girth is the sum of the legs") {
    // The eave trim's invented common dimensions: 4, 3 1/2, 1/2 and 1/2 in make 8 1/2 in.
    const Catalogue trims = catalogue_of_assets();
    const Trim& eave = *trims.find("eave_rolled");
    CHECK(leg_width(eave, LegName::flange) == inches(4));
    CHECK(girth(eave) == inches(8) + sixteenths(8));
    CHECK(leg_width(*trims.find("cleat"), LegName::hem) == Length());
}

TEST_CASE("An edge's own face and flange go before the catalogue's") {
    const Catalogue trims = catalogue_of_assets();
    Edge edge;
    CHECK(fitted_to(*trims.find("eave_rolled"), edge) == *trims.find("eave_rolled"));
    edge.face = inches(5);
    edge.flange = inches(6);
    const Trim fitted = fitted_to(*trims.find("eave_rolled"), edge);
    CHECK(leg_width(fitted, LegName::face) == inches(5));
    CHECK(leg_width(fitted, LegName::flange) == inches(6));
    CHECK(girth(fitted) == inches(12));
}

TEST_CASE("Columns may stand in any order") {
    const auto trims = Catalogue::read(
        "source,seams,most,least,hem,kick,face,flange,panels,role,kind,name,id\n"
        "somewhere,snap_lock mechanical,6/12,3/12,,,4 in,,under,main,eave,a trim,x\n");
    REQUIRE(trims.ok());
    const Trim& trim = trims->trims().front();
    CHECK(trim.least == rise_in_12(3));
    CHECK(trim.most == rise_in_12(6));
    CHECK(trim.seams == std::vector<Seam>{Seam::snap_lock, Seam::mechanical});
}

TEST_CASE("What is wrong in a catalogue is said with its line, column and field") {
    struct Row {
        std::string row;
        const char* why;
    };
    const std::vector<Row> table = {
        {"x,n,eaves,main,under,4 in,,,,,,snap_lock,s", "Line 2, column 5: kind \"eaves\""},
        {"x,n,eave,mane,under,4 in,,,,,,snap_lock,s", "Line 2, column 10: role \"mane\""},
        {"x,n,eave,main,under,4,,,,,,snap_lock,s", "Line 2, column 21: flange \"4\""},
        {"x,n,eave,main,under,0 in,,,,,,snap_lock,s", "flange \"0 in\" is zero"},
        {"x,n,eave,main,under,,,,,,,snap_lock,s", "every other leg"},
        {"x,n,eave,main,under,4 in,,,,six,,snap_lock,s", "least \"six\""},
        {"x,n,eave,main,under,4 in,,,,,6,snap_lock,s", "most \"6\""},
        {"x,n,eave,main,under,4 in,,,,7/12,6/12,snap_lock,s", "steeper"},
        {"x,n,eave,main,under,4 in,,,,,,snap,s", "seams \"snap\""},
        {"x,n,eave,main,under,4 in,,,,,,,s", "seams is empty"},
        {"x,n,eave,main,under,4 in,,,,,,  ,s", "seams is empty"},
        {",n,eave,main,under,4 in,,,,,,snap_lock,s", "id is empty"},
        {"x,,eave,main,under,4 in,,,,,,snap_lock,s", "name is empty"},
        {"x,n,eave,main,under,4 in,,,,,,snap_lock,", "source is empty"},
        {"x,n,eave,main,under,4 in,,,,,,snap_lock", "12 cells"},
        {"x,n,eave,main,under,4 in,,,,,,snap_lock,s\nx,n,eave,main,under,4 in,,,,,,snap_lock,s",
         "Line 3, column 1: id \"x\" stands there twice"},
    };
    for (const Row& row : table) {
        const auto trims = Catalogue::read(header + row.row + "\n");
        REQUIRE_FALSE(trims.ok());
        CAPTURE(trims.problem().what);
        CHECK(trims.problem().what.english().find(row.why) != std::string::npos);
        CHECK_FALSE(trims.problem().mend.empty());
    }
    CHECK_FALSE(Catalogue::read("").ok());
    CHECK_FALSE(Catalogue::read("id,name\nx,n\n").ok());
    CHECK_FALSE(Catalogue::read(header.substr(0, header.size() - 1) + ",more\n").ok());
}

TEST_CASE("Whatever the bytes, a catalogue is read or refused with a mend") {
    CHECK(rc::check([](const std::string& text) {
        for (const std::string& csv : {text, header + text}) {
            const auto trims = Catalogue::read(csv);
            RC_ASSERT((trims.ok() || !trims.problem().mend.empty()));
        }
    }));
}
