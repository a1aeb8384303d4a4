// `steps`: a procedure from the assets, part by part, each caution before its action.
#include <iostream>

#include "tools/cli/assets_here.h"
#include "tools/cli/commands.h"
#include "tools/cli/print.h"

namespace hemline {
namespace {

/// The steps of that name; nullptr where the assets have none.
const std::vector<StepRule>* steps_named(const Assets& assets, const std::string& work) {
    const auto kind = edge_kind_of(work);
    const auto found = kind ? assets.procedures.find(*kind) : assets.procedures.end();
    return found == assets.procedures.end() ? nullptr : &found->second;
}

Json step_json(const StepRule& rule) {
    Json json;
    json["id"] = rule.id;
    json["part"] = rule.part;
    json["when"] = rule.when ? Json(word_of(*rule.when)) : Json();
    json["caution"] = rule.caution;
    json["action"] = rule.action;
    json["why"] = rule.why;
    json["wrong"] = rule.wrong;
    json["least"] = rule.least;
    json["most"] = rule.most;
    json["source"] = rule.source;
    return json;
}

std::string step_text(const StepRule& rule) {
    std::string text = rule.caution.empty() ? "" : "    ! " + shown_text(rule.caution) + '\n';
    text += "  - " + shown_text(rule.action);
    text += rule.when ? " (at an end: " + spoken(*rule.when).english() + ")\n" : "\n";
    return text + "      " + shown_text(rule.why) + " Else: " + shown_text(rule.wrong) + '\n';
}

}  // namespace

Exit print_steps(const StepsArguments& arguments) {
    const std::optional<Assets> assets = assets_here();
    if (!assets) {
        return Exit::problem_in_input;
    }
    const std::vector<StepRule>* steps = steps_named(*assets, arguments.work);
    if (steps == nullptr) {
        return complain("WORK", 1, 1, "The assets have no steps for \"" + arguments.work + "\".",
                        "Add procedures/" + arguments.work + ".csv to them.");
    }
    Json json = Json::array();
    std::string text;
    std::string part;
    for (const StepRule& rule : *steps) {
        json.push_back(step_json(rule));
        text += rule.part == part ? "" : shown_text(rule.part) + '\n';
        text += step_text(rule);
        part = rule.part;
    }
    if (arguments.output == Output::json) {
        print_json(json);
    } else {
        std::cout << text << caution() << '\n';
    }
    return Exit::fine;
}

}  // namespace hemline
