#include "engine/record/about_edge.h"

namespace hemline {
namespace {

/// One answer for each kind, so that a new kind does not compile without one.
struct EdgeIn {
    std::string operator()(const JobStarted& /*f*/) const { return {}; }
    std::string operator()(const EdgeAdded& /*f*/) const { return {}; }  // the job has it now
    std::string operator()(const EdgeTakenOff& f) const { return f.edge; }
    std::string operator()(const ReadingTaken& f) const { return f.edge; }
    std::string operator()(const PitchTaken& f) const { return f.edge; }
    std::string operator()(const StyleChosen& f) const { return f.edge; }
    std::string operator()(const LooksChosen& f) const { return f.edge; }
    std::string operator()(const LapChosen& f) const { return f.edge; }
    std::string operator()(const RuleSet& /*f*/) const { return {}; }
    std::string operator()(const StockChosen& /*f*/) const { return {}; }
    std::string operator()(const SectionChosen& /*f*/) const { return {}; }
    std::string operator()(const PlanChosen& /*f*/) const { return {}; }
    std::string operator()(const SupplyChosen& f) const { return f.edge; }
    std::string operator()(const PieceCut& f) const { return f.edge; }
    std::string operator()(const PieceSpoiled& f) const { return f.edge; }
    std::string operator()(const StepDone& f) const { return f.edge; }
    std::string operator()(const EdgeFinished& f) const { return f.edge; }
    std::string operator()(const EdgeSentBack& f) const { return f.edge; }
    std::string operator()(const MetalCounted& f) const { return f.edge; }
    std::string operator()(const StickMeasured& f) const { return f.edge; }
    std::string operator()(const StickSpoiled& f) const { return f.edge; }
    std::string operator()(const Picked& f) const {
        return is_on_edge(f.about) ? f.about.name : std::string();
    }
    std::string operator()(const Struck& /*f*/) const { return {}; }
    std::string operator()(const CopyNoted& /*f*/) const { return {}; }
    std::string operator()(const Unknown& /*f*/) const { return {}; }
};

}  // namespace

std::string edge_in(const Fact& fact) { return std::visit(EdgeIn{}, fact); }

std::map<std::string, const Event*> last_on_edges(std::span<const Event> events, const Job& job) {
    std::map<std::string, const Event*> last;
    for (const Event& event : events) {
        if (job.struck.count(event.id) == 0) {
            last[edge_in(event.fact)] = &event;
        }
    }
    last.erase("");
    return last;
}

}  // namespace hemline
