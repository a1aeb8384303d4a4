// A desk's keyboard, on any screen: text for the field that takes it, and a focus that moves over
// all that can be tapped.
//
//   typed ─▶ text, or a single key, a frame ─▶ the field that takes it
//                                          └─▶ else the focus moves, acts or goes back
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "field/touch/focus.h"

namespace hemline {

class Keyboard {
  public:
    /// Letters and keys of keys.h; a laser types too ("31-7-5/8\n").
    void type(std::string_view text) { waiting_ += text; }
    /// Lines from the clipboard; see take_pasted().
    void paste(std::string_view text) { pasted_ += text; }
    /// More frames are needed before what was typed is done.
    [[nodiscard]] bool is_pending() const {
        return !waiting_.empty() || !pressing_.empty() || !pasted_.empty() || scrolls_;
    }

    // For fields: what one takes, no other gets, and the focus leaves its place to the main action.
    /// The text typed in this frame, erasing as '\b'; "\n" alone for Enter, if the field wants it.
    std::string take(bool wants_enter);
    /// The same for words, in which a question mark is a letter.
    std::string take_words();
    /// The next letter typed, or 0; the rest comes in later frames.
    char take_letter();
    [[nodiscard]] bool has_text() const { return !text_.empty(); }
    /// What was pasted, once, whole.
    std::string take_pasted() { return std::move(pasted_now_); }

    // For Ui.
    void begin_frame();
    void offer(Focusable one) { all_.push_back(std::move(one)); }
    /// The target that Esc presses; the first that is said counts.
    void goes_back(std::string_view name) { back_ = back_.empty() ? name : back_; }
    /// Empty: there is none.
    [[nodiscard]] const std::string& way_back() const { return back_; }
    /// The keyboard presses it in this frame.
    [[nodiscard]] bool presses(std::string_view name) const { return pressed_ == name; }
    /// A touch: the focus is not shown until a key is pressed again.
    void hide() { shown_ = false; }
    /// Another screen is shown.
    void forget() { focus_.clear(); }
    /// Does what no field took. A second Enter within 80 ms of the first is a bounce, or the end of
    /// a laser's line; `now` in seconds. Returns a target to be scrolled into view, or a key that
    /// scrolls (up, down, page_up, page_down).
    struct Scrolls {
        std::optional<std::size_t> to;
        std::optional<Key> by;
    };
    Scrolls end_frame(double now);
    /// What the focus is on; empty: nothing, or it is not shown.
    [[nodiscard]] std::optional<std::size_t> focus() const;
    [[nodiscard]] const std::vector<Focusable>& all() const { return all_; }

    /// The sheet of keys is to be shown.
    [[nodiscard]] bool shows_sheet() const { return sheet_; }
    void put_sheet_away() { sheet_ = false; }

  private:
    [[nodiscard]] std::optional<std::size_t> place_of(std::string_view name) const;
    Scrolls act(Key key, double now);
    Scrolls move(Key key);

    std::string waiting_, text_;
    std::optional<Key> key_;
    bool takes_words_ = false, takes_letters_ = false, shown_ = false, sheet_ = false;
    bool scrolls_ = false;  ///< the next frame draws lists elsewhere
    std::string focus_, back_, pressing_, pressed_, pasted_, pasted_now_;
    bool line_read_ = false;  ///< Enter ended a line in this frame
    double entered_ = -1;     ///< when Enter acted or ended a line last
    std::vector<Focusable> all_;
};

}  // namespace hemline
