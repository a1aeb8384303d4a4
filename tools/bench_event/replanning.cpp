#include "tools/bench_event/replanning.h"

#include <array>
#include <optional>
#include <random>
#include <string>

#include "engine/plan/make_plan.h"
#include "engine/plan/plan.h"
#include "engine/record/event.h"
#include "engine/record/job.h"

namespace hemline {

namespace {

class Crew {
  public:
    Crew(const Catalogue& catalogue, const Practice& practice)
        : catalogue_(catalogue), practice_(practice) {}

    void write(Fact fact) {
        const auto number = static_cast<std::uint32_t>(events_.size()) + 1;
        events_.push_back({{1, number}, {number, 0}, "", {}, std::move(fact)});
        ms_.push_back(cpu_ms_of([this] {
            job_ = replay(events_, practice_);
            plan_ = make_plan(job_, catalogue_);
        }));
    }
    /// What is next on the plan: a piece to cut, or the remainder that a last piece waits for.
    [[nodiscard]] std::optional<Fact> next() const {
        for (const Run& run : plan_.runs) {
            for (const PlannedPiece& piece : run.pieces) {
                if (piece.is_cut || !piece.source) {
                    continue;
                }
                const bool waits = run.role == TrimRole::main && run.pieces.size() > 1 &&
                                   piece.number == static_cast<int>(run.pieces.size()) &&
                                   !has_remainder(run.edge);
                if (waits) {
                    return ReadingTaken{run.edge, ReadingOf::remainder, piece.covers - run.lap};
                }
                const PlannedStick* const stick = find_stick(plan_, piece.source->stick);
                return PieceCut{run.edge, run.role, piece.number, piece.cut,
                                MetalTaken{stick->length, stick->offcut}};
            }
        }
        return {};
    }
    [[nodiscard]] std::vector<double> times() const { return ms_; }

  private:
    [[nodiscard]] bool has_remainder(const std::string& edge) const {
        for (const RecordedReading& reading : job_.find(edge)->readings) {
            if (reading.of == ReadingOf::remainder) {
                return true;
            }
        }
        return false;
    }
    const Catalogue& catalogue_;
    const Practice& practice_;
    std::vector<Event> events_;
    std::vector<double> ms_;
    Job job_;
    Plan plan_;
};

}  // namespace

std::vector<Edge> invented_edges(int count) {
    constexpr std::array ends = {End::gable, End::corner_out, End::corner_in, End::wall};
    std::vector<Edge> edges(static_cast<std::size_t>(count));
    for (std::size_t i = 0; i < edges.size(); ++i) {
        edges[i].id = "E" + std::to_string(i + 1);
        edges[i].left = ends.at(i % ends.size());
        edges[i].right = ends.at(i / 4 % ends.size());
        edges[i].wrap = i % 7 == 0;
    }
    return edges;
}

Times replan_after_each_event(const std::vector<Edge>& edges, const Catalogue& catalogue,
                              const Practice& practice) {
    Crew crew(catalogue, practice);
    std::mt19937_64 random(70);
    for (const Edge& edge : edges) {
        crew.write(EdgeAdded{edge});
    }
    for (const Edge& edge : edges) {
        const Length length = sixteenths(1024 + static_cast<std::int64_t>(random() % 10'000));
        crew.write(ReadingTaken{edge.id, ReadingOf::edge, length});
        crew.write(ReadingTaken{edge.id, ReadingOf::edge, length});
        crew.write(PitchTaken{edge.id, rise_in_12(5)});
    }
    while (const std::optional<Fact> next = crew.next()) {
        crew.write(*next);
    }
    return Times(crew.times());
}

}  // namespace hemline
