#include "tools/bench_cutting/replan.h"

#include <algorithm>
#include <cstdio>
#include <random>

#include "engine/plan/make_plan.h"
#include "engine/plan/plan.h"
#include "engine/record/event.h"
#include "engine/record/job.h"
#include "engine/words/result.h"
#include "field/store/assets.h"
#include "field/store/folders.h"
#include "tools/bench_cutting/timing.h"

namespace hemline {

namespace {

constexpr int edges = 70;

/// An invented roof: eaves of 4 to 60 ft between gables, read twice.
class Roof {
  public:
    Roof() {
        for (int e = 0; e < edges; ++e) {
            Edge edge;
            edge.id = "E" + std::to_string(e + 1);
            edge.kind = EdgeKind::eave;
            edge.left = edge.right = End::gable;
            edge.pitch = rise_in_12(5);
            add(EdgeAdded{edge});
        }
        for (int e = 0; e < edges; ++e) {
            const Length length = sixteenths(between(48 * 16, 720 * 16));
            for (int times = 0; times < 2; ++times) {
                add(ReadingTaken{id(e), ReadingOf::edge, length});
            }
        }
    }

    /// Something that happens to a piece of the plan: cut, spoiled, or its edge read again.
    void go_on(const Plan& plan) {
        std::vector<std::pair<const Run*, const PlannedPiece*>> uncut;
        for (const Run& run : plan.runs) {
            for (const PlannedPiece& piece : run.pieces) {
                if (piece.source && run.role == TrimRole::main) {
                    uncut.emplace_back(&run, &piece);
                }
            }
        }
        if (uncut.empty()) {
            return;
        }
        const auto [run, piece] =
            uncut[static_cast<std::size_t>(between(0, static_cast<int>(uncut.size()) - 1))];
        const PlannedStick* stick = find_stick(plan, piece->source->stick);
        const MetalTaken metal{stick->length, stick->offcut};
        switch (between(0, 5)) {
            case 0:
                add(PieceSpoiled{run->edge, run->role, piece->number, piece->cut, metal});
                break;
            case 1:
                add(ReadingTaken{run->edge, ReadingOf::edge,
                                 covers_of(*run) + sixteenths(between(-3, 3))});
                break;
            case 2:
                add(PieceCut{run->edge, run->role, piece->number,
                             std::max(piece->cut - sixteenths(between(0, 2)), inches(24)), metal});
                break;
            default:
                add(PieceCut{run->edge, run->role, piece->number, piece->cut, metal});
        }
    }
    [[nodiscard]] const Job& job() const { return job_; }

  private:
    static std::string id(int edge) { return "E" + std::to_string(edge + 1); }
    int between(int low, int high) {
        return low + static_cast<int>(random_() % static_cast<std::uint64_t>(high - low + 1));
    }
    static Length covers_of(const Run& run) {
        Length sum;
        for (const PlannedPiece& piece : run.pieces) {
            sum += piece.covers;
        }
        return sum;
    }
    void add(Fact fact) {
        Event event;
        event.id = {1, ++sequence_};
        event.fact = std::move(fact);
        apply(job_, event);
    }

    Job job_;
    std::uint32_t sequence_ = 0;
    std::mt19937_64 random_{70};
};

bool time_replan(const char* name, const Catalogue& catalogue, const PlanOptions& options,
                 int events) {
    Roof roof;
    Plan plan = make_plan(roof.job(), catalogue, options);
    std::vector<double> ms;
    int proved = 0, proofs = 0;
    for (int event = 0; event < events; ++event) {
        roof.go_on(plan);
        const double start = cpu_ms();
        plan = make_plan(roof.job(), catalogue, options);
        ms.push_back(cpu_ms() - start);
        for (const Proof& proof : plan.proofs) {
            ++proofs;
            proved += proof.proved ? 1 : 0;
        }
    }
    std::sort(ms.begin(), ms.end());
    const double median = percentile(ms, 50);
    std::printf("%-34s %4d events: median %8.2f ms, p95 %8.2f, most %8.2f; proved %d of %d%s\n",
                name, events, median, percentile(ms, 95), ms.back(), proved, proofs,
                median <= 16 ? "" : "  OVER 16 ms");
    std::fflush(stdout);
    return median <= 16;
}

}  // namespace

bool time_replans() {
    const Result<std::filesystem::path> folder = assets_folder();
    const Result<Assets> assets = folder ? read_assets(*folder) : folder.problem();
    if (!assets) {
        std::printf("%s %s\n", assets.problem().what.english().c_str(),
                    assets.problem().mend.english().c_str());
        return false;
    }
    bool fine = time_replan("each edge in its style", assets->catalogue, {}, 200);
    for (const auto& [name, prefer] : {std::pair{"all edges, looks first", Prefer::looks},
                                       std::pair{"all edges, laps first", Prefer::laps},
                                       std::pair{"all edges, sticks first", Prefer::sticks}}) {
        PlanOptions options;
        options.prefer = prefer;
        fine = time_replan(name, assets->catalogue, options, 40) && fine;
    }
    return fine;
}

}  // namespace hemline
