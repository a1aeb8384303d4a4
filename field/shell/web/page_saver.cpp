// Saving in a browser, where the page keeps the bytes and nothing may wait for it: the same Saver,
// one frame at a time, which comes back when the page answers.
#include <emscripten.h>

#include <utility>

#include "engine/words/result.h"
#include "field/store/saver.h"

namespace hemline {

namespace {

// clang-format off
EM_JS(void, page_when_kept, (void* saver, std::uint32_t sequence), {
    Module.hemline.when_kept(saver, sequence);
})
EM_JS(void, page_forget, (void* saver), { Module.hemline.forget(saver); })
// clang-format on

}  // namespace

Saver::Saver(OwnJournal& journal, std::function<void()> wake)
    : journal_(journal), wake_(std::move(wake)) {}

/// The page goes on keeping what it was given, but its answer is ignored.
Saver::~Saver() { page_forget(this); }

void Saver::hand_over(std::uint32_t sequence, Bytes frame, Bytes strike) {
    waiting_.push_back({sequence, std::move(frame), std::move(strike)});
    run();
}

void Saver::run() {
    if (writing_ || failed_ || waiting_.empty()) {
        return;
    }
    const Frame frame = std::move(waiting_.front());
    waiting_.pop_front();
    if (std::optional<NotSaved> not_saved = journal_.save(frame.bytes, frame.strike)) {
        returned_.push_back({frame.sequence, std::move(not_saved)});
        failed_ = true;
        return;
    }
    writing_ = true;
    page_when_kept(this, frame.sequence);
}

void Saver::answered(std::uint32_t sequence, const std::optional<Problem>& why_not) {
    writing_ = false;
    failed_ = why_not.has_value();
    returned_.push_back({sequence, {}});
    if (failed_) {
        // The page keeps all of a frame or nothing, so nothing of it remains.
        returned_.back().not_saved = NotSaved{*why_not};
    }
    wake_();
    run();
}

std::vector<Returned> Saver::returned() {
    if (failed_) {
        const Problem first = returned_.back().not_saved->problem;
        for (const Frame& frame : waiting_) {
            returned_.push_back({frame.sequence, NotSaved{first}});
        }
        waiting_.clear();
        failed_ = false;
    }
    return std::exchange(returned_, {});
}

void Saver::settle() {}

}  // namespace hemline
