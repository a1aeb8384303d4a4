#include "field/touch/ui.h"

#include <imgui.h>
#include <imgui_internal.h>

#include <algorithm>
#include <cmath>
#include <utility>

#include "engine/require.h"

namespace hemline {

namespace {

constexpr double repeat_min = 0.080;   // s
constexpr double refusal_shown = 0.5;  // s
constexpr double read_first = 0.7;     // s: a double click is two within 0.5 s (from memory)
constexpr float half_pixel = 0.5F;
constexpr float endless = 1e8F;  // px
constexpr float scroll_bar = 4;  // mm: the bar and the gap before it

const Phrases english;
const CrewWords no_words;

ImVec2 top_left(Box box) { return {box.x, box.y}; }
ImVec2 bottom_right(Box box) { return {box.right(), box.bottom()}; }

/// Indices of points have 16 bits; a single call draws some thousands of points at most.
bool is_full(const ImDrawList& list) {
    constexpr unsigned points_most = 50'000;
    return list._VtxCurrentIdx > points_most;
}

ImGuiID id_of(std::string_view name) {
    return ImGui::GetCurrentWindow()->GetID(name.data(), name.data() + name.size());
}

}  // namespace

Ui::Ui(const Palette& palette, const Fonts& fonts, float px_per_mm)
    : phrases_(&english),
      crew_words_(&no_words),
      palette_(&palette),
      fonts_(&fonts),
      px_per_mm_(px_per_mm) {}

void Ui::begin_page(const TouchQueue* touch) {
    touch_ = touch;
    targets_.clear();
    tapped_.clear();
    words_.clear();
    faults_.clear();
    is_laid_out_ = true;
    keyboard_.begin_frame();
    for (auto& [name, scroll] : scrolls_) {
        scroll.drawn = false;
    }
    const ImVec2 window = ImGui::GetIO().DisplaySize;
    const bool tall = window.y > window.x;
    page_ = {0, 0, std::max(window.x, mm(tall ? page_short_mm : page_long_mm)),
             std::max(window.y, mm(tall ? page_long_mm : page_short_mm))};
    if (touch_ != nullptr && touch_->dragging()) {
        ImGui::ClearActiveID();
    }
    ImGui::PushStyleVar(ImGuiStyleVar_WindowPadding, ImVec2(0, 0));
    ImGui::PushStyleVar(ImGuiStyleVar_WindowBorderSize, 0);
    ImGui::SetNextWindowPos(top_left(page_));
    ImGui::SetNextWindowSize(ImVec2(page_.w, page_.h));
    ImGui::Begin("page", nullptr,
                 ImGuiWindowFlags_NoDecoration | ImGuiWindowFlags_NoMove |
                     ImGuiWindowFlags_NoBackground | ImGuiWindowFlags_NoSavedSettings |
                     ImGuiWindowFlags_NoScrollWithMouse | ImGuiWindowFlags_NoNav);
    ImGui::PopStyleVar(2);
}

void Ui::end_page() {
    require(scroll_ == nullptr, "every begin_scroll has its end_scroll");
    if (is_full(*ImGui::GetWindowDrawList())) {
        faults_.emplace_back("more is drawn than a page holds");
    }
    do_keys();
    const bool is_new = std::any_of(asked_.begin(), asked_.end(), [this](const auto& words) {
        return asked_before_.count(words) == 0;
    });
    asked_at_ = is_new ? ImGui::GetTime() : asked_at_;
    asked_before_ = std::exchange(asked_, {});
    past_full_.reset();
    ImGui::End();
}

bool Ui::shows(Box box) const { return ImGui::IsRectVisible(top_left(box), bottom_right(box)); }

ImDrawList* Ui::ink() const {
    ImDrawList* const page = ImGui::GetWindowDrawList();
    if (!is_full(*page)) {
        return page;
    }
    if (!past_full_) {
        past_full_ = std::make_shared<ImDrawList>(ImGui::GetDrawListSharedData());
    }
    if (past_full_->_ClipRectStack.empty() || is_full(*past_full_)) {
        past_full_->_ResetForNewFrame();
        past_full_->PushClipRectFullScreen();
        past_full_->PushTextureID(ImGui::GetIO().Fonts->TexID);
    }
    return past_full_.get();
}

bool Ui::tap(std::string_view name, Box box, float w_min, float h_min, std::string_view label,
             bool primary) {
    if (box.w < mm(w_min) - half_pixel || box.h < mm(h_min) - half_pixel) {
        faults_.push_back(std::string(name) + " is too small for a glove");
        const float w = std::max(box.w, mm(w_min));
        const float h = std::max(box.h, mm(h_min));
        box = {box.mid_x() - w / 2, box.mid_y() - h / 2, w, h};
    }
    const Box shown = common_of(box, scroll_ != nullptr ? scroll_->view : page_);
    const bool clipped = shown.w < box.w - half_pixel || shown.h < box.h - half_pixel;
    const float least = mm(target_min) - half_pixel;
    const bool in_sight = !clipped || (shown.w >= least && shown.h >= least);
    const auto& offered = keyboard_.all();
    const bool is_offered = std::any_of(offered.begin(), offered.end(),
                                        [name](const Focusable& one) { return one.name == name; });
    if (!is_offered) {  // a name used twice would catch the focus between its two places
        keyboard_.offer({std::string(name), box, shown, in_sight, primary, scroll_,
                         scroll_ != nullptr ? scroll_->view : Box{}});
    }
    if (!in_sight) {
        return false;
    }
    if (std::any_of(targets_.begin(), targets_.end(),
                    [name](const Target& target) { return target.name == name; })) {
        faults_.push_back("two targets are named " + std::string(name));
        return false;
    }
    targets_.push_back({std::string(name), shown, std::string(label)});
    ImGui::SetCursorScreenPos(top_left(shown));
    const bool touched =
        ImGui::InvisibleButton(targets_.back().name.c_str(), ImVec2(shown.w, shown.h));
    const bool tapped = press_by_key(name, shown) || touched;
    if (tapped) {
        tapped_ = name;
    }
    return tapped;
}

bool Ui::area(std::string_view name, Box box, const Text& spoken) {
    return tap(name, box, target_min, target_min, in_words(spoken));
}

void Ui::speak(std::string_view name, const Text& spoken) {
    const auto found = std::find_if(targets_.begin(), targets_.end(),
                                    [name](const Target& target) { return target.name == name; });
    if (found != targets_.end()) {
        found->label = in_words(spoken);
    }
}

void Ui::mark_warning(bool asks) {
    if (words_.empty()) {
        return;
    }
    words_.back().warning = true;
    if (asks) {
        asked_.insert(words_.back().words);
    }
}

double Ui::wait_left() const { return std::max(0.0, asked_at_ + read_first - ImGui::GetTime()); }

bool Ui::button(std::string_view name, const Text& text, Box box, Look look, Size largest) {
    const std::string label = in_words(text);
    bool tapped = false;
    if (look == Look::key) {
        tapped = take_key(name, tap(name, box, key_min, key_min, label));
    } else if (look != Look::off) {
        const bool primary = look == Look::primary;
        tapped = tap(name, box, target_min, primary ? primary_min : target_min, label, primary);
        tapped = primary ? take_primary(name, tapped) : tapped;
    }
    if (!fit_label(label, box, look == Look::primary ? Size::title : largest).fits) {
        faults_.push_back("the label of " + std::string(name) + " is cut short");
    }
    if (look == Look::chosen && !targets_.empty() && targets_.back().name == name) {
        targets_.back().chosen = true;
    }
    draw_button(name, label, box, look, largest);
    return tapped;
}

/// A finger cannot tap a key twice in 80 ms, but a bouncing screen can. Measured from touch to
/// touch and from lift to lift, since a bounce may come at either end.
bool Ui::take_key(std::string_view name, bool tapped) {
    const double now = ImGui::GetTime();
    const bool same = keys_.name == name;
    if (ImGui::IsItemActivated() && ImGui::GetItemID() == id_of(name)) {
        keys_.lift = same ? keys_.lift : -1;
        keys_.bounced = same && now - keys_.down < repeat_min;
        keys_.down = now;
        keys_.name = name;
    }
    if (!tapped || keyboard_.presses(name)) {
        return tapped;
    }
    const bool repeated = keys_.bounced || (keys_.lift >= 0 && now - keys_.lift < repeat_min);
    keys_.lift = now;
    keys_.refused = repeated ? std::string(name) : std::string();
    keys_.refused_until = repeated ? now + refusal_shown : -1;
    return !repeated;
}

/// What a double tap began before the warning showed does not count.
bool Ui::take_primary(std::string_view name, bool tapped) {
    const bool waits = wait_left() > 0;
    if (ImGui::IsItemActivated() && ImGui::GetItemID() == id_of(name)) {
        held_back_ = waits;
    }
    return tapped && !waits && (keyboard_.presses(name) || !held_back_);
}

double Ui::key_refusal_left() const {
    return std::max(0.0, keys_.refused_until - ImGui::GetTime());
}

double Ui::refusal_left() const { return std::max(key_refusal_left(), wait_left()); }

bool Ui::pressed(std::string_view name) const {
    const ImGuiID id = id_of(name);
    return ImGui::GetActiveID() == id && ImGui::GetIO().MouseDown[0];
}

Ui::Moved Ui::dragged(Box box) const {
    if (touch_ == nullptr || !touch_->dragging() ||
        !box.holds(touch_->origin_x(), touch_->origin_y())) {
        return {};
    }
    return {touch_->aside(), touch_->scroll()};
}

Box Ui::begin_scroll(std::string_view name, Box view, float content_height) {
    require(scroll_ == nullptr, "one list at a time scrolls");
    scroll_ = &scrolls_.try_emplace(std::string(name)).first->second;
    scroll_->view = view;
    scroll_->content = content_height;
    scroll_->drawn = true;
    scroll_->wanted.clear();
    if (touch_ != nullptr && view.holds(touch_->origin_x(), touch_->origin_y())) {
        scroll_->top -= touch_->scroll();
    }
    const float more = std::max(0.0F, content_height - view.h);
    scroll_->top = std::clamp(scroll_->top, 0.0F, more);
    const Box seen = inset(view, -mm(0.3F));  // includes the outlines of what lies at its edge
    ImGui::PushClipRect(top_left(seen), bottom_right(seen), true);
    const float bar = more > half_pixel ? mm(scroll_bar) : 0;
    return {view.x, view.y - scroll_->top, std::max(0.0F, view.w - bar),
            std::max(content_height, view.h)};
}

Box Ui::begin_scroll(std::string_view name, Box view, OpensAt opens_at) {
    const auto known = scrolls_.find(name);
    if (known == scrolls_.end()) {
        scrolls_[std::string(name)].top = opens_at.top;
    }
    // A list that was never drawn is as long as it has to be to open there.
    Box list = begin_scroll(
        name, view, known == scrolls_.end() ? opens_at.top + view.h : known->second.content);
    list.h = endless;  // as long as what is drawn in it
    return list;
}

void Ui::end_scroll(float content_height) {
    require(scroll_ != nullptr, "a list that ends has begun");
    is_laid_out_ = is_laid_out_ && std::abs(content_height - scroll_->content) <= half_pixel;
    scroll_->content = content_height;
    end_scroll();
}

void Ui::end_scroll() {
    require(scroll_ != nullptr, "a list that ends has begun");
    draw_scroll_bar();
    ImGui::PopClipRect();
    scroll_ = nullptr;
}

void Ui::to_be_seen(Box box) {
    require(scroll_ != nullptr, "what is to be seen lies in a list");
    box.y += scroll_->top - scroll_->view.y;
    scroll_->wanted.push_back(box);
}

std::size_t Ui::left_below(std::string_view list) const {
    const auto found = scrolls_.find(list);
    if (found == scrolls_.end()) {
        return 0;
    }
    const Scroll& one = found->second;
    const float end = one.top + one.view.h + mm(1);
    return static_cast<std::size_t>(std::count_if(one.wanted.begin(), one.wanted.end(),
                                                  [end](Box box) { return box.bottom() > end; }));
}

void Ui::go_on_below(std::string_view list) {
    const auto found = scrolls_.find(list);
    if (found == scrolls_.end()) {
        return;
    }
    Scroll& one = found->second;
    const float end = one.top + one.view.h;
    float next = one.top + one.view.h;
    for (const Box& box : one.wanted) {
        next = box.bottom() > end + mm(1) ? std::min(next, box.y - mm(2)) : next;
    }
    // Of what is higher than the list shows, the next part.
    one.top = next > one.top + mm(1) ? next : end;
}

void Ui::lists_of(std::string_view job) {
    if (job_ != job) {
        scrolls_.clear();
        job_ = job;
    }
}

/// Shows which part of the list is in view, and an arrow head where more lies above or below.
void Ui::draw_scroll_bar() const {
    const Box view = scroll_->view;
    const float more = scroll_->content - view.h;
    if (more <= half_pixel || view.h < mm(target_min)) {
        return;
    }
    const float head = mm(1.2F);
    const float x = view.right() - head;
    const Box track{x - mm(0.25F), view.y + 2 * head, mm(0.5F), view.h - 4 * head};
    const float length = std::max(head, track.h * view.h / scroll_->content);
    const float at = track.y + (track.h - length) * std::clamp(scroll_->top / more, 0.0F, 1.0F);
    const Colour colour = palette_->ink;
    ink()->AddRectFilled({track.x, at}, {track.right(), at + length}, colour);
    if (scroll_->top > half_pixel) {
        ink()->AddTriangleFilled({x, view.y}, {x - head, view.y + 1.4F * head},
                                 {x + head, view.y + 1.4F * head}, colour);
    }
    if (scroll_->top < more - half_pixel) {
        const float low = view.bottom();
        ink()->AddTriangleFilled({x, low}, {x - head, low - 1.4F * head},
                                 {x + head, low - 1.4F * head}, colour);
    }
}

void Ui::draw_button(std::string_view name, std::string_view label, Box box, Look look,
                     Size largest) const {
    const Palette& p = *palette_;
    const bool down = look != Look::off && pressed(name);
    const bool refused = look == Look::key && key_refusal_left() > 0 && keys_.refused == name;
    const bool waits = look == Look::primary && wait_left() > 0;
    Colour ground = p.key;
    Colour words = p.ink;
    if ((look == Look::primary && !waits) || (down && look == Look::chosen)) {
        ground = p.ink;
        words = p.paper;
    }
    if (look == Look::chosen ? !down : down && !waits) {
        ground = p.chalk;
        words = p.chalk_ink;
    }
    const float round = mm(1.5F);
    const bool outlined = look != Look::quiet && look != Look::off;
    if (!shows(box)) {
        return;
    }
    if (outlined || down) {
        ink()->AddRectFilled(top_left(box), bottom_right(box), ground, round);
    }
    if (look == Look::off) {
        words = p.soft;
        ink()->AddRect(top_left(box), bottom_right(box), p.hairline, round, 0, mm(0.2F));
    } else if (outlined) {
        const float thick = mm(look == Look::key || look == Look::chosen ? 0.34F : 0.5F);
        ink()->AddRect(top_left(box), bottom_right(box), p.ink, round, 0, thick);
    }
    if (refused) {  // struck through
        ink()->AddLine({box.x + round, box.bottom() - round}, {box.right() - round, box.y + round},
                       p.ink, mm(0.7F));
    }
    const bool large = look == Look::primary || std::min(box.w, box.h) >= mm(key_min) - 1;
    draw_label(label, box, large ? largest : std::min(largest, Size::bold), words);
}

}  // namespace hemline
