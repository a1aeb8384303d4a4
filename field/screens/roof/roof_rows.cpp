#include "field/screens/roof/roof_rows.h"

#include <imgui.h>

#include <algorithm>
#include <map>
#include <set>
#include <string_view>
#include <utility>

#include "engine/record/last_on_edges.h"
#include "engine/roof/edge_shape.h"
#include "engine/work/edge_values.h"
#include "engine/work/order.h"
#include "field/screens/page/frame.h"
#include "field/screens/page/other_tape.h"
#include "field/screens/page/status_mark.h"
#include "field/state/edge_view.h"

namespace hemline {

namespace {

constexpr float mark_mm = 5.5F, words_from_mm = 2 * mark_mm + 5;

/// What the rows tell about edges, indexed by edge.
struct Told {
    std::map<std::string_view, const PlanProblem*> problems;  ///< the first problem of each edge
    std::map<std::string_view, const Conflict*> lengths_apart;
};

Told told_on(const State& state) {
    Told told;
    for (const PlanProblem& problem : state.plan.problems) {
        if (problem.severity == Severity::problem) {
            told.problems.emplace(problem.edge, &problem);
        }
    }
    for (const Conflict& conflict : state.job.conflicts) {
        if (conflict.thing.subject == Subject::reading) {
            told.lengths_apart.emplace(conflict.thing.name, &conflict);
        }
    }
    return told;
}

/// The readings of the edge about which tablets disagree; empty: none.
Text lengths_apart(const Told& told, const EdgeWork& work) {
    Text words;
    const auto apart = told.lengths_apart.find(work.edge.id);
    if (apart == told.lengths_apart.end()) {
        return words;
    }
    std::set<EventId> values;
    for (const Tip& side : apart->second->sides) {
        values.insert(side.says);
    }
    constexpr std::size_t lengths_most = 4;  // a row has no room for more
    std::set<Length> said;
    for (const RecordedReading& reading : work.readings) {
        if (values.count(reading.id) == 0 || !said.insert(reading.length).second) {
            continue;
        }
        if (said.size() > lengths_most) {
            return say("{1} or {2}", words, "…");
        }
        words = words.empty() ? Text(reading.length) : say("{1} or {2}", words, reading.length);
    }
    return words;
}

Text length_words(const State& state, const Told& told, const EdgeWork& work) {
    if (!has_run(work.edge.kind)) {
        return spoken(work.edge.kind);
    }
    if (Text apart = lengths_apart(told, work); !apart.empty()) {
        return apart;
    }
    const std::optional<Length> length = work.length(state.job.practice);
    if (length) {
        return *length;
    }
    for (const RecordedReading& reading : work.readings) {
        if (reading.of == ReadingOf::edge && !reading.struck) {
            return say("{1}, once", reading.length);
        }
    }
    if (const auto roof = expected_of(state.bodies, work.edge.id)) {
        return say("roof: {1}", roof->length);
    }
    return say("no reading");
}

Text other_words(const State& state, const Told& told, const EdgeWork& work) {
    const std::optional<Length> length = work.length(state.job.practice);
    return has_run(work.edge.kind) && length && lengths_apart(told, work).empty()
               ? on_other_tape(*length, tapes_of(state))
               : Text();
}

/// What is wrong with an edge that is read and has its pitch; empty when nothing is.
Text problem_on(const Told& told, const EdgeWork& work) {
    const auto found = told.problems.find(work.edge.id);
    return found != told.problems.end() && work.edge.pitch ? found->second->what : Text();
}

/// What the foreman sees of each edge at a glance.
struct Glance {
    std::map<std::string, EdgeNext> next;
    std::map<std::string, const Event*> last;
};

/// The edge's status, its ends or what is wrong with it.
Text under_words(const Told& told, const EdgeWork& work, EdgeStatus status) {
    const Text problem = problem_on(told, work);
    if (!problem.empty()) {
        return say("{1} · ! {2}", spoken(status), problem);
    }
    return has_run(work.edge.kind) ? say("{1} · {2} to {3}", spoken(status), spoken(work.edge.left),
                                         spoken(work.edge.right))
                                   : spoken(status);
}

/// The status, and what the edge waits for or what comes next on it.
Text waits_words(const Told& told, const Glance& glance, const EdgeWork& work, EdgeStatus status) {
    const Text words = spoken(status);
    if (const Text problem = problem_on(told, work); !problem.empty()) {
        return say("{1} · ! {2}", words, problem);
    }
    const auto found = glance.next.find(work.edge.id);
    if (found == glance.next.end() || status == EdgeStatus::to_tick) {
        return words;
    }
    const EdgeNext& next = found->second;
    return next.waits_for.empty() ? glued(words, " · ", next.what)
                                  : say("{1} · waits: {2}", words, next.waits_for);
}

std::string who_did(const Glance& glance, const EdgeWork& work) {
    const auto last = glance.last.find(work.edge.id);
    if (work.finished) {
        return work.finished_by + " " + clock_time(work.finished_clock);
    }
    return last == glance.last.end() || last->second->by.empty()
               ? ""
               : last->second->by + " " + clock_time(wall_time(*last->second));
}

/// What was accepted outside practice, and by whom; empty if nothing was.
Text noted_words(const EdgeWork& work) {
    const std::vector<const DoneStep*> exceptions = exceptions_on(work);
    constexpr std::size_t names_most = 4;  // a row has no room for more
    std::vector<std::string> people;
    for (const DoneStep* const done : exceptions) {
        const std::string& person = done->step.exception_by;
        if (std::find(people.begin(), people.end(), person) == people.end()) {
            people.push_back(person);
        }
        if (people.size() > names_most) {
            people.back() = "…";
            break;
        }
    }
    std::string names;
    for (const std::string& person : people) {
        names += (names.empty() ? "" : ", ") + person;
    }
    return exceptions.empty()
               ? Text()
               : say_count("! {1} exception, noted by {2}", "! {1} exceptions, noted by {2}",
                           static_cast<std::int64_t>(exceptions.size()), names);
}

struct Row {
    Text length, other;  ///< the other on the other tape
    std::string who;
    Text under, noted;
};

Row row_of(const State& state, const Told& told, const Glance* glance, const EdgeWork& work,
           EdgeStatus status) {
    if (glance == nullptr) {
        return {length_words(state, told, work),
                other_words(state, told, work),
                "",
                under_words(told, work, status),
                {}};
    }
    return {length_words(state, told, work), other_words(state, told, work), who_did(*glance, work),
            waits_words(told, *glance, work, status), noted_words(work)};
}

void draw_edge_row(Ui& ui, const Row& said, const EdgeWork& work, EdgeStatus status, Box row) {
    const float radius = ui.mm(mark_mm);
    const float cx = row.x + radius + ui.mm(1);
    const float line = ui.line_height(Size::bold);
    const float mid = row.y + ui.mm(edge_row_mm) / 2;
    const bool in_view = ui.shows(row);
    if (in_view) {
        draw_status_mark(ui, cx, mid, radius, status, work.edge.id);
    }
    const float x = row.x + ui.mm(words_from_mm);
    const float w = row.right() - x;
    const float who_alone =
        said.who.empty() ? 0 : ui.text_width(Text(said.who), Size::small) + ui.mm(3);
    // The length goes first: where both have no room, who did it is on the next line.
    const bool who_beside = ui.text_width(said.length, Size::bold) <= w - who_alone;
    const float who_w = who_beside ? who_alone : 0;
    float y = mid - line;
    const Size size =
        ui.text_width(said.length, Size::bold) <= w - who_w ? Size::bold : Size::small;
    const float used = ui.text(x, y, ui.shortened(said.length, size, w - who_w), size) + ui.mm(2);
    const bool beside = used + ui.text_width(said.other, Size::small) <= w - who_w;
    if (beside) {
        ui.text(x + used, y + ui.mm(1), said.other, Size::small);
    }
    if (!said.who.empty() && who_beside) {
        ui.text(row.right(), y + ui.mm(1), Text(said.who), Size::small, Align::right,
                ui.colours().soft);
    }
    y += line + ui.mm(0.5F);
    Text under = beside || said.other.empty() ? said.under : glued(said.other, " · ", said.under);
    under = who_beside || said.who.empty() ? under : glued(said.who, " · ", under);
    ui.text(x, y, ui.shortened(under, Size::small, w), Size::small, Align::left, ui.colours().soft);
    if (!said.noted.empty()) {
        y += ui.line_height(Size::small);
        ui.paragraph(x, y, w, said.noted, Size::small);
    }
    if (in_view) {
        ui.ink()->AddLine({row.x, row.bottom()}, {row.right(), row.bottom()}, ui.colours().hairline,
                          ui.mm(0.2F));
    }
}

/// In the order of the job; for the foreman what waits for him comes first.
std::vector<std::pair<EdgeStatus, const EdgeWork*>> in_turn(const State& state) {
    std::vector<std::pair<EdgeStatus, const EdgeWork*>> edges;
    for (const EdgeWork& work : state.job.edges) {
        edges.emplace_back(status_on(state, work), &work);
    }
    if (state.way == Way::tick_off) {
        std::stable_partition(edges.begin(), edges.end(), [](const auto& edge) {
            return edge.first == EdgeStatus::to_tick || edge.first == EdgeStatus::undecided ||
                   edge.first == EdgeStatus::held;
        });
    }
    return edges;
}

}  // namespace

void draw_edge_rows(Ui& ui, const State& state, Box& list, Wished& wish) {
    std::optional<Glance> glance;
    if (state.way == Way::tick_off) {
        glance = {{}, last_on_edges(state.events, state.job)};
        for (EdgeNext& next :
             whats_next(state.job, state.plan, state.assets->procedures, state.catalogue)) {
            const std::string edge = next.edge;
            glance->next.emplace(edge, std::move(next));
        }
    }
    const Told told = told_on(state);
    for (const auto& [status, edge] : in_turn(state)) {
        const EdgeWork& work = *edge;
        const Row said = row_of(state, told, glance ? &*glance : nullptr, work, status);
        const float noted = said.noted.empty() ? 0
                                               : ui.paragraph_height(list.w - ui.mm(words_from_mm),
                                                                     said.noted, Size::small) +
                                                     ui.mm(1);
        const Box row = take_top(list, ui.mm(edge_row_mm) + noted);
        if (ui.area("edge " + work.edge.id, row, title_of(work.edge))) {
            wish = Go{opened(state, work)};
        }
        draw_edge_row(ui, said, work, status, row);
    }
}

Text glance_words(const State& state) {
    std::int64_t finished = 0, to_tick = 0, exceptions = 0, held = 0, sent_back = 0;
    for (const EdgeWork& work : state.job.edges) {
        const EdgeStatus status = status_on(state, work);
        finished += status == EdgeStatus::finished ? 1 : 0;
        to_tick += status == EdgeStatus::to_tick ? 1 : 0;
        held += status == EdgeStatus::held ? 1 : 0;
        sent_back += status == EdgeStatus::sent_back ? 1 : 0;
        exceptions += static_cast<std::int64_t>(exceptions_on(work).size());
    }
    const Text words = say_count("{2} of {3} edges finished, {4} to check off, {1} exception",
                                 "{2} of {3} edges finished, {4} to check off, {1} exceptions",
                                 exceptions, finished, state.job.edges.size(), to_tick);
    const std::size_t apart = state.job.conflicts.size();
    return joined(
        {apart > 0 ? say("{1}: two tablets disagree on {2}.", words, apart) : glued(words, "."),
         held > 0 ? say_count("{1} edge is held.", "{1} edges are held.", held) : Text(),
         sent_back > 0 ? say_count("{1} edge is sent back.", "{1} edges are sent back.", sent_back)
                       : Text()},
        " ");
}

}  // namespace hemline
