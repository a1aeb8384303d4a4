// What is asked once of a roof, after the first morning's questions: where its panels are pinned,
// where the rain's wind comes from, and which way an edge runs.
#include <algorithm>

#include "field/screens/page/frame.h"
#include "field/screens/rules/fixed_lines.h"
#include "field/screens/rules/site_rules.h"
#include "field/screens/screens.h"
#include "field/state/edge_view.h"
#include "field/state/gate_view.h"
#include "field/touch/box.h"

namespace hemline {

namespace {

constexpr float answer_mm = 12, answer_w_mm = 16;
constexpr std::string_view bearing_key = "bearing.";

struct Question {
    std::string key;
    Text asks;
    std::vector<SiteAnswer> answers;
    std::string now;
};

Question line_question(const State& state) {
    Question question{"fixed_line", say("Along which line are the panels pinned?"), {}, {}};
    for (const PinnedLine& line : pinned_lines) {
        question.answers.push_back({line.value, say(line.words)});
        if (line.line == state.job.practice.fixed_line) {
            question.now = line.value;
        }
    }
    return question;
}

Question point_question(const State& state, const std::string& key, Text asks) {
    Question question{key, std::move(asks), site_answers(state, key),
                      site_value(state.job.practice.site, key)};
    question.answers.erase(std::remove_if(question.answers.begin(), question.answers.end(),
                                          [](const SiteAnswer& one) { return one.value.empty(); }),
                           question.answers.end());
    return question;
}

std::vector<Question> questions_on(const State& state) {
    std::vector<Question> questions = {
        line_question(state),
        point_question(state, "wind_from", say("From where does the wind bring rain?"))};
    for (const std::string& key : site_keys(state)) {
        if (key.rfind(bearing_key, 0) == 0) {
            const std::string edge = key.substr(bearing_key.size());
            questions.push_back(point_question(
                state, key,
                say("From outside, facing edge {1}: where does it run, left to right?", edge)));
            break;
        }
    }
    return questions;
}

Wished draw_question(Ui& ui, const State& state, const Question& question, Box& body) {
    Wished wish;
    take_top(body, ui.paragraph(body.x, body.y, body.w, question.asks) + ui.mm(gap_mm) / 2);
    const int fit = static_cast<int>(body.w / ui.mm(answer_w_mm));
    const int count = static_cast<int>(question.answers.size());
    // The points of the compass in full rows.
    const int across = count <= 4 ? std::max(count, 2) : fit >= 8 ? 8 : 4;
    std::vector<Box> places;
    for (int i = 0; i < count; ++i) {
        if (i % across == 0) {
            places = columns(take_top(body, ui.mm(answer_mm)), across, ui.mm(gap_mm));
            take_top(body, ui.mm(gap_mm));
        }
        const SiteAnswer& answer = question.answers[static_cast<std::size_t>(i)];
        const bool chosen = answer.value == question.now;
        if (ui.button(question.key + " " + answer.value, answer.words,
                      places[static_cast<std::size_t>(i % across)],
                      chosen ? Look::chosen : Look::plain)) {
            wish = Keep{RuleSet{question.key, answer.value}, state.where};
        }
    }
    return wish;
}

}  // namespace

Wished draw_asked_once(Ui& ui, const State& state, Drafts& /*drafts*/) {
    const bool open = asks_of_roof(state);
    const Frame frame = open_frame(
        ui, state, say("Asked once for this roof"),
        {way_back({"go on", open ? say("Ask the rest tomorrow") : say("Go on"), Look::primary})});
    Wished wish = frame.wish;
    Box body = ui.begin_scroll("asked once", frame.body);
    const float top = body.y;
    for (const Question& question : questions_on(state)) {
        if (Wished asked = draw_question(ui, state, question, body)) {
            wish = std::move(asked);
        }
        take_top(body, ui.mm(gap_mm));
    }
    take_top(body, ui.paragraph(body.x, body.y, body.w,
                                say("Closures along that line are screwed to the deck, others are "
                                    "riveted to their pans. Laps look away from the wind. Each can "
                                    "be changed among the rules.")));
    ui.end_scroll(body.y - top);
    if (frame.tapped == "go on") {
        const EdgeWork* const work = edge_of(state, state.where.edge);
        wish = Go{work == nullptr ? Where{Screen::roof, {}} : next_work_on(state, *work).where};
    }
    return wish;
}

}  // namespace hemline
