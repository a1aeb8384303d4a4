// A question about an edge, with the answers to touch: "What stands at its foot?"
#pragma once

#include <string>
#include <vector>

#include "engine/work/edge_change.h"
#include "field/touch/ui.h"

namespace hemline {

/// The question; for a sloped edge it says foot and top.
Text question_of(EdgeField field, const Edge& edge);
/// The name of the field in a list, and its present answer: "Left end", "gable".
Text name_of(EdgeField field, const Edge& edge);
Text answer_of(EdgeField field, const Edge& edge, const Catalogue& catalogue);

/// Whether it is answered by keys: a name, an angle, a pitch.
bool is_keyed(EdgeField field);

/// An answer to touch, the name of its target, and the edge with that answer.
struct EdgeAnswer {
    std::string target;
    Text words;
    Edge edge;
};
std::vector<EdgeAnswer> answers_to(EdgeField field, const Edge& edge, const Catalogue& catalogue);

/// The answers in a list that scrolls, in fewer columns where their words are long; returns the
/// answer touched, else null.
const EdgeAnswer* draw_edge_answers(Ui& ui, const std::vector<EdgeAnswer>& answers,
                                    const Text& stands, bool long_words, Box body);

/// The same in a list that has begun; cuts its height off.
const EdgeAnswer* draw_answers_in(Ui& ui, const std::vector<EdgeAnswer>& answers,
                                  const Text& stands, bool long_words, Box& list);

}  // namespace hemline
