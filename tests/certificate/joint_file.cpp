#include "tests/certificate/joint_file.h"

#include <algorithm>
#include <map>
#include <stdexcept>

#include "tests/certificate/joint_edge.h"
#include "tests/certificate/joint_json.h"
#include "tests/certificate/length.h"
#include "tests/certificate/plan_print.h"
#include "tests/certificate/pool_bound.h"

namespace certificate {

namespace {

using Json = nlohmann::json;
using Tally = std::map<Int, Int>;

/// Laps beyond the fewest and unbalanced edges of some divisions; says what no division may be.
struct Counted {
    Int laps = 0, unbalanced = 0;
    std::string wrong;
};

Counted count_divisions(const JointTask& task, const std::vector<Division>& divisions) {
    Counted counted;
    if (divisions.size() != task.edges.size()) {
        return {0, 0, "not one division for each edge"};
    }
    for (std::size_t e = 0; e < divisions.size(); ++e) {
        const JointEdge& edge = task.edges[e];
        const Division& pieces = divisions[e];
        std::vector<Int> covers, cuts;
        Int covered = 0;
        for (std::size_t i = 0; i < pieces.size(); ++i) {
            covers.push_back(pieces[i].covers);
            cuts.push_back(pieces[i].cut);
            covered += pieces[i].covers;
            const bool is_alone = pieces.size() == 1;
            if (pieces[i].cut != pieces[i].covers + extra_of(edge, i, pieces.size()) ||
                pieces[i].covers <= 0 || pieces[i].cut > edge.stick ||
                (!is_alone && pieces[i].cut < edge.sliver)) {
                return {0, 0, "a piece that is not as long as it must be"};
            }
        }
        if (pieces.empty() || covered != edge.length) {
            return {0, 0, "pieces that do not cover their edge"};
        }
        const Int laps = static_cast<Int>(pieces.size()) - fewest_pieces(edge);
        const bool even = is_balanced(edge, covers);
        if (!edge.is_free) {
            const auto may = divisions_of(edge, laps).listed;
            if (std::none_of(may.begin(), may.end(),
                             [&](const Listed& own) { return own.cuts == cuts; })) {
                return {0, 0, "an edge that must be balanced and is not"};
            }
        }
        counted.laps += laps;
        counted.unbalanced += !even && can_balance(edge, pieces.size()) ? 1 : 0;
    }
    return counted;
}

/// New sticks laid out; says what is wrong with the layouts.
std::pair<Int, std::string> count_layouts(const JointTask& task, const Json& choice,
                                          const std::vector<Division>& divisions) {
    Tally left;
    for (const Division& division : divisions) {
        for (const Piece& piece : division) {
            ++left[piece.cut];
        }
    }
    std::map<std::pair<Int, bool>, Int> used;
    Int fresh = 0;
    for (const Json& layout : choice.at("layouts")) {
        const Int times = layout.at("times").get<Int>(), length = layout.at("stock").get<Int>();
        const bool on_hand = layout.at("on_hand").get<bool>();
        Int needs = 0;
        for (const Json& cut : layout.at("cuts")) {
            needs += cut.get<Int>() + task.kerf;
            left[cut.get<Int>()] -= times;
        }
        if (times < 1 || needs > length + task.kerf) {
            return {0, "pieces that overlap or run past the end of a stick"};
        }
        used[{length, on_hand}] += times;
        fresh += on_hand ? 0 : times;
    }
    for (const auto& [cut, count] : left) {
        if (count != 0) {
            return {0, "not every piece lies once on one stick"};
        }
    }
    for (const auto& [key, times] : used) {
        Int supply = 0;
        bool unlimited = false;
        for (const JointStick& stick : task.sticks) {
            const bool same = stick.length == key.first && stick.on_hand == key.second;
            unlimited = unlimited || (same && !stick.supply);
            supply += same ? stick.supply.value_or(0) : 0;
        }
        if (!unlimited && times > supply) {
            return {0, "more sticks than there are"};
        }
    }
    return {fresh, ""};
}

std::string wrong_choice(const JointTask& task, const Json& choice) {
    if (!is_task(task)) {
        return "numbers that are no roof's";
    }
    const std::vector<Division> divisions = divisions_in(choice);
    const Counted counted = count_divisions(task, divisions);
    if (!counted.wrong.empty()) {
        return counted.wrong;
    }
    const Int laps = choice.at("extra_laps").get<Int>();
    const Int unbalanced = choice.at("unbalanced").get<Int>();
    const Int bound = choice.at("lower_bound").get<Int>();
    const Int sticks = choice.at("sticks").get<Int>();
    if (counted.laps != laps || counted.unbalanced != unbalanced) {
        return "laps or unbalanced edges miscounted";
    }
    const auto [fresh, wrong] = count_layouts(task, choice, divisions);
    if (!wrong.empty()) {
        return wrong;
    }
    if (fresh != sticks || sticks < bound || choice.at("proved").get<bool>() != (sticks == bound)) {
        return "count, bound and proof do not agree";
    }
    return is_proof_absent(choice)
               ? ""
               : wrong_parts(task, laps, unbalanced, bound, parts_in(choice, task));
}

/// The plan's pieces of this pool, by edge and role, and where they lie.
std::string wrong_runs(const Json& pool, const JointTask& task, const Json& plan) {
    std::map<std::pair<std::string, std::string>, const Json*> runs;
    for (const Json& run : plan.at("edges")) {
        runs[{run.at("edge").get<std::string>(), run.at("role").get<std::string>()}] = &run;
    }
    std::vector<Division> planned;
    std::map<Int, std::vector<std::pair<Int, Int>>> laid;
    for (std::size_t e = 0; e < task.edges.size(); ++e) {
        const Json& edge = pool.at("edges").at(e);
        const auto run =
            runs.find({edge.at("edge").get<std::string>(), edge.at("role").get<std::string>()});
        if (run == runs.end()) {
            return "an edge that the plan does not have";
        }
        if (run->second->at("lap_nm") != edge.at("lap")) {
            return "a lap that is not the plan's";
        }
        planned.emplace_back();
        for (const Json& piece : run->second->at("pieces")) {
            const Int cut = piece.at("cut_nm").get<Int>(), from = piece.at("from_nm").get<Int>();
            planned.back().push_back({cut, piece.at("covers_nm").get<Int>()});
            laid[piece.at("stick").get<Int>()].emplace_back(from, from + cut);
        }
    }
    std::map<Int, Int> lengths;
    for (const Json& stick : plan.at("sticks")) {
        if (stick.at("pool") == pool.at("pool")) {
            lengths[stick.at("stick").get<Int>()] = stick.at("stock_nm").get<Int>();
        }
    }
    for (auto& [number, pieces] : laid) {
        std::sort(pieces.begin(), pieces.end());
        Int free_from = 0;
        for (const auto& [from, to] : pieces) {
            if (from < free_from || lengths.count(number) == 0 || to > lengths[number]) {
                return "pieces of the plan that overlap or run past the end of a stick";
            }
            free_from = to + task.kerf;
        }
    }
    for (const Json& choice : pool.at("choices")) {
        if (divisions_in(choice) == planned &&
            choice.at("sticks").get<Int>() == static_cast<Int>(laid.size()) &&
            laid.size() == lengths.size()) {
            return "";
        }
    }
    return "a plan that is none of the choices";
}

/// The plan names the pool's choices with the same figures.
std::string wrong_figures(const Json& pool, const Json& plan) {
    Json said = Json::array(), shown = Json::array();
    const auto figures = [](const Json& choice) {
        Json own;
        for (const char* name : {"extra_laps", "unbalanced", "sticks", "lower_bound", "proved"}) {
            own[name] = choice.at(name);
        }
        return own;
    };
    for (const Json& choice : plan.at("choices")) {
        if (choice.at("pool") == pool.at("pool")) {
            said.push_back(figures(choice));
        }
    }
    for (const Json& choice : pool.at("choices")) {
        shown.push_back(figures(choice));
    }
    return said == shown && !shown.empty() ? "" : "choices that the plan does not name";
}

/// Each run of the plan but the cleats is in exactly one pool, as long as it was read, and to look
/// as it was asked to.
std::string wrong_edges(const Readings& readings, const Json& certificate, const Json& plan) {
    std::map<std::pair<std::string, std::string>, Int> shown;
    const std::string by_preference =
        certificate.at("prefer").get<std::string>() == "sticks" ? "free" : "balanced";
    for (const Json& pool : certificate.at("pools")) {
        for (const Json& edge : pool.at("edges")) {
            const auto name = edge.at("edge").get<std::string>();
            const auto role = edge.at("role").get<std::string>();
            const auto read = std::find_if(readings.begin(), readings.end(),
                                           [&](const Reading& own) { return own.edge == name; });
            if (!shown.emplace(std::pair(name, role), 0).second) {
                return "an edge in two pools";
            }
            if (read == readings.end() || read->length != edge.at("length").get<Int>()) {
                return "an edge that is not as long as it was read";
            }
            if (edge.at("looks") != (read->looks.empty() ? by_preference : read->looks)) {
                return "an edge that is to look otherwise";
            }
            if (read->lap != 0 && read->lap != edge.at("lap").get<Int>()) {
                return "an edge that is to lap otherwise";
            }
        }
    }
    for (const Json& run : plan.at("edges")) {
        const auto role = run.at("role").get<std::string>();
        if (role != "cleat" && shown.count({run.at("edge").get<std::string>(), role}) == 0) {
            return "a run of the plan in no pool";
        }
    }
    return "";
}

}  // namespace

Readings read_readings(const std::string& csv, Int unit_nm) {
    const Table table = read_table(csv);
    const std::size_t edge = table.column("edge"), length = table.column("length");
    const auto cell = [&](const std::vector<Cell>& row, const std::string& column) {
        return table.has(column) ? row[table.column(column)] : Cell();
    };
    Readings readings;
    for (const std::vector<Cell>& row : table.rows) {
        const Cell lap = cell(row, "lap");
        readings.push_back({row[edge].text, length_nm(row[length], unit_nm),
                            cell(row, "looks").text,
                            lap.text.empty() ? 0 : length_nm(lap, unit_nm)});
    }
    return readings;
}

std::vector<std::string> wrong_with_plan(const Readings& readings, const Json& certificate,
                                         const Json& plan) {
    std::vector<std::string> wrong;
    const auto add = [&](const std::string& where, const std::string& what) {
        if (!what.empty()) {
            wrong.push_back(where + what);
        }
    };
    try {
        add("", wrong_edges(readings, certificate, plan));
        for (const std::string& what : wrong_print(readings, certificate, plan)) {
            add("", what);
        }
        for (const Json& pool : certificate.at("pools")) {
            const JointTask task = joint_task_of(pool);
            const std::string name = pool.at("pool").get<std::string>() + ": ";
            add(name, wrong_figures(pool, plan));
            for (const Json& choice : pool.at("choices")) {
                add(name, wrong_choice(task, choice));
            }
            add(name, wrong_runs(pool, task, plan));
        }
    } catch (const std::exception& problem) {
        wrong.emplace_back(problem.what());
    }
    return wrong;
}

}  // namespace certificate
