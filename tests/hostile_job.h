// A job whose every word was written by somebody who means harm to what shows it: a terminal's
// escapes, line ends, marks that turn a line round or hide, a formula. Another tablet could send
// such a job.
#pragma once

#include <cstdint>
#include <filesystem>
#include <fstream>
#include <string>
#include <vector>

#include "engine/record/event_bytes.h"
#include "engine/words/result.h"
#include "engine/words/shown_text.h"

namespace hemline::test {

/// No line of an answer begins so unless somebody's line end got through.
constexpr const char* forged = "FORGED";

/// Short enough for an edge's id, and valid UTF-8.
inline std::string hostile(const std::string& word) {
    return word + "\x1B]0;x\a\n" + forged + "\u009B\u202E\u2066\u200B";
}

/// What somebody typed where the text of a cell or a sentence begins with it.
inline std::string hostile_formula() { return "=1+1;@" + hostile("SUM") + "\u2028\x7F<b>&\"'"; }

/// What is wrong with an answer or a page: the unseen that got through, or a forged line; empty is
/// good.
inline std::string not_plain(const std::string& shown) {
    if (shown_lines(shown) != shown) {
        return "not shown as text: " + shown_lines(shown).substr(0, 2000);
    }
    return shown.find(std::string("\n") + forged) != std::string::npos
               ? "a forged line: " + shown.substr(0, 2000)
               : "";
}

class HostileJob {
  public:
    HostileJob() {
        const std::string edge = hostile("A"), rolled = "eave_rolled";
        Edge eave;
        eave.id = edge;
        eave.kind = EdgeKind::eave;
        eave.left = eave.right = End::gable;
        eave.pitch = parse_slope_of(5);
        eave.metal = hostile("steel");
        eave.colour = hostile_formula();
        tell(JobStarted{hostile_formula(), hostile("practice")});
        tell(EdgeAdded{eave});
        tell(EdgeAdded{with_trim(eave, hostile("B"), hostile("trim"))});
        tell(ReadingTaken{edge, ReadingOf::edge, feet(46)});
        tell(ReadingTaken{edge, ReadingOf::edge, feet(46)});
        tell(PitchTaken{edge, *eave.pitch});
        tell(RuleSet{hostile("rule"), hostile("value")});
        tell(PieceCut{edge, TrimRole::main, 1, feet(9) + inches(4), {feet(10), {}}});
        tell(PieceSpoiled{edge, TrimRole::main, 2, feet(10), {feet(10), {}}});
        tell(StepDone{edge,
                      hostile("step"),
                      1,
                      {AnswerKind::seen, {}, 0, hostile("seen")},
                      hostile("why not"),
                      hostile("who")});
        tell(StepDone{edge, "tie_off", 0, {}, hostile("why not"), hostile("who")});
        tell(EdgeFinished{edge, hostile_formula()});
        tell(EdgeSentBack{edge, hostile("reason")});
        tell(Struck{{first_device, 5}, hostile("struck")});
        tell(PlanChosen{
            Prefer::looks, hostile("trim"), 0, 0, 5, {{edge, TrimRole::main, {feet(10)}}}});
        tell(MetalCounted{hostile("C"), TrimRole::main, feet(10), 3});
        tell(SupplyChosen{edge, TrimRole::main, Supply::on_hand_only});
        tell(SectionChosen{hostile("trim"), {}});
        tell(EdgeTakenOff{hostile("B")});
        tell(LapChosen{edge, inches(4)});
        // Another tablet read the pitch and the edge separately.
        writer_ = second_device;
        sequence_ = 0;
        tell(PitchTaken{edge, parse_slope_of(6)});
        tell(ReadingTaken{edge, ReadingOf::edge, feet(45)});
        tell(EdgeFinished{edge, hostile("another remark")});
    }

    static constexpr std::uint64_t first_device = 0x0f00'0000'0000'0001,
                                   second_device = 0x0f00'0000'0000'0002;

    [[nodiscard]] const std::vector<Event>& events() const { return events_; }
    [[nodiscard]] static std::string edge() { return hostile("A"); }

    /// Its two journals, in a new folder.
    void write(const std::filesystem::path& folder) const {
        std::filesystem::create_directories(folder);
        for (const Event& event : events_) {
            const Bytes frame = frame_of(event);
            std::ofstream journal(folder / (print_device(event.id.device) + ".journal"),
                                  std::ios::binary | std::ios::app);
            journal.write(reinterpret_cast<const char*>(frame.data()),
                          static_cast<std::streamsize>(frame.size()));
        }
    }

  private:
    static Slope parse_slope_of(int rise) { return *parse_slope(std::to_string(rise) + "/12"); }
    static Edge with_trim(Edge edge, const std::string& id, const std::string& trim) {
        edge.id = id;
        edge.trim = trim;
        return edge;
    }
    void tell(Fact fact) {
        ++sequence_;
        constexpr std::int64_t begin_ms = 1'777'881'600'000;  // 4 May 2026, 08:00 UTC
        const std::int64_t when = begin_ms + 60'000 * static_cast<std::int64_t>(sequence_);
        events_.push_back(
            {{writer_, sequence_}, {when, 0}, hostile("R. Vale"), {}, std::move(fact)});
    }

    std::uint64_t writer_ = first_device;
    std::uint32_t sequence_ = 0;
    std::vector<Event> events_;
};

}  // namespace hemline::test
