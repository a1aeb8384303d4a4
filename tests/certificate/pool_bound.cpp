#include "tests/certificate/pool_bound.h"

#include <algorithm>
#include <set>

#include "tests/certificate/task.h"

namespace certificate {

namespace {

using Json = nlohmann::json;

constexpr Int steps_most = 3'000'000;

/// A task without worths: only new sticks, as many as are wanted.
Task task_of_pool(const std::string& pool, Int kerf, const Json& plan) {
    std::set<Int> numbers;
    Task task;
    task.kerf = kerf;
    Int longest = 0;
    for (const Json& stick : plan.at("sticks")) {
        if (stick.at("pool") == pool) {
            numbers.insert(stick.at("stick").get<Int>());
            longest = std::max(longest, stick.at("stock_nm").get<Int>() + kerf);
        }
    }
    std::map<Int, Int, std::greater<>> counts;
    Int all = 0;
    for (const Json& run : plan.at("edges")) {
        for (const Json& piece : run.at("pieces")) {
            if (!piece.at("stick").is_null() && numbers.count(piece.at("stick").get<Int>()) == 1) {
                ++counts[piece.at("cut_nm").get<Int>() + kerf];
                ++all;
            }
        }
    }
    for (const auto& [size, count] : counts) {
        task.kinds.push_back({size, count, size});
    }
    task.share = std::max<Int>(1, longest);
    task.sticks.push_back({longest, all, true, false, longest});
    return task;
}

/// Whether the plan cuts its edges as that choice does.
bool is_planned(const Json& pool, const Json& choice, const Json& plan) {
    for (std::size_t e = 0; e < pool.at("edges").size(); ++e) {
        const Json& edge = pool.at("edges").at(e);
        const Json& runs = plan.at("edges");
        const auto run = std::find_if(runs.begin(), runs.end(), [&](const Json& own) {
            return own.at("edge") == edge.at("edge") && own.at("role") == edge.at("role");
        });
        std::vector<Int> planned, chosen;
        for (const Json& piece : run == runs.end() ? Json::array() : run->at("pieces")) {
            planned.push_back(piece.at("cut_nm").get<Int>());
        }
        for (const Json& piece : choice.at("divisions").at(e)) {
            chosen.push_back(piece.at("cut").get<Int>());
        }
        if (planned != chosen) {
            return false;
        }
    }
    return true;
}

}  // namespace

bool is_proof_absent(const Json& choice) {
    return choice.at("lower_bound").get<Int>() > 0 &&
           (!choice.contains("parts") || choice.at("parts").empty());
}

Shown bound_of_pool(const std::string& pool, Int bound, const Json& certificate, const Json& plan) {
    Int kerf = 0;
    for (const Json& own : certificate.at("pools")) {
        kerf = own.at("kerf").get<Int>();
        for (const Json& choice : own.at("choices")) {
            if (own.at("pool") == pool && !is_proof_absent(choice) &&
                bound <= choice.at("lower_bound").get<Int>() && is_planned(own, choice, plan)) {
                return Shown::yes;
            }
        }
    }
    const Task task = task_of_pool(pool, kerf, plan);
    Int metal = 0;
    for (const Kind& kind : task.kinds) {
        metal += kind.size * kind.count;
    }
    if (bound <= (metal + task.share - 1) / task.share) {
        return Shown::yes;
    }
    switch (search_again(task, bound - 1, steps_most)) {
        case Searched::no_plan:
            return Shown::yes;
        case Searched::plan:
            return Shown::refuted;
        case Searched::not_finished:
            break;
    }
    return Shown::too_long;
}

}  // namespace certificate
