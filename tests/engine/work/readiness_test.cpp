// What is looked up of an edge before it is cut.
#include "engine/work/readiness.h"
#include "engine/record/job.h"

#include <doctest/doctest.h>

namespace hemline {
namespace {

TEST_CASE("Only what slopes lies mirrored when its foot was said to be on the right") {
    EdgeWork work;
    DoneStep said;
    said.step.step = hand_step;
    said.step.answer = {AnswerKind::seen, {}, 0, "right"};
    work.steps.push_back(said);
    for (const auto& [kind, mirrored] :
         {std::pair(EdgeKind::eave, false), {EdgeKind::gable, true}, {EdgeKind::ridge, false}}) {
        work.edge.kind = kind;
        CHECK(lies_mirrored(work) == mirrored);
    }
}

}  // namespace
}  // namespace hemline
