// Journals made by a grammar: bytes choose events of every kind, by several tablets, separately and
// together, with strikes, supersedes and values at their ends, and each is written in a whole
// frame. The fields are those of event_fields.h, so a new kind and a new field are reached unasked.
#pragma once

#include <algorithm>
#include <array>
#include <cstring>
#include <limits>
#include <span>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "engine/record/event_fields.h"
#include "engine/record/job.h"
#include "engine/record/pick.h"
#include "engine/record/seen.h"

namespace hemline {

/// Stands where the writer and the reader of event_bytes.cpp do: draws each field from the bytes.
/// Bytes that have run out are zeros.
class FieldsDrawn {
  public:
    explicit FieldsDrawn(std::span<const std::uint8_t> bytes) : bytes_(bytes) {}

    [[nodiscard]] bool is_spent() const { return bytes_.empty(); }
    std::uint8_t octet() {
        if (bytes_.empty()) {
            return 0;
        }
        const std::uint8_t first = bytes_.front();
        bytes_ = bytes_.subspan(1);
        return first;
    }
    std::size_t below(std::size_t count) { return octet() % count; }

    template <class T>
    void number(const char* name, T& value) {
        number(name, value, std::numeric_limits<T>::min(), std::numeric_limits<T>::max());
    }
    template <class T>
    void number(const char* /*name*/, T& value, T least, T most) {
        switch (below(16)) {
            case 13:
                value = least;
                return;
            case 14:
                value = most;
                return;
            case 15:
                value = within(raw<T>(), least, most);
                return;
            case 12:
                value = within(static_cast<T>(octet() * 1'000'000), least, most);  // of an angle
                return;
            default:
                value = within(static_cast<T>(octet() % 8), least, most);
        }
    }
    template <class E>
    void choice(const char* /*name*/, E& value, E last) {
        value = static_cast<E>(below(static_cast<std::size_t>(last) + 1));
    }
    void flag(const char* /*name*/, bool& value) { value = below(2) == 1; }
    void length(const char* /*name*/, Length& value) {
        const std::array<Length, 8> ends{Length(),  Length::of_nm(1),  sixteenths(1),
                                         inches(6), feet(10),          feet(20),
                                         feet(300), longest_readable()};
        const std::uint8_t drawn = octet();
        value = drawn < ends.size() * 8 ? ends[drawn / 8] : inches(drawn) + sixteenths(below(16));
    }
    void text(const char* name, std::string& value) {
        const std::string_view what = name;
        const std::span<const char* const> words = what == "edge"    ? edges()
                                                   : what == "about" ? edges()
                                                   : what == "trim"  ? trims()
                                                   : what == "rule"  ? rules()
                                                   : what == "value" ? values()
                                                   : what == "step"  ? steps()
                                                                     : others();
        const std::uint8_t drawn = octet();
        if (drawn == 255 && spend(200)) {
            value.assign(text_most, 'x');
        } else {
            const auto from = drawn < 224 ? words : others();
            value = from[drawn % from.size()];
        }
    }
    template <class Many, std::size_t most>
    void count(const char* /*name*/, Many& many, std::size_t /*size_each*/, AtMost<most>) {
        const std::uint8_t drawn = octet();
        std::size_t size = drawn < 250 ? drawn % 4 : drawn < 254 ? drawn % 64 : most;
        size = std::min(size, most);
        many.resize(spend(size) ? size : 0);
    }
    void rest(std::vector<std::uint8_t>& value) {
        value.resize(below(8));
        for (std::uint8_t& one : value) {
            one = octet();
        }
    }

  private:
    template <class T>
    T raw() {
        T value{};
        std::array<std::uint8_t, sizeof(T)> drawn{};
        std::generate(drawn.begin(), drawn.end(), [&] { return octet(); });
        std::memcpy(&value, drawn.data(), sizeof value);
        return value;
    }
    template <class T>
    static T within(T value, T least, T most) {
        return std::clamp(value, least, most);
    }
    /// A journal holds so many parts of lists at most: the reader's time, not its bounds, is what
    /// would be measured otherwise.
    bool spend(std::size_t parts) {
        const bool enough = parts <= room_;
        room_ -= enough ? parts : 0;
        return enough;
    }

    static std::span<const char* const> edges() {
        static constexpr std::array<const char*, 5> words{"A", "B", "C", "D", "A"};
        return words;
    }
    static std::span<const char* const> trims() {
        static constexpr std::array<const char*, 8> words{
            "", "eave_rolled", "eave_two_part", "gable", "ridge_cap", "valley", "cleat", "no_trim"};
        return words;
    }
    static std::span<const char* const> rules() {
        static constexpr std::array<const char*, 10> words{
            "stock", "lap",         "sliver",     "cut_grid",      "kerf",
            "tape",  "cleat_clear", "lap_valley", "hook_gap_most", "tab_gable"};
        return words;
    }
    static std::span<const char* const> values() {
        static constexpr std::array<const char*, 10> words{
            "6 in", "10 ft", "0 in", "1/16 in", "1 mm", "20 ft", "2 in", "8 in", "1000 m", "mid_2"};
        return words;
    }
    static std::span<const char* const> steps() {
        static constexpr std::array<const char*, 10> words{
            "fasten", "hook", "cut", "remainder", "mend", "tick", "hand", "tie_off", "seal", "?"};
        return words;
    }
    static std::span<const char* const> others() {
        static constexpr std::array<const char*, 10> words{
            "Ada",     "",     "Ben",         "steel",           "right",
            "{1} {2}", "=1+1", "\"\n\x1B[2J", "\xE2\x80\xAE<b>", "A"};
        return words;
    }

    std::span<const std::uint8_t> bytes_;
    std::size_t room_ = 6000;
};

/// An empty fact of the variant's alternative with that number.
template <std::size_t... Places>
Fact fact_at(std::size_t place, std::index_sequence<Places...> /*all*/) {
    Fact fact;
    static_cast<void>(((Places == place && (fact.emplace<Places>(), true)) || ...));
    return fact;
}

/// Tablets that write in turn on the same roof, each with all, some or none of the others' events.
class EventGrammar {
  public:
    explicit EventGrammar(std::span<const std::uint8_t> bytes) : drawn_(bytes) {}

    /// At most so many, after those of a small roof that was read, so that most of them mean
    /// something.
    std::vector<Event> events(std::size_t most = 64) {
        if (drawn_.below(8) > 0) {
            begin_roof();
        }
        while (!drawn_.is_spent() && written_.size() < most) {
            write(fact_at(drawn_.below(Fact::kinds), every_fact));
        }
        return written_;
    }

  private:
    static constexpr auto every_fact = std::make_index_sequence<Fact::kinds>{};
    static constexpr std::int64_t morning_ms = 1'780'000'000'000;

    void begin_roof() {
        keep({{1, 1}, {morning_ms, 0}, "Ada", {}, JobStarted{"Invented shed", "common practice"}});
        for (const char* name : {"A", "B"}) {
            Edge edge;
            edge.id = name;
            edge.kind = *name == 'A' ? EdgeKind::eave : EdgeKind::gable;
            edge.left = *name == 'A' ? End::gable : End::eave;
            edge.right = *name == 'A' ? End::corner_out : End::ridge;
            edge.pitch = rise_in_12(5);
            for (const Fact& fact :
                 {Fact(EdgeAdded{edge}), Fact(ReadingTaken{name, ReadingOf::edge, feet(31)}),
                  Fact(ReadingTaken{name, ReadingOf::edge, feet(31)})}) {
                keep({{1, 1 + static_cast<std::uint32_t>(written_.size())},
                      {morning_ms + static_cast<std::int64_t>(written_.size()), 0},
                      "Ada",
                      {},
                      fact});
            }
        }
    }

    void write(Fact fact) {
        Event event;
        event.fact = std::move(fact);
        const std::uint8_t how = drawn_.octet();
        if ((how & 1U) != 0) {
            event.moment.emplace();
        }
        all_fields(drawn_, event);
        if (auto* unknown = std::get_if<Unknown>(&event.fact)) {
            unknown->kind = static_cast<std::uint16_t>(60'000 + drawn_.octet());
        }
        if ((how & 2U) != 0) {  // any number and any time stay as they were drawn
            keep(std::move(event));
            return;
        }
        event.id.device = 1 + drawn_.below(5);
        event.id.sequence = 1 + static_cast<std::uint32_t>(std::count_if(
                                    written_.begin(), written_.end(), [&](const Event& other) {
                                        return other.id.device == event.id.device;
                                    }));
        std::vector<Event> held = written_;
        held.resize(held.size() -
                    std::min<std::size_t>(held.size(), (how & 4U) != 0 ? how / 8 : 0));
        held = in_order(std::move(held));
        if ((how & 8U) != 0) {
            pick_some(held, event);
            const std::vector<EventId> seen = Seen(held).of(event);
            event.supersedes.insert(event.supersedes.end(), seen.begin(), seen.end());
            event.supersedes.resize(std::min(event.supersedes.size(), supersedes_most));
        }
        const bool had_moment = event.moment.has_value();
        stamp(event, held, morning_ms + drawn_.octet() * std::int64_t{600'000});
        if (!had_moment && event.when.wall_ms <= wall_ms_most) {
            event.moment.reset();
        }
        keep(std::move(event));
    }

    /// A pick of a random event would choose nothing, so a side of a disagreement is picked.
    void pick_some(const std::vector<Event>& held, Event& event) {
        if (!std::holds_alternative<Picked>(event.fact)) {
            return;
        }
        const Job job = replay(held);
        if (job.conflicts.empty()) {
            return;
        }
        const Conflict& conflict = job.conflicts[drawn_.below(job.conflicts.size())];
        const Tip& side = conflict.sides[drawn_.below(conflict.sides.size())];
        if (const Result<ToWrite> picked = pick(job, held, side.id)) {
            event.fact = picked->fact;
            event.supersedes = picked->supersedes;
        }
    }

    void keep(Event event) { written_.push_back(std::move(event)); }

    FieldsDrawn drawn_;
    std::vector<Event> written_;
};

}  // namespace hemline
