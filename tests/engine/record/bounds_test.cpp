// How many a list in an event may hold: that many are read, one more is set aside by name and kept
// byte for byte, and merged as any frame is.
#include <doctest/doctest.h>

#include <algorithm>
#include <string>
#include <type_traits>
#include <variant>

#include "engine/record/event_fields.h"
#include "engine/record/merge.h"
#include "tests/engine/record/eave_record.h"
#include "tests/engine/record/same_event.h"

namespace hemline {
namespace {

Event event_with(Fact fact, std::size_t supersedes = 0) {
    Event event{{7, 1}, {1000, 0}, "Ada", {}, std::move(fact)};
    for (std::size_t i = 0; i < supersedes; ++i) {
        event.supersedes.push_back({8, static_cast<std::uint32_t>(i + 1)});
    }
    return event;
}

PlanChosen plan_with(std::size_t runs, std::size_t cuts) {
    PlanChosen plan;
    plan.runs.resize(runs);
    for (RunChosen& run : plan.runs) {
        run = {"A", TrimRole::main, std::vector<Length>(cuts, inches(12))};
    }
    return plan;
}

/// Why it is set aside; empty: it is read, and written back to the same bytes.
std::string refusal(const Event& event) {
    const Bytes frame = frame_of(event);
    const JournalRead read = read_journal(frame);
    if (read.set_aside.empty()) {
        CHECK(same_events(read.events, {event}));
        return {};
    }
    CHECK(read.events.empty());
    CHECK(read.whole_size == frame.size());
    Merge merge;
    merge.add(0, frame);
    merge.add(0, frame);
    CHECK(merge.journals().of_device == std::map<std::uint64_t, Bytes>{{event.id.device, frame}});
    return read.set_aside[0].why.english();
}

std::string refused(int kind, const std::string& why) {
    return "an event of kind " + std::to_string(kind) + " that this program cannot read (" + why +
           ")";
}

/// Takes the place of writer and reader: fills a list, counted over all lists of the event, with
/// one entry more than it may hold, and every other list with one entry.
class OneListTooLong {
  public:
    explicit OneListTooLong(int list) : too_long_(list) {}

    [[nodiscard]] bool is_done() const { return too_long_ < 0; }
    template <class T>
    void number(const char* /*name*/, T& value) {
        value = 1;
    }
    template <class T>
    void number(const char* /*name*/, T& value, T least, T most) {
        value = std::clamp(T{1}, least, most);
    }
    template <class E>
    void choice(const char* /*name*/, E& value, E /*last*/) {
        value = E{};
    }
    void flag(const char* /*name*/, bool& value) { value = true; }
    void length(const char* /*name*/, Length& value) { value = inches(1); }
    void text(const char* name, std::string& value) {
        count(name, value, 1, AtMost<text_most>());
        std::fill(value.begin(), value.end(), 'x');
    }
    template <class Many, std::size_t most>
    void count(const char* name, Many& many, std::size_t /*size_each*/, AtMost<most> /*bound*/) {
        const bool is_text = std::is_same_v<Many, std::string>;
        if (too_long_ == 0) {
            why = std::string(name) + (is_text ? ": longer than " : ": more than ") +
                  std::to_string(most) + (is_text ? " bytes" : "");
        }
        many.resize(too_long_-- == 0 ? most + 1 : 1);
    }
    void rest(Bytes& value) { value.assign(9, 1); }

    std::string why;  ///< it must be refused

  private:
    int too_long_;
};

/// How many texts and lists a kind has, each of which is refused when it holds one entry too many.
int lists_bounded(std::uint16_t kind) {
    for (int list = 0;; ++list) {
        Event event;
        event.fact = blank_fact(kind);
        OneListTooLong bytes(list);
        all_fields(bytes, event);
        CAPTURE(kind);
        CAPTURE(list);
        if (!bytes.is_done()) {
            return list;
        }
        CHECK(refusal(event) == refused(kind, bytes.why));
    }
}

TEST_CASE("Every text and every list of every kind has a bound, and is refused past it by name") {
    int kinds = 0, lists = 0;
    for (std::uint16_t kind = 1; kind < 1000; ++kind) {
        if (!std::holds_alternative<Unknown>(blank_fact(kind))) {
            ++kinds;
            lists += lists_bounded(kind) - 2;  // by whom, and what it supersedes, are of each
        }
    }
    CHECK(kinds == static_cast<int>(Fact::kinds) - 1);
    CHECK(lists >= 40);
}

TEST_CASE("As many as a list may hold are read; one more is set aside by name, and kept") {
    const Fact tick = EdgeFinished{"A", ""};
    CHECK(refusal(event_with(tick, supersedes_most)).empty());
    CHECK(refusal(event_with(tick, supersedes_most + 1)) ==
          refused(10, "supersedes: more than 4096"));
    const auto legs = [](std::size_t count) {
        return event_with(SectionChosen{"ridge_cap", std::vector<LegChosen>(count)});
    };
    CHECK(refusal(legs(event_legs_most)).empty());
    CHECK(refusal(legs(event_legs_most + 1)) == refused(30, "legs: more than 64"));
    const auto stock = [](std::size_t count) {
        return event_with(StockChosen{std::vector<Length>(count, feet(10))});
    };
    CHECK(refusal(stock(event_stock_most)).empty());
    CHECK(refusal(stock(event_stock_most + 1)) == refused(24, "stock: more than 64"));
    CHECK(refusal(event_with(plan_with(event_runs_most, 3))).empty());
    CHECK(refusal(event_with(plan_with(event_runs_most + 1, 3))) ==
          refused(20, "runs: more than 1000"));
    CHECK(refusal(event_with(plan_with(3, event_cuts_most))).empty());
    CHECK(refusal(event_with(plan_with(3, event_cuts_most + 1))) ==
          refused(20, "cuts: more than 1000"));
    CHECK(refusal(event_with(EdgeFinished{std::string(4096, 'x'), ""})).empty());
    CHECK(refusal(event_with(EdgeFinished{std::string(4097, 'x'), ""})) ==
          refused(10, "edge: longer than 4096 bytes"));
}

}  // namespace
}  // namespace hemline
