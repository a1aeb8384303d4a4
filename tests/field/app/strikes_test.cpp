// The record screen over strikes of themselves, of each other and of a hundred thousand in a chain.
#include <doctest/doctest.h>

#include <algorithm>
#include <fstream>

#include "field/state/told.h"
#include "tests/engine/record/strikes_record.h"
#include "tests/field/app/journey.h"

using namespace hemline;

namespace {

/// A crew's job with that file beside its journal, opened again.
struct StruckJob : Journey {
    explicit StruckJob(std::uint32_t chain) {
        tap("demo");
        const Bytes bytes = journal_of(strikes_record(chain));
        std::ofstream(job() / (print_device(strikes_device) + ".journal"), std::ios::binary)
            .write(reinterpret_cast<const char*>(bytes.data()),
                   static_cast<std::streamsize>(bytes.size()));
        start_again();
        tap("history");
    }
};

}  // namespace

TEST_SUITE_BEGIN("large");

TEST_CASE("The record screen tells a strike of a strike one level deep") {
    const StruckJob crew(3);
    std::size_t told_once = 0;
    for (const Event& event : crew.state().events) {
        const auto* const strike = std::get_if<Struck>(&event.fact);
        if (strike != nullptr) {
            const std::string words = told(crew.state(), event.fact).english();
            CAPTURE(words);
            CHECK(words.find("Crossed out \"Crossed out another entry") == 0);  // no number
            CHECK(words.find("\"", words.find('"') + 1) != std::string::npos);
            CHECK(std::count(words.begin(), words.end(), '"') == 2);
            ++told_once;
        }
    }
    CHECK(told_once == 6);
    const auto& said = crew.screen->ui().words();
    CHECK(std::any_of(said.begin(), said.end(), [](const Words& one) {
        return one.words.find("Crossed out \"Crossed out another entry") == 0;
    }));
}

TEST_CASE("The record screen over a chain of a hundred thousand strikes opens and moves at once") {
    constexpr double processor_s_most = 150;  // a square of these takes minutes
    const double before = processor_s();
    StruckJob crew(100'000);
    CHECK(crew.where().screen == Screen::history);
    CHECK(crew.state().job.struck.size() > 50'000);
    for (int i = 0; i < 10; ++i) {
        crew.screen->drag_from(600, 500, 0, -300);
    }
    crew.tap("undo");
    CHECK(crew.where().screen == Screen::history);
    CHECK(processor_s() - before < processor_s_most);
}

TEST_SUITE_END();
