#include "tools/cli/plan_certificate.h"

#include "tools/cli/cut_print.h"

namespace hemline {
namespace {

/// For a choice whose bound was not found by parts: about a second.
constexpr std::int64_t steps_to_show = 100'000'000;

Json edge_json(const PoolRun& run, const JointEdge& edge) {
    const RunRule& rule = edge.rule;
    return {{"edge", run.edge},
            {"role", word_of(run.role)},
            {"length", rule.edge.nm()},
            {"allowance_first", rule.allowance_first.nm()},
            {"allowance_last", rule.allowance_last.nm()},
            {"lap", rule.lap.nm()},
            {"stick", rule.stock.nm()},
            {"sliver", rule.sliver.nm()},
            {"grid", rule.grid.nm()},
            {"looks", edge.looks == Looks::free ? "free" : "balanced"}};
}

Json part_json(const JointPart& part) {
    Json json;
    json["edges"] = Json::array();
    for (const DivisionSet& set : part.edges) {
        Json ranges = Json::array();
        for (const LengthRange& range : set.ranges) {
            ranges.push_back({range.least.nm(), range.most.nm()});
        }
        json["edges"].push_back({{"classes", set.classes}, {"ranges", ranges}});
    }
    json["from"] = Json::array();
    for (const Length from : part.worths.from) {
        json["from"].push_back(from.nm());
    }
    json["worth"] = part.worths.worth;
    json["stick_worth"] = part.worths.stick_worth;
    json["lap"] = part.worths.lap;
    json["unbalanced"] = part.worths.unbalanced;
    json["share"] = part.worths.share;
    return json;
}

Json divisions_json(const JointPlan& plan) {
    Json json = Json::array();
    for (const EdgeOption& option : plan.divisions) {
        json.push_back(Json::array());
        for (const Division& piece : option.pieces) {
            json.back().push_back({{"cut", piece.cut.nm()}, {"covers", piece.covers.nm()}});
        }
    }
    return json;
}

Json choice_json(const JointPlan& plan, const std::vector<JointPart>& parts) {
    Json json;
    json["extra_laps"] = plan.extra_laps;
    json["unbalanced"] = plan.unbalanced;
    json["sticks"] = plan.sticks;
    json["lower_bound"] = plan.lower_bound;
    json["proved"] = plan.proved;
    json["divisions"] = divisions_json(plan);
    json["layouts"] = layouts_json(plan.job, plan.cutting);
    json["parts"] = Json::array();
    for (const JointPart& part : parts) {
        json["parts"].push_back(part_json(part));
    }
    return json;
}

Json pool_json(const PoolChoices& pool) {
    Json json;
    json["pool"] = pool.pool;
    json["trim"] = pool.trim;
    json["kerf"] = pool.job.kerf.nm();
    json["stock"] = Json::array();
    for (const StockLength& stock : pool.job.stock) {
        json["stock"].push_back({{"length", stock.length.nm()},
                                 {"supply", stock.supply ? Json(*stock.supply) : Json()},
                                 {"on_hand", stock.on_hand}});
    }
    json["edges"] = Json::array();
    for (std::size_t e = 0; e < pool.runs.size(); ++e) {
        json["edges"].push_back(edge_json(pool.runs[e], pool.job.edges[e]));
    }
    json["choices"] = Json::array();
    return json;
}

}  // namespace

PlanCertificate certificate_of(const std::vector<PoolChoices>& pools, Prefer prefer) {
    PlanCertificate certificate;
    certificate.json["prefer"] = prefer == Prefer::sticks ? "sticks"
                                 : prefer == Prefer::laps ? "laps"
                                                          : "looks";
    certificate.json["pools"] = Json::array();
    for (const PoolChoices& pool : pools) {
        Json json = pool_json(pool);
        for (const JointPlan& plan : pool.plans) {
            const auto parts = parts_of_bound(pool.job, plan, {steps_to_show, {}});
            certificate.not_shown += parts.empty() && plan.lower_bound > 0 ? 1 : 0;
            json["choices"].push_back(choice_json(plan, parts));
        }
        certificate.json["pools"].push_back(std::move(json));
    }
    return certificate;
}

}  // namespace hemline
