#include "field/shell/web/choices_text.h"

#include <nlohmann/json.hpp>

namespace hemline {

namespace {

using Json = nlohmann::json;

Json json_of(const ChosenDivision& run) {
    Json pieces = Json::array();
    for (const Division& piece : run.pieces) {
        pieces.push_back({piece.cut.nm(), piece.covers.nm()});
    }
    return {{"edge", run.edge}, {"role", static_cast<int>(run.role)}, {"pieces", pieces}};
}

ChosenDivision run_in(const Json& json) {
    ChosenDivision run{json.at("edge"), static_cast<TrimRole>(json.at("role").get<int>()), {}};
    for (const Json& piece : json.at("pieces")) {
        run.pieces.push_back({Length::of_nm(piece.at(0)), Length::of_nm(piece.at(1))});
    }
    return run;
}

PlanChoice choice_in(const Json& json) {
    PlanChoice choice;
    choice.trim = json.at("trim");
    choice.pool = json.at("pool");
    choice.extra_laps = json.at("extra_laps");
    choice.unbalanced = json.at("unbalanced");
    choice.sticks = json.at("sticks");
    choice.lower_bound = json.at("lower_bound");
    choice.proved = json.at("proved");
    choice.bound_from = json.at("bound_from");
    choice.is_too_large = json.at("is_too_large");
    for (const Json& run : json.at("runs")) {
        choice.runs.push_back(run_in(run));
    }
    return choice;
}

}  // namespace

std::string choices_text(std::span<const PlanChoice> choices) {
    Json all = Json::array();
    for (const PlanChoice& choice : choices) {
        Json runs = Json::array();
        for (const ChosenDivision& run : choice.runs) {
            runs.push_back(json_of(run));
        }
        all.push_back({{"trim", choice.trim},
                       {"pool", choice.pool},
                       {"extra_laps", choice.extra_laps},
                       {"unbalanced", choice.unbalanced},
                       {"sticks", choice.sticks},
                       {"lower_bound", choice.lower_bound},
                       {"proved", choice.proved},
                       {"bound_from", choice.bound_from},
                       {"is_too_large", choice.is_too_large},
                       {"runs", runs}});
    }
    return all.dump(-1, ' ', false, Json::error_handler_t::replace);
}

std::vector<PlanChoice> choices_in(const std::string& text) {
    std::vector<PlanChoice> choices;
    for (const Json& json : Json::parse(text)) {
        choices.push_back(choice_in(json));
    }
    return choices;
}

}  // namespace hemline
