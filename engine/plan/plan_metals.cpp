// Which edges' metals eat each other: those that touch, and those whose water runs onto another.
//
//      ridge, hip, headwall …          the job does not say which edge meets which; kinds and
//        \  \  \                       ends say what can, and each such pair is judged
//         pans ──▶ valley ──▶ eave
#include <algorithm>
#include <utility>
#include <vector>

#include "engine/plan/plan_parts.h"
#include "engine/roof/edge_shape.h"
#include "engine/trim/metal_family.h"
#include "engine/words/quote.h"

namespace hemline {

namespace {

/// No roof has as many such pairs; past them more names do not help.
constexpr std::size_t pairs_most = 500;

/// How far up the water's way a kind stands: it runs from more to less.
int height_of(EdgeKind kind) {
    switch (kind) {
        case EdgeKind::ridge:
        case EdgeKind::high_eave:
        case EdgeKind::headwall:
            return 5;
        case EdgeKind::hip:
            return 4;
        case EdgeKind::gable:
        case EdgeKind::sidewall:
            return 3;
        case EdgeKind::transition:
        case EdgeKind::curb_head:
        case EdgeKind::penetration:
        case EdgeKind::panels:
            return 2;
        case EdgeKind::valley:
            return 1;
        case EdgeKind::eave:
            break;
    }
    return 0;
}

bool is_corner(End end) { return end == End::corner_out || end == End::corner_in; }

/// Whether an end of `edge` is where edges of the other's kind are met.
bool ends_at(const Edge& edge, const Edge& other) {
    const std::optional<End> met = facts_of(other.kind).met_as;
    const auto meets = [&](Side side) {
        const End end = end_at(edge, side);
        const bool around_corner =
            is_corner(end) && edge.kind == other.kind && (other.left == end || other.right == end);
        return end == met || around_corner;
    };
    return meets(Side::left) || meets(Side::right);
}

/// What joins the two metals; empty where nothing does.
Text meeting_of(const Edge& eaten, const Edge& eater) {
    if (height_of(eater.kind) > height_of(eaten.kind)) {
        return say("Water from {1} runs over {2}", title_of(eater.kind, eater.id),
                   title_of(eaten.kind, eaten.id));
    }
    if (ends_at(eaten, eater) || ends_at(eater, eaten)) {
        return say("{1} and {2} touch", title_of(eater.kind, eater.id),
                   title_of(eaten.kind, eaten.id));
    }
    return {};
}

/// A metal, and how it is told: in its words, or that it is not stated.
struct Said {
    std::string words;
    MetalFamily family = MetalFamily::galvanized;

    [[nodiscard]] bool is_stated() const { return !words.empty(); }
    [[nodiscard]] Text metal() const {
        return is_stated() ? Text(quoted(words)) : say("galvanized steel");
    }
};

/// What is not stated is taken as what the catalogue's trims are made of.
Said said_of_metal(const std::string& words) {
    return {words, words.empty() ? MetalFamily::galvanized : metal_family(words)};
}

PlanProblem eaten_by(const Edge& eaten, const Said& eaten_metal, const Edge& eater,
                     const Said& eater_metal, const Text& how) {
    if (!eaten_metal.is_stated()) {
        return {eaten.id, "metal", Severity::problem,
                say("{1}, {2} eats galvanized steel, and the metal of {3} is not stated.", how,
                    eater_metal.metal(), eaten.id),
                say("Write the metal of {1}: the same as that of {2}, or stainless steel.",
                    eaten.id, eater.id)};
    }
    return {eaten.id, "metal", Severity::problem,
            say("{1}, and {2} eats {3}.", how, eater_metal.metal(), eaten_metal.metal()),
            say("Make {1} and {2} of one metal, or {1} of stainless steel.", eaten.id, eater.id)};
}

/// What is of one metal on the whole job and no edge.
struct Part {
    Text name;  ///< "the panels"
    const char* rule;
    Said said;
};

/// Metals that touch, or whose water runs from one onto the other, of an edge and a part of the
/// job.
class PartsJudged {
  public:
    PartsJudged(const Job& job, Plan& plan) : job_(job), plan_(plan) {
        const Site& site = job.practice.site;
        panels_ = {say("the panels"), "panel_metal", said_of_metal(site.panel_metal)};
        gutter_ = {say("the gutter"), "gutter_metal", said_of_metal(site.gutter_metal)};
        screws_ = {say("the screws"), "screw_metal", said_of_metal(site.screw_metal)};
    }
    void judge(const Edge& edge) {
        const Said own = said_of_metal(metal_of(edge, job_.practice.site));
        pair(edge, own, panels_);
        if (gutter_.said.is_stated()) {
            runs_into_gutter(edge, own);
        }
        if (!screws_suit(screws_.said.family, own.family)) {
            add(edge,
                say("{1} holds {2}, and the screws are {3}.", title_of(edge.kind, edge.id),
                    own.metal(), told(screws_)),
                say("Use stainless steel screws, or of the metal of {1}, and say so in the rules.",
                    edge.id));
        }
        if (job_.practice.site.treated_wood && wood_eats(own.family)) {
            add(edge,
                say("Bare treated wood lies against {1}, and eats {2}.",
                    title_of(edge.kind, edge.id), own.metal()),
                say("Lay a membrane between them, then say in the rules that no treated wood lies "
                    "at the metal."));
        }
    }
    /// The panels among themselves: with gutter and screws, told at the edge.
    void judge_panels(const Edge& edge) {
        const bool into_gutter =
            gutter_.said.is_stated() && (eats(panels_.said.family, gutter_.said.family) ||
                                         eats(gutter_.said.family, panels_.said.family));
        if (into_gutter) {
            add(edge,
                say("Water from the panels ({1}) runs into the gutter ({2}), and one eats "
                    "the other.",
                    told(panels_), told(gutter_)),
                say("Make panels and gutter of one metal, and say so in the rules."));
        }
        if (!screws_suit(screws_.said.family, panels_.said.family)) {
            add(edge, say("The panels are {1}, and the screws {2}.", told(panels_), told(screws_)),
                say("Use stainless steel screws, or of the metal of the panels, and say so in the "
                    "rules."));
        }
    }
    [[nodiscard]] bool is_full() const { return pairs_ >= pairs_most; }

  private:
    static Text told(const Part& part) {
        return part.said.is_stated() ? part.said.metal()
                                     : say("not stated, taken as galvanized steel");
    }
    void add(const Edge& edge, Text what, Text mend) {
        if (++pairs_ <= pairs_most) {
            plan_.problems.push_back(
                {edge.id, "metal", Severity::problem, std::move(what), std::move(mend)});
        }
    }
    void pair(const Edge& edge, const Said& own, const Part& part) {
        if (eats(own.family, part.said.family)) {
            add(edge,
                say("{1} touches {2}, and {3} eats them: {4}.", title_of(edge.kind, edge.id),
                    part.name, own.metal(), told(part)),
                say("Make both of one metal: set {1}.", part.rule));
        } else if (eats(part.said.family, own.family)) {
            add(edge,
                say("Water from {1} runs over {2}, and {3} eats {4}.", part.name,
                    title_of(edge.kind, edge.id), part.said.metal(),
                    own.is_stated() ? own.metal() : say("galvanized steel, as it is not stated")),
                say("Make both of one metal, or {1} of stainless steel.", edge.id));
        }
    }
    void runs_into_gutter(const Edge& edge, const Said& own) {
        const bool beside = edge.kind == EdgeKind::eave;
        if (eats(own.family, gutter_.said.family)) {
            add(edge,
                say("Water from {1} runs into the gutter, and {2} eats {3}.",
                    title_of(edge.kind, edge.id), own.metal(), gutter_.said.metal()),
                say("Make both of one metal: set {1}.", gutter_.rule));
        } else if (beside && eats(gutter_.said.family, own.family)) {
            add(edge,
                say("{1} touches the gutter, and {2} eats {3}.", title_of(edge.kind, edge.id),
                    gutter_.said.metal(), own.metal()),
                say("Make both of one metal: set {1}.", gutter_.rule));
        }
    }

    const Job& job_;
    Plan& plan_;
    Part panels_, gutter_, screws_;
    std::size_t pairs_ = 0;
};

/// Once somebody spoke of metals; a job that says nothing is of one metal.
bool says_metals(const Job& job) {
    const Site& site = job.practice.site;
    const auto says_own = [](const EdgeWork& work) { return !work.edge.metal.empty(); };
    return site.treated_wood || !site.panel_metal.empty() || !site.trim_metal.empty() ||
           !site.gutter_metal.empty() || !site.screw_metal.empty() ||
           std::any_of(job.edges.begin(), job.edges.end(), says_own);
}

void judge_parts(const Job& job, Plan& plan) {
    PartsJudged parts(job, plan);
    bool first = true;
    for (const EdgeWork& work : job.edges) {
        if (!has_run(work.edge.kind)) {
            continue;
        }
        if (first) {
            parts.judge_panels(work.edge);
        }
        first = false;
        parts.judge(work.edge);
        if (parts.is_full()) {
            return;
        }
    }
}

}  // namespace

void judge_metals(const Job& job, Plan& plan) {
    if (!says_metals(job)) {
        return;
    }
    std::vector<std::pair<const Edge*, Said>> eaters;
    for (const EdgeWork& work : job.edges) {
        const Said metal = said_of_metal(metal_of(work.edge, job.practice.site));
        if (metal.family == MetalFamily::copper || metal.family == MetalFamily::lead) {
            eaters.emplace_back(&work.edge, metal);
        }
    }
    std::size_t pairs = 0;
    for (const EdgeWork& work : job.edges) {
        const Said metal = said_of_metal(metal_of(work.edge, job.practice.site));
        for (const auto& [eater, eating] : eaters) {
            const Text how =
                eats(eating.family, metal.family) ? meeting_of(work.edge, *eater) : Text();
            if (how.empty()) {
                continue;
            }
            if (++pairs > pairs_most) {
                return;
            }
            plan.problems.push_back(eaten_by(work.edge, metal, *eater, eating, how));
        }
    }
    judge_parts(job, plan);
}

}  // namespace hemline
