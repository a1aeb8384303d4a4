#include "field/touch/keyboard.h"

#include <algorithm>
#include <utility>

namespace hemline {

namespace {

constexpr double bounce = 0.080;  // s

/// Erasing is part of the text.
bool is_key(char letter) { return static_cast<unsigned char>(letter) < ' ' && letter != '\b'; }

}  // namespace

void Keyboard::begin_frame() {
    all_.clear();
    back_.clear();
    text_.clear();
    key_.reset();
    scrolls_ = false;
    pasted_now_ = std::exchange(pasted_, {});
    pressed_ = std::exchange(pressing_, {});
    const bool words = std::exchange(takes_words_, false);
    takes_letters_ = false;
    if (waiting_.empty() || !pressed_.empty()) {
        return;  // what comes next is for the screen that this press leads to
    }
    const auto ends = [words](char letter) { return is_key(letter) || (letter == '?' && !words); };
    const auto end = std::find_if(waiting_.begin(), waiting_.end(), ends);
    if (end == waiting_.begin()) {
        key_ = *end == '?' ? Key::keys : Key{*end};
        shown_ = shown_ || *key_ != Key::enter;
        waiting_.erase(waiting_.begin());
    } else {
        text_.assign(waiting_.begin(), end);
        waiting_.erase(waiting_.begin(), end);
    }
}

std::string Keyboard::take(bool wants_enter) {
    if (wants_enter && key_ == Key::enter) {
        key_.reset();
        line_read_ = true;
        return "\n";
    }
    if (!text_.empty()) {
        focus_.clear();
    }
    return std::exchange(text_, {});
}

std::string Keyboard::take_words() {
    takes_words_ = true;
    return take(false);
}

char Keyboard::take_letter() {
    if (text_.empty()) {
        return 0;
    }
    focus_.clear();
    takes_letters_ = true;
    const char letter = text_.front();
    text_.erase(text_.begin());
    return letter;
}

std::optional<std::size_t> Keyboard::place_of(std::string_view name) const {
    const auto found = std::find_if(all_.begin(), all_.end(),
                                    [name](const Focusable& one) { return one.name == name; });
    return found == all_.end() ? std::nullopt
                               : std::optional(static_cast<std::size_t>(found - all_.begin()));
}

std::optional<std::size_t> Keyboard::focus() const {
    if (!shown_) {
        return std::nullopt;
    }
    if (const auto there = focus_.empty() ? std::nullopt : place_of(focus_)) {
        return there;
    }
    const auto primary =
        std::find_if(all_.rbegin(), all_.rend(), [](const Focusable& one) { return one.primary; });
    return primary == all_.rend()
               ? std::nullopt
               : std::optional(static_cast<std::size_t>(all_.rend() - primary - 1));
}

Keyboard::Scrolls Keyboard::end_frame(double now) {
    entered_ = std::exchange(line_read_, false) ? now : entered_;
    if (!text_.empty() && takes_letters_) {
        waiting_.insert(0, text_);
    } else if (text_ == " " && focus()) {
        key_ = Key::enter;
    }
    return key_ ? act(*key_, now) : Scrolls{};
}

Keyboard::Scrolls Keyboard::act(Key key, double now) {
    switch (key) {
        case Key::enter: {
            const bool again = std::exchange(entered_, now) > now - bounce;
            shown_ = true;
            if (const auto on = focus(); on && !again) {
                pressing_ = all_[*on].name;
            }
            return {};
        }
        case Key::escape:
            pressing_ = back_;
            return {};
        case Key::keys:
            sheet_ = true;
            forget();
            return {};
        case Key::page_up:
        case Key::page_down:
            scrolls_ = true;
            return {std::nullopt, key};
        case Key::tab:
        case Key::back_tab:
        case Key::up:
        case Key::down:
        case Key::left:
        case Key::right:
            return move(key);
        default:
            return {};
    }
}

Keyboard::Scrolls Keyboard::move(Key key) {
    const bool tab = key == Key::tab || key == Key::back_tab;
    const auto from = focus_.empty() && tab ? std::nullopt : focus();
    const auto to = tab || !from ? after(all_, from, key == Key::back_tab ? key : Key::tab)
                                 : beside(all_, *from, key);
    scrolls_ = true;
    if (!to) {
        return {std::nullopt, key};
    }
    focus_ = all_[*to].name;
    return {to, std::nullopt};
}

}  // namespace hemline
