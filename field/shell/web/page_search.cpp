// The search for better plans in a browser: the page gives the job's events to a worker, which runs
// this same program, and passes back what it finds.
//
//   start ─▶ page ─▶ worker: hemline_search(events) ─▶ choices as text ─▶ page ─▶ answered()
#include <emscripten.h>

#include <algorithm>
#include <chrono>

#include "engine/plan/make_plan.h"
#include "engine/record/event_bytes.h"
#include "engine/words/result.h"
#include "engine/work/job_sections.h"
#include "field/app/plan_search.h"
#include "field/shell/web/choices_text.h"
#include "field/store/assets.h"

namespace hemline {

namespace {

// clang-format off
EM_JS(void, page_search, (void* search, const std::uint8_t* events, std::size_t size), {
    Module.hemline.search(search, HEAPU8.slice(events, events + size));
})
EM_JS(void, page_stop_search, (void* search), { Module.hemline.stop_search(search); })
EM_JS(void, worker_found, (const char* choices, int is_last), {
    Module.found(UTF8ToString(choices), is_last === 1);
})
// clang-format on

/// True when every choice is proved, so that more steps would find nothing.
bool look(const Job& job, const Catalogue& catalogue, std::int64_t steps, bool is_last) {
    const auto until =
        std::chrono::steady_clock::now() + std::chrono::milliseconds(search_ms_beside);
    const std::vector<PlanChoice> choices = find_choices(
        job, catalogue, {steps, [=] { return std::chrono::steady_clock::now() > until; }});
    const bool proved = std::all_of(choices.begin(), choices.end(),
                                    [](const PlanChoice& choice) { return choice.proved; });
    worker_found(choices_text(choices).c_str(), proved || is_last ? 1 : 0);
    return proved;
}

}  // namespace

void PlanSearch::start(const Job& /*job*/, std::span<const Event> events,
                       const Catalogue& /*catalogue*/) {
    cancel();
    under_way_ = true;
    Bytes bytes;
    for (const Event& event : events) {
        const Bytes frame = frame_of(event);
        bytes.insert(bytes.end(), frame.begin(), frame.end());
    }
    page_search(this, bytes.data(), bytes.size());
}

void PlanSearch::cancel() {
    if (under_way_) {
        page_stop_search(this);
    }
    under_way_ = false;
    found_.reset();
}

/// Nothing waits for the worker's search.
void PlanSearch::settle() {}

std::optional<std::vector<PlanChoice>> PlanSearch::found() {
    return std::exchange(found_, std::nullopt);
}

void PlanSearch::answered(std::vector<PlanChoice> choices, bool is_last) {
    found_ = std::move(choices);
    under_way_ = !is_last;
}

extern "C" {
/// In the worker: looks for the choices of the job with these events, and reports what it finds.
EMSCRIPTEN_KEEPALIVE void hemline_search(const std::uint8_t* events, std::size_t size) {
    const Result<Assets> assets = read_assets("/assets");
    if (!assets) {
        return;  // the page's program says so
    }
    const Job job = replay(read_journal({events, size}).events, assets->practice);
    const Catalogue catalogue = catalogue_on(assets->catalogue, assets->sections, job);
    if (!look(job, catalogue, search_steps_at_once, false)) {
        look(job, catalogue, search_steps_beside, true);
    }
}
}

}  // namespace hemline
