// Plans forged in what they print, and certificates whose proof is absent, read by a program that
// links nothing of the engine.
#include <doctest/doctest.h>

#include <algorithm>
#include <fstream>

#include "tests/certificate/plan_print.h"
#include "tests/certificate/pool_bound.h"
#include "tests/cli/program.h"

using namespace hemline::test;

namespace {

struct Forged {
    certificate::Readings readings;
    Json plan, proof;

    [[nodiscard]] std::string wrong() const {
        std::string all;
        for (const std::string& what : certificate::wrong_with_plan(readings, proof, plan)) {
            all += what + "; ";
        }
        return all;
    }
    [[nodiscard]] bool names(const std::string& what) const {
        const auto named = certificate::unchecked(readings, proof, plan);
        return std::any_of(named.begin(), named.end(), [&](const std::string& own) {
            return own.find(what) != std::string::npos;
        });
    }
};

/// Three eaves, their wraps and cleats, planned.
Forged planned(const Desk& desk) {
    const std::string csv =
        "edge,kind,trim,length,left,right,pitch,looks\n"
        "E1,eave,,4576,gable,gable,5/12,\n"
        "E2,eave,,7084,gable,gable,5/12,\n"
        "E3,eave,,1431,gable,gable,5/12,balanced\n";
    const std::string file = desk.write("roof.csv", csv);
    const std::string proof = (desk.folder() / "proof.json").string();
    const Ran ran = desk.run({"plan", file, "--unit", "16ths", "--wrap", "--cleat", "--prefer",
                              "sticks", "--certificate", proof, "--json"});
    CHECK(ran.exit == 0);
    std::ifstream written(proof);
    return {certificate::read_readings(csv, sixteenth_nm), ran.json(),
            Json::parse(written, nullptr, false)};
}

Json& run_of(Json& plan, const std::string& edge, const std::string& role) {
    for (Json& run : plan["edges"]) {
        if (run["edge"] == edge && run["role"] == role) {
            return run;
        }
    }
    FAIL("no such run");
    return plan;
}

template <class Forge>
std::string wrong_with(const Forged& good, Forge forge) {
    Forged bad = good;
    forge(bad);
    return bad.wrong();
}

bool says(const std::string& wrong, const std::string& what) {
    CAPTURE(wrong);
    const bool found = wrong.find(what) != std::string::npos;
    CHECK(found);
    return found;
}

}  // namespace

TEST_CASE("A plan as it was printed is not wrong, and what is not checked of it has a name") {
    const Desk desk;
    const Forged good = planned(desk);
    CHECK(good.wrong() == "");
    CHECK(certificate::proofs_absent(good.proof).empty());
    for (const char* what : {"fixing", "proof: bound_from", "joints of cleats", "kerf, stock"}) {
        CAPTURE(what);
        CHECK(good.names(what));
    }
    Forged more = good;
    more.plan["weight"] = 12;
    more.plan["sticks"][0]["color"] = "gray";
    CHECK(more.wrong() == "");
    CHECK(more.names("weight"));
    CHECK(more.names("sticks: color"));
}

TEST_CASE("A reading that is left out, or taken twice, is found" * doctest::test_suite("long")) {
    const Desk desk;
    const Forged good = planned(desk);
    // E3 leaves plan and certificate: every run, its pieces and its place in the pools.
    says(wrong_with(good,
                    [](Forged& f) {
                        Json kept = Json::array();
                        for (const Json& run : f.plan["edges"]) {
                            if (run["edge"] != "E3") {
                                kept.push_back(run);
                            }
                        }
                        f.plan["edges"] = kept;
                        for (Json& pool : f.proof["pools"]) {
                            for (std::size_t e = pool["edges"].size(); e-- > 0;) {
                                if (pool["edges"][e]["edge"] == "E3") {
                                    pool["edges"].erase(e);
                                }
                            }
                        }
                    }),
         "a reading that is left out");
    says(wrong_with(good, [](Forged& f) { f.readings.push_back(f.readings[0]); }),
         "an edge that is read twice");
    says(wrong_with(good, [](Forged& f) { f.readings.erase(f.readings.begin()); }),
         "a run of an edge that nobody read");
    // A reading that the plan names a problem of is no forgery; it is named.
    Forged refused = good;
    refused.readings.push_back({"E9", 1, "", 0});
    says(refused.wrong(), "a reading that is left out");
    refused.plan["problems"].push_back({{"edge", "E9"}, {"severity", "problem"}});
    CHECK(refused.wrong() == "");
    CHECK(refused.names("edge E9"));
}

TEST_CASE("A run renamed cleat, and a forged run before the true one, are found") {
    const Desk desk;
    const Forged good = planned(desk);
    says(wrong_with(good, [](Forged& f) { run_of(f.plan, "E1", "main")["role"] = "cleat"; }),
         "a reading that is left out");
    // The wrap's pool is gone from the certificate, and the wrap is called a cleat.
    says(wrong_with(good,
                    [](Forged& f) {
                        for (const char* edge : {"E1", "E2", "E3"}) {
                            for (std::size_t r = f.plan["edges"].size(); r-- > 0;) {
                                if (f.plan["edges"][r]["edge"] == edge &&
                                    f.plan["edges"][r]["role"] == "cleat") {
                                    f.plan["edges"].erase(r);
                                }
                            }
                            run_of(f.plan, edge, "wrap")["role"] = "cleat";
                        }
                        for (std::size_t p = f.proof["pools"].size(); p-- > 0;) {
                            if (f.proof["pools"][p]["trim"] == "fascia_wrap") {
                                f.proof["pools"].erase(p);
                            }
                        }
                    }),
         "a cleat that is none");
    says(wrong_with(good,
                    [](Forged& f) {
                        Json forged = f.plan["edges"][0];
                        forged["pieces"][0]["cut_nm"] = sixteenth_nm;
                        f.plan["edges"].insert(f.plan["edges"].begin(), forged);
                    }),
         "a run that the plan has twice");
}

TEST_CASE("A proof that was rewritten is found, by its figures or by searching again" *
          doctest::test_suite("long")) {
    const Desk desk;
    const Forged good = planned(desk);
    for (std::size_t p = 0; p < good.plan["proof"].size(); ++p) {
        CAPTURE(p);
        says(wrong_with(good,
                        [&](Forged& f) {
                            Json& sticks = f.plan["proof"][p]["sticks"];
                            sticks = sticks.get<int>() - 1;
                        }),
             "a proof of other sticks than the plan's");
        says(wrong_with(good,
                        [&](Forged& f) {
                            Json& said = f.plan["proof"][p]["proved"];
                            said = !said.get<bool>();
                        }),
             "a proof against its own figures");
        says(wrong_with(good, [&](Forged& f) { f.plan["proof"].erase(p); }),
             "a pool without its proof");
    }
    says(wrong_with(good, [](Forged& f) { f.plan["proof"].push_back(f.plan["proof"][0]); }),
         "a pool that is proved twice");
    // Two pieces of 50 in on two sticks, and a bound that says two are needed.
    Json plan = {{"edges", Json::array()}, {"sticks", Json::array()}};
    for (int n = 1; n <= 2; ++n) {
        plan["edges"].push_back({{"edge", "E" + std::to_string(n)},
                                 {"role", "cleat"},
                                 {"pieces", {{{"cut_nm", 50 * inch_nm}, {"stick", n}}}}});
        plan["sticks"].push_back({{"stick", n}, {"pool", "cleat"}, {"stock_nm", 120 * inch_nm}});
    }
    const Json none = {{"pools", Json::array()}};
    CHECK(certificate::bound_of_pool("cleat", 1, none, plan) == certificate::Shown::yes);
    CHECK(certificate::bound_of_pool("cleat", 2, none, plan) == certificate::Shown::refuted);
}

TEST_CASE("Changed texts, piece numbers and remainders, and unknown pools, are found" *
          doctest::test_suite("long")) {
    const Desk desk;
    const Forged good = planned(desk);
    says(wrong_with(good, [](Forged& f) { f.plan["edges"][0]["pieces"][0]["cut"] = "9 ft"; }),
         "a text that says another length");
    says(wrong_with(good, [](Forged& f) { f.plan["edges"][0]["pieces"][0]["cut"] = "long"; }),
         "a text that says another length");
    says(wrong_with(good, [](Forged& f) { f.plan["edges"][0]["pieces"][0]["piece"] = 7; }),
         "pieces numbered otherwise");
    says(wrong_with(good, [](Forged& f) { f.plan["sticks"][0]["stick"] = 70; }),
         "sticks numbered otherwise");
    for (const char* name : {"used_nm", "left_nm"}) {
        says(wrong_with(good, [&](Forged& f) { f.plan["sticks"].back()[name] = sixteenth_nm; }),
             "a remainder that is not what is left");
    }
    says(wrong_with(good, [](Forged& f) { f.plan["sticks"].back()["trim"] = "gable"; }),
         "a stick of another trim or pool than its pieces");
    says(wrong_with(good, [](Forged& f) { f.plan["edges"][0]["trim"] = "gable"; }),
         "a run of another trim than its pool's");
    says(wrong_with(good,
                    [](Forged& f) {
                        Json choice = f.plan["choices"][0];
                        choice["pool"] = "no such pool";
                        f.plan["choices"].push_back(choice);
                    }),
         "a choice of an unknown pool");
    says(wrong_with(good, [](Forged& f) { f.plan["choices"][0]["trim"] = "gable"; }),
         "a choice of another trim than its pool's");
}

TEST_CASE("A bound whose proof is absent is not wrong, and is said not to be shown") {
    const Desk desk;
    Forged absent = planned(desk);
    absent.proof["pools"][0]["choices"][0]["parts"].clear();
    CHECK(absent.wrong() == "");
    REQUIRE(certificate::proofs_absent(absent.proof).size() == 1);
    CHECK(certificate::proofs_absent(absent.proof)[0].find("no proof of the bound of choice 1") !=
          std::string::npos);
    absent.proof["pools"][0]["choices"][0].erase("parts");
    CHECK(absent.wrong() == "");
    CHECK(certificate::proofs_absent(absent.proof).size() == 1);
}
