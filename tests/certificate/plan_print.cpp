#include "tests/certificate/plan_print.h"

#include <algorithm>
#include <cstdlib>
#include <map>
#include <set>

#include "tests/certificate/length.h"
#include "tests/certificate/pool_bound.h"
#include "tests/certificate/wrong.h"

namespace certificate {

namespace {

using Json = nlohmann::json;

std::string text_at(const Json& json, const char* name) { return json.at(name).get<std::string>(); }
Int number_at(const Json& json, const char* name) { return json.at(name).get<Int>(); }

bool has_problem(const Json& plan, const std::string& edge) {
    const Json& problems = plan.at("problems");
    return std::any_of(problems.begin(), problems.end(), [&](const Json& own) {
        return own.at("edge") == edge && own.at("severity") == "problem";
    });
}

/// The text says the same length: to the nanometer where it lies on the marks that the text is in,
/// else to half a millimeter.
bool says_length(const std::string& text, Int nm) {
    const bool metric = text.size() > 2 && text.substr(text.size() - 2) == "mm";
    const Int mark = metric ? 1'000'000 : 1'587'500;
    try {
        const Int said = length_nm({text, 1, 1}, 0);
        return said == nm || (nm % mark != 0 && std::abs(said - nm) <= 500'000);
    } catch (const std::exception&) {
        return false;
    }
}

/// By edge and role, the pool that it is in.
std::map<std::pair<std::string, std::string>, const Json*> pools_of_runs(const Json& certificate) {
    std::map<std::pair<std::string, std::string>, const Json*> pools;
    for (const Json& pool : certificate.at("pools")) {
        for (const Json& edge : pool.at("edges")) {
            pools[{text_at(edge, "edge"), text_at(edge, "role")}] = &pool;
        }
    }
    return pools;
}

/// No reading is left out or taken twice, and no run is of an edge that nobody read.
void check_readings(const Readings& readings, const Json& certificate, const Json& plan,
                    Wrong& wrong) {
    std::map<std::string, Int> read, planned;
    std::set<std::pair<std::string, std::string>> runs;
    for (const Reading& own : readings) {
        wrong.unless(++read[own.edge] == 1, "an edge that is read twice");
    }
    for (const Json& run : plan.at("edges")) {
        const std::string edge = text_at(run, "edge"), role = text_at(run, "role");
        wrong.unless(role == "main" || role == "wrap" || role == "cleat", "a run of no known role");
        wrong.unless(runs.emplace(edge, role).second, "a run that the plan has twice");
        wrong.unless(read.count(edge) == 1, "a run of an edge that nobody read");
        planned[edge] += role == "main" ? 1 : 0;
    }
    const auto pools = pools_of_runs(certificate);
    for (const auto& [edge, count] : read) {
        const bool in_pool = pools.count({edge, "main"}) == 1;
        wrong.unless((planned[edge] == 1 && in_pool) ||
                         (planned[edge] == 0 && !in_pool && has_problem(plan, edge)),
                     "a reading that is left out");
    }
}

/// A cleat is butted and as long as its edge, and shares no stick with what laps.
void check_cleat(const Json& run, const Readings& readings, const std::set<std::string>& trims,
                 Wrong& wrong) {
    Int covered = 0;
    bool is_butted = number_at(run, "lap_nm") == 0 && trims.count(text_at(run, "trim")) == 0;
    for (const Json& piece : run.at("pieces")) {
        covered += number_at(piece, "covers_nm");
        is_butted = is_butted && piece.at("cut_nm") == piece.at("covers_nm");
    }
    const auto read = std::find_if(readings.begin(), readings.end(), [&](const Reading& own) {
        return own.edge == text_at(run, "edge");
    });
    wrong.unless(is_butted && read != readings.end() && read->length == covered,
                 "a cleat that is none");
}

void check_runs(const Readings& readings, const Json& certificate, const Json& plan, Wrong& wrong) {
    const auto pools = pools_of_runs(certificate);
    std::set<std::string> trims;
    for (const auto& [run, pool] : pools) {
        trims.insert(text_at(*pool, "trim"));
    }
    for (const Json& run : plan.at("edges")) {
        Int number = 0;
        for (const Json& piece : run.at("pieces")) {
            wrong.unless(number_at(piece, "piece") == ++number, "pieces numbered otherwise");
            wrong.unless(says_length(text_at(piece, "cut"), number_at(piece, "cut_nm")),
                         "a text that says another length");
        }
        if (run.at("role") == "cleat") {
            check_cleat(run, readings, trims, wrong);
            continue;
        }
        const auto pool = pools.find({text_at(run, "edge"), text_at(run, "role")});
        wrong.unless(pool == pools.end() || pool->second->at("trim") == run.at("trim"),
                     "a run of another trim than its pool's");
    }
}

/// Stick by stick: its number, its pool, what is used of it, and what is left.
void check_sticks(const Json& certificate, const Json& plan, Wrong& wrong) {
    const auto pools = pools_of_runs(certificate);
    std::set<std::string> names;
    Int kerf = 0;
    for (const Json& pool : certificate.at("pools")) {
        wrong.unless(names.insert(text_at(pool, "pool")).second, "a pool that is there twice");
        kerf = number_at(pool, "kerf");
    }
    std::map<Int, Int> used;
    std::map<Int, std::set<std::string>> trims, of_pools;
    std::map<Int, std::vector<std::pair<Int, Int>>> laid;
    for (const Json& run : plan.at("edges")) {
        const auto pool = pools.find({text_at(run, "edge"), text_at(run, "role")});
        for (const Json& piece : run.at("pieces")) {
            if (piece.at("stick").is_null()) {
                continue;
            }
            const Int stick = number_at(piece, "stick"), from = number_at(piece, "from_nm");
            used[stick] += number_at(piece, "cut_nm") + kerf;
            trims[stick].insert(text_at(run, "trim"));
            of_pools[stick].insert(pool == pools.end() ? "" : text_at(*pool->second, "pool"));
            laid[stick].emplace_back(from, from + number_at(piece, "cut_nm"));
        }
    }
    Int number = 0;
    for (const Json& stick : plan.at("sticks")) {
        const Int stock = number_at(stick, "stock_nm");
        const std::string pool = text_at(stick, "pool");
        wrong.unless(number_at(stick, "stick") == ++number, "sticks numbered otherwise");
        wrong.unless(
            trims[number] == std::set<std::string>{text_at(stick, "trim")} &&
                of_pools[number] == std::set<std::string>{names.count(pool) == 1 ? pool : ""},
            "a stick of another trim or pool than its pieces");
        wrong.unless(number_at(stick, "used_nm") == std::min(used[number], stock) &&
                         number_at(stick, "left_nm") == stock - number_at(stick, "used_nm"),
                     "a remainder that is not what is left");
        std::sort(laid[number].begin(), laid[number].end());
        Int free_from = 0;
        for (const auto& [from, to] : laid[number]) {
            wrong.unless(from >= free_from && to <= stock,
                         "pieces of the plan that overlap or run past the end of a stick");
            free_from = to + kerf;
        }
    }
    wrong.unless(used.empty() || used.rbegin()->first <= number, "a piece on a stick that is none");
}

void check_choices(const Json& certificate, const Json& plan, Wrong& wrong) {
    for (const Json& choice : plan.at("choices")) {
        const Json& pools = certificate.at("pools");
        const auto pool = std::find_if(pools.begin(), pools.end(), [&](const Json& own) {
            return own.at("pool") == choice.at("pool");
        });
        wrong.unless(pool != pools.end(), "a choice of an unknown pool");
        wrong.unless(pool == pools.end() || pool->at("trim") == choice.at("trim"),
                     "a choice of another trim than its pool's");
    }
}

/// The proof of each pool: its sticks counted, its bound no higher than anybody can show.
void check_proofs(const Json& certificate, const Json& plan, Wrong& wrong) {
    std::map<std::string, std::vector<const Json*>> sticks;
    for (const Json& stick : plan.at("sticks")) {
        sticks[text_at(stick, "pool")].push_back(&stick);
    }
    std::set<std::string> proved;
    for (const Json& proof : plan.at("proof")) {
        const std::string pool = text_at(proof, "pool");
        wrong.unless(proved.insert(pool).second, "a pool that is proved twice");
        const auto& own = sticks[pool];
        const Int count = static_cast<Int>(own.size()), bound = number_at(proof, "lower_bound");
        wrong.unless(count > 0 && number_at(proof, "sticks") == count &&
                         own.front()->at("trim") == proof.at("trim"),
                     "a proof of other sticks than the plan's");
        wrong.unless(
            bound >= 0 && bound <= count && proof.at("proved").get<bool>() == (bound == count),
            "a proof against its own figures");
        wrong.unless(bound_of_pool(pool, bound, certificate, plan) != Shown::refuted,
                     "a proof of more sticks than are needed");
    }
    for (const auto& [pool, own] : sticks) {
        wrong.unless(own.empty() || proved.count(pool) == 1, "a pool without its proof");
    }
}

/// Names in the object that nothing here reads.
void name_unread(const Json& own, const std::set<std::string>& read, const std::string& where,
                 Wrong& named) {
    for (const auto& [name, value] : own.items()) {
        named.unless(read.count(name) == 1 || (value.is_array() && value.empty()), where + name);
    }
}

}  // namespace

std::vector<std::string> wrong_print(const Readings& readings, const Json& certificate,
                                     const Json& plan) {
    Wrong wrong;
    check_readings(readings, certificate, plan, wrong);
    check_runs(readings, certificate, plan, wrong);
    check_sticks(certificate, plan, wrong);
    check_choices(certificate, plan, wrong);
    check_proofs(certificate, plan, wrong);
    return wrong.all;
}

std::vector<std::string> proofs_absent(const Json& certificate) {
    std::vector<std::string> absent;
    for (const Json& pool : certificate.at("pools")) {
        Int number = 0;
        for (const Json& choice : pool.at("choices")) {
            ++number;
            if (is_proof_absent(choice)) {
                absent.push_back(text_at(pool, "pool") + ": no proof of the bound of choice " +
                                 std::to_string(number));
            }
        }
    }
    return absent;
}

std::vector<std::string> unchecked(const Readings& readings, const Json& certificate,
                                   const Json& plan) {
    Wrong named;
    name_unread(plan, {"edges", "sticks", "proof", "choices"}, "", named);
    for (const Json& run : plan.at("edges")) {
        name_unread(run, {"edge", "trim", "pieces", "role", "lap_nm"}, "edges: ", named);
        for (const Json& piece : run.at("pieces")) {
            name_unread(piece, {"piece", "cut", "cut_nm", "covers_nm", "stick", "from_nm"},
                        "pieces: ", named);
        }
        named.unless(run.at("role") != "cleat", "where the joints of cleats lie");
    }
    for (const Json& stick : plan.at("sticks")) {
        name_unread(stick, {"trim", "stick", "stock_nm", "used_nm", "left_nm", "pool"},
                    "sticks: ", named);
    }
    for (const Json& proof : plan.at("proof")) {
        name_unread(proof, {"trim", "sticks", "lower_bound", "proved", "pool"}, "proof: ", named);
        named.unless(bound_of_pool(text_at(proof, "pool"), number_at(proof, "lower_bound"),
                                   certificate, plan) != Shown::too_long,
                     "proof: the bound of " + text_at(proof, "pool"));
    }
    for (const Json& choice : plan.at("choices")) {
        name_unread(choice,
                    {"extra_laps", "unbalanced", "sticks", "lower_bound", "proved", "trim", "pool"},
                    "choices: ", named);
    }
    for (const Reading& own : readings) {
        const Json& runs = plan.at("edges");
        named.unless(std::any_of(runs.begin(), runs.end(),
                                 [&](const Json& run) { return run.at("edge") == own.edge; }),
                     "edge " + own.edge + ", which the plan names a problem of");
    }
    named.unless(certificate.at("pools").empty(),
                 "taken as the certificate says it: kerf, stock, stick, sliver, grid, what ends "
                 "add, and laps that no reading states");
    return named.all;
}

}  // namespace certificate
