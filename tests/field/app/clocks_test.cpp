// A clock that is years off, on the screens: its holder and the foreman are told whose it is, and
// the days of the others stay theirs.
#include <doctest/doctest.h>

#include <algorithm>
#include <fstream>

#include "engine/record/job.h"
#include "field/state/told.h"
#include "tests/engine/record/eave_record.h"
#include "tests/field/app/journey.h"

using namespace hemline;

namespace {

constexpr std::int64_t minute_ms = 60'000, ten_years_ms = 315'576'000'000;
constexpr std::uint64_t hals_tablet = 0x77aa'0000'0000'beefU, bens_tablet = 0x88bb'0000'0000'beefU;

/// The demo roof on three tablets; this one's clock, or Hal's, is ten years ahead.
struct ThreeTablets : Journey {
    explicit ThreeTablets(std::uint64_t wrong) {
        wall_ms += wrong == hals_tablet ? 0 : ten_years_ms;
        tap("demo");
        const std::int64_t now = wrong == hals_tablet ? wall_ms : wall_ms - ten_years_ms;
        std::vector<Event> events = state().events;
        for (const std::uint64_t device : {hals_tablet, bens_tablet, hals_tablet}) {
            const auto number = static_cast<std::uint32_t>(events.size() + 1);
            Event event{{device, number},
                        {},
                        device == hals_tablet ? "Hal" : "Ben",
                        {},
                        ReadingTaken{"A", ReadingOf::edge, feet(30) + sixteenths(number % 2)}};
            event.supersedes = Seen(events).of(event);
            stamp(event, events, now + (device == wrong ? ten_years_ms : 0));
            const Bytes frame = frame_of(event);
            std::ofstream(job() / (print_device(device) + ".journal"),
                          std::ios::binary | std::ios::app)
                .write(reinterpret_cast<const char*>(frame.data()),
                       static_cast<std::streamsize>(frame.size()));
            events.push_back(std::move(event));
        }
        start_again();
    }
    [[nodiscard]] bool shows(std::string_view words) const {
        const auto& said = screen->ui().words();
        return std::any_of(said.begin(), said.end(), [&](const Words& one) {
            return one.words.find(words) != std::string::npos;
        });
    }
};

}  // namespace

TEST_CASE("The foreman is told whose clock is wrong; who cuts on a right one is not") {
    ThreeTablets crew(hals_tablet);
    crew.read_edge("C", feet(15), feet(15), "5");
    crew.tap("leave");
    CHECK(crew.state().clocks.size() == 1);
    CHECK(clocks_told(crew.state()).empty());
    CHECK_FALSE(crew.shows("Set that tablet's clock"));
    crew.tap("person Foreman");
    CHECK(crew.shows("Hal's tablet is"));
    CHECK(crew.shows("Set that tablet's clock"));
    crew.tap("language");
    CHECK(crew.shows("la tableta de Hal"));
    CHECK_FALSE(crew.shows("Set that tablet's clock"));
}

TEST_CASE("Who holds the tablet whose clock is wrong is told to set it") {
    ThreeTablets crew(0);
    CHECK(crew.shows("This tablet's clock is"));
    CHECK(crew.shows("Set the tablet's clock"));
    crew.wall_ms -= ten_years_ms + minute_ms;  // he does
    crew.read_edge("C", feet(15), feet(15), "5");
    crew.tap("leave");
    CHECK_FALSE(crew.shows("Set the tablet's clock"));
}

TEST_CASE("Beside a tablet ten years ahead the day sheet opens on the day of the others") {
    ThreeTablets crew(hals_tablet);
    crew.tap_all({"person Foreman", "day"});
    CHECK(crew.where().screen == Screen::day);
    CHECK(crew.shows("Ben: 1 reading."));
    CHECK_FALSE(crew.shows("Hal:"));
    crew.tap("day after");
    CHECK(crew.shows("Hal: 2 readings."));
    CHECK_FALSE(crew.shows("Ben:"));
}
