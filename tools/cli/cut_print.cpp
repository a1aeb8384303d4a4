#include "tools/cli/cut_print.h"

#include <algorithm>

namespace hemline {

Json layouts_json(const CuttingJob& job, const CuttingPlan& plan) {
    Json layouts = Json::array();
    for (const Layout& layout : plan.layouts) {
        Json own;
        own["times"] = layout.times;
        own["stock"] = job.stock[layout.stock].length.nm();
        own["on_hand"] = job.stock[layout.stock].on_hand;
        own["cuts"] = Json::array();
        for (const std::size_t cut : layout.cuts) {
            own["cuts"].push_back(job.demand[cut].length.nm());
        }
        layouts.push_back(own);
    }
    return layouts;
}

Json cut_json(const CuttingJob& job, const CuttingPlan& plan) {
    Json json;
    std::int64_t sticks = 0, on_hand = 0;
    for (const Layout& layout : plan.layouts) {
        sticks += layout.times;
        on_hand += job.stock[layout.stock].on_hand ? layout.times : 0;
    }
    json["sticks"] = sticks;
    json["lower_bound"] = plan.lower_bound + on_hand;  // counts what `sticks` counts
    json["new_sticks"] = plan.sticks;
    json["new_lower_bound"] = plan.lower_bound;
    json["proved"] = plan.proved;
    json["bound_from"] = plan.bound_from;
    say_too_large(json, plan.is_too_large);
    json["layouts"] = layouts_json(job, plan);
    json["missing"] = Json::array();
    for (const CutDemand& missing : plan.missing) {
        json["missing"].push_back({{"length", missing.length.nm()}, {"count", missing.count}});
    }
    return json;
}

Json certificate_json(const CuttingJob& job, const CuttingPlan& plan) {
    Json json = cut_json(job, plan);
    json["kerf"] = job.kerf.nm();
    json["share"] = plan.certificate.share;
    json["bound_by_worths"] = plan.certificate.bound;
    json["refuted"] = plan.certificate.refuted;
    json["stock"] = Json::array();
    for (std::size_t k = 0; k < job.stock.size(); ++k) {
        const StockLength& stock = job.stock[k];
        json["stock"].push_back({{"length", stock.length.nm()},
                                 {"supply", stock.supply ? Json(*stock.supply) : Json()},
                                 {"on_hand", stock.on_hand},
                                 {"holds_at_most", plan.certificate.stick_worth[k]}});
    }
    json["pieces"] = Json::array();
    for (std::size_t i = 0; i < job.demand.size(); ++i) {
        json["pieces"].push_back({{"length", job.demand[i].length.nm()},
                                  {"count", job.demand[i].count},
                                  {"worth", plan.certificate.worth[i]}});
    }
    return json;
}

std::string cut_text(const CuttingJob& job, const CuttingPlan& plan, Marks marks) {
    std::string text;
    for (const Layout& layout : plan.layouts) {
        const StockLength& stock = job.stock[layout.stock];
        text += padded(std::to_string(layout.times) + " ×", 6) +
                padded(print_length(stock.length, marks), 16) + (stock.on_hand ? "on hand: " : "");
        Length left = stock.length;
        for (const std::size_t cut : layout.cuts) {
            text += print_length(job.demand[cut].length, marks) + ", ";
            left -= job.demand[cut].length + job.kerf;
        }
        text += "left " + print_length(std::max(left, Length()), marks) + '\n';
    }
    for (const CutDemand& missing : plan.missing) {
        text += "Missing: " + std::to_string(missing.count) + " of " +
                print_length(missing.length, marks) + '\n';
    }
    return text + std::to_string(plan.sticks) + (plan.sticks == 1 ? " new stick" : " new sticks") +
           ", no plan can use fewer than " + std::to_string(plan.lower_bound) + " (" +
           plan.bound_from + ")" + (plan.proved ? ": proved fewest" : "") +
           too_large_words(plan.is_too_large) + "\n\n" + std::string(caution()) + '\n';
}

}  // namespace hemline
