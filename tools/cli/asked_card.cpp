#include "tools/cli/asked_card.h"

#include <filesystem>

#include "engine/words/quote.h"
#include "engine/words/result.h"
#include "field/store/clock.h"
#include "tools/cli/complaint.h"
#include "tools/cli/print.h"

namespace hemline {
namespace {

/// "eave_rolled, cleat": the trims planned on the edge.
std::string trims_on(const Plan& plan, std::string_view edge) {
    std::string trims;
    for (const Run& run : plan.runs) {
        if (run.edge == edge) {
            trims += (trims.empty() ? "" : ", ") + run.trim;
        }
    }
    return trims;
}

/// The runs to plan for this card: a wrap or a cleat is asked for by its trim.
DeskArguments runs_for(const CardArguments& arguments, const Catalogue& catalogue) {
    DeskArguments desk = arguments.desk;
    if (const Trim* trim = catalogue.find(arguments.trim)) {
        desk.wrap = desk.wrap || trim->role == TrimRole::wrap;
        desk.cleat = desk.cleat || trim->role == TrimRole::cleat;
    }
    return desk;
}

/// The role of the run that `trim` names on the edge; the main run where none is named.
std::optional<TrimRole> role_of(const Plan& plan, std::string_view edge, std::string_view trim) {
    if (trim.empty()) {
        return TrimRole::main;
    }
    for (const Run& run : plan.runs) {
        if (run.edge == edge && run.trim == trim) {
            return run.role;
        }
    }
    return {};
}

}  // namespace

std::optional<AskedCard> asked_card(const CardArguments& arguments, const Assets& assets) {
    std::optional<Desk> desk = lay_out(runs_for(arguments, assets.catalogue), assets);
    if (!desk) {
        return {};
    }
    const bool edge_is_there = desk->job.find(arguments.edge) != nullptr;
    const auto role = role_of(desk->plan, arguments.edge, arguments.trim);
    if (edge_is_there && !role) {
        complain(
            "--trim", 1, 1,
            "Edge " + arguments.edge + " has no run of " + hemline::quoted(arguments.trim) + ".",
            "Name one of its own: " + trims_on(desk->plan, arguments.edge) + ".");
        return {};
    }
    const Result<Card> card = make_card(desk->job, desk->plan, assets.catalogue, arguments.edge,
                                        role.value_or(TrimRole::main), arguments.piece);
    if (!card) {
        complain(edge_is_there ? "PIECE" : "EDGE", card.problem());
        return {};
    }
    return AskedCard{std::move(*desk), *card};
}

PaperHead paper_head(const Desk& desk, const CardArguments& arguments) {
    const std::string file = std::filesystem::path(arguments.desk.readings).stem().string();
    return {shown_text(desk.job.name.empty() ? file : desk.job.name), day_name({wall_ms()})};
}

}  // namespace hemline
