#include "tests/certificate/joint_json.h"

#include <stdexcept>

namespace certificate {

using Json = nlohmann::json;

JointTask joint_task_of(const Json& pool) {
    JointTask task;
    task.kerf = pool.at("kerf").get<Int>();
    for (const Json& own : pool.at("stock")) {
        const Json& supply = own.at("supply");
        task.sticks.push_back(
            {own.at("length").get<Int>(),
             supply.is_null() ? std::optional<Int>() : std::optional(supply.get<Int>()),
             own.at("on_hand").get<bool>()});
    }
    for (const Json& own : pool.at("edges")) {
        const auto length = [&](const char* name) { return own.at(name).get<Int>(); };
        JointEdge edge;
        edge.length = length("length");
        edge.first = length("allowance_first");
        edge.last = length("allowance_last");
        edge.lap = length("lap");
        edge.stick = length("stick");
        edge.sliver = length("sliver");
        edge.grid = length("grid");
        edge.is_free = own.at("looks").get<std::string>() == "free";
        task.edges.push_back(edge);
    }
    return task;
}

std::vector<Division> divisions_in(const Json& choice) {
    std::vector<Division> divisions;
    for (const Json& own : choice.at("divisions")) {
        divisions.emplace_back();
        for (const Json& piece : own) {
            divisions.back().push_back({piece.at("cut").get<Int>(), piece.at("covers").get<Int>()});
        }
    }
    return divisions;
}

std::vector<JointPart> parts_in(const Json& choice, const JointTask& task) {
    std::vector<JointPart> parts;
    for (const Json& own : choice.at("parts")) {
        JointPart part;
        part.worths = {own.at("from").get<std::vector<Int>>(),
                       own.at("worth").get<std::vector<Int>>(),
                       own.at("stick_worth").get<std::vector<Int>>(),
                       own.at("lap").get<Int>(),
                       own.at("unbalanced").get<Int>(),
                       own.at("share").get<Int>()};
        for (const Json& set : own.at("edges")) {
            if (part.edges.size() >= task.edges.size() || task.edges[part.edges.size()].grid < 1) {
                throw std::runtime_error("a part of more edges than there are");
            }
            const Int grid = task.edges[part.edges.size()].grid;
            Region region{set.at("classes").get<std::uint32_t>(), {}};
            for (const Json& range : set.at("ranges")) {
                const Int least = range.at(0).get<Int>(), most = range.at(1).get<Int>();
                region.ranges.emplace_back(least / grid + (least % grid > 0 ? 1 : 0), most / grid);
            }
            part.edges.push_back(region);
        }
        parts.push_back(part);
    }
    return parts;
}

}  // namespace certificate
