// What screens draw with: text, figures, and everything that can be tapped.
#pragma once

#include <functional>
#include <map>
#include <memory>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <vector>

#include "engine/measure/length_text.h"
#include "engine/words/text.h"
#include "field/theme/theme.h"
#include "field/touch/box.h"
#include "field/touch/keyboard.h"
#include "field/touch/touch_queue.h"
#include "field/words/phrases.h"

struct ImDrawList;
struct ImFont;

namespace hemline {

/// Least side of a target, least height of a primary target, and least side of a key, in mm.
constexpr float target_min = 10, primary_min = 14, key_min = 19;

/// A tappable place, by a name that is unique on its screen and stable between versions.
struct Target {
    std::string name;
    Box box;
    std::string label = {};  ///< its words
    bool chosen = false;     ///< it is shown as selected
};

enum class Size { small, body, bold, title, figure, fraction };  // by height, then weight

/// Words on the screen, and where: for screen readers and for tests.
struct Words {
    std::string words;
    Box box;
    Size size = Size::body;
    bool warning = false;  ///< read out at once
};

enum class Look {
    plain,    ///< white, ink outline
    primary,  ///< the main action: ink ground, paper text, bottom right
    key,      ///< keypad key
    chosen,   ///< chalk ground: what is selected
    quiet,    ///< text only, no outline
    off,      ///< shown, cannot be used now; not a target
};
/// The hand whose thumb works the screen: keys and the primary action are at its side.
enum class Hand { right, left };
enum class Align { left, centre, right };

/// How far down a list is opened, in pixels.
struct OpensAt {
    float top = 0;
};

class Ui {
  public:
    Ui(const Palette& palette, const Fonts& fonts, float px_per_mm);
    void set_palette(const Palette& palette) { palette_ = &palette; }

    /// Opens a frame's page over the whole window, which the shell has cleared to the color of
    /// paper (cheaper than drawing a box); `touch` may be null (mouse only).
    void begin_page(const TouchQueue* touch);
    void end_page();
    /// The least page, in mm: a 7 in screen.
    static constexpr float page_long_mm = 150, page_short_mm = 90;
    /// The window, but never less than that: a smaller window shows a part.
    [[nodiscard]] Box page() const { return page_; }
    [[nodiscard]] bool portrait() const { return page_.h > page_.w; }

    /// The language of everything drawn from now on, its crew's words, which outlive this, and the
    /// tape marks of its reader.
    void speak(const Phrases& phrases, Marks marks, const CrewWords& words) {
        phrases_ = &phrases;
        marks_ = marks;
        crew_words_ = &words;
    }
    /// The text as it is drawn.
    [[nodiscard]] std::string in_words(const Text& text) const;

    void set_hand(Hand hand) { hand_ = hand; }
    [[nodiscard]] Hand hand() const { return hand_; }

    [[nodiscard]] float mm(float millimetres) const { return millimetres * px_per_mm_; }
    [[nodiscard]] const Palette& colours() const { return *palette_; }
    /// Draw list, clipped to the scroll area when inside one. A page holds no more points than its
    /// indices can count; what is past that does not show, and is a fault.
    [[nodiscard]] ImDrawList* ink() const;
    /// Whether any of the box is in view: shapes out of view need not be drawn. Functions that draw
    /// words check this themselves.
    [[nodiscard]] bool shows(Box box) const;

    /// A tappable box with a centered label (two lines at '\n'); a label too wide for its box is
    /// broken at a space, then set smaller, then cut short. True once, when tapped. A side under 10
    /// mm (primary: height under 14 mm; key: 19 mm) is a fault, and the box can be tapped as if it
    /// were that large. The same key within 80 ms is refused, and shown as refused.
    bool button(std::string_view name, const Text& label, Box box, Look look = Look::plain,
                Size largest = Size::title);
    /// The largest letters in which every one of these labels fits a box of that size, so that the
    /// buttons of a row look alike.
    [[nodiscard]] Size label_size(const std::vector<Text>& labels, Box box) const;
    /// A tappable box without drawing: the caller draws. `spoken`: what it is, for screen readers.
    bool area(std::string_view name, Box box, const Text& spoken = {});
    /// Says what the target of that name is, where its button has no letters.
    void speak(std::string_view name, const Text& spoken);
    /// Marks the words drawn last as a warning. One that `asks` is to be read before the main
    /// action: for 0.7 s after it first shows, that action is hollow and cannot be tapped.
    void mark_warning(bool asks = true);
    /// Seconds until the main action can be tapped; 0: it can.
    [[nodiscard]] double wait_left() const;
    /// The least width of a box that shows the whole label, in small letters on two lines.
    [[nodiscard]] float label_width(const Text& label) const;
    /// True while the named target is pressed; ask after its area(): feedback within the frame.
    [[nodiscard]] bool pressed(std::string_view name) const;

    /// A line of text, `y` its top; returns its width. `align` about x.
    float text(float x, float y, const Text& words, Size size = Size::body,
               Align align = Align::left);
    float text(float x, float y, const Text& words, Size size, Align align, Colour colour);
    /// A line of text with its middle at (x, y), running along a direction of length 1.
    void text_along(float x, float y, float along_x, float along_y, const Text& words, Size size,
                    Colour colour);
    /// Lines broken at spaces to `w`; returns the height used.
    float paragraph(float x, float y, float w, const Text& words, Size size = Size::body);
    float paragraph(float x, float y, float w, const Text& words, Size size, Colour colour);
    /// The words, or as many of them as fit in `w` and "…".
    [[nodiscard]] Text shortened(const Text& words, Size size, float w) const;
    [[nodiscard]] float text_width(const Text& words, Size size) const;
    [[nodiscard]] float paragraph_height(float w, const Text& words, Size size) const;
    [[nodiscard]] float line_height(Size size) const;

    /// A length as large figures with a stacked fraction and spaced units, `y` the top of the
    /// fraction; returns its width. Metric prints whole millimeters. `size`: figure, title or bold.
    float figure(float x, float y, Length length, Marks marks, Size size = Size::figure,
                 Align align = Align::left);
    float figure(float x, float y, Length length, Marks marks, Size size, Align align,
                 Colour colour);
    [[nodiscard]] float figure_width(Length length, Marks marks, Size size) const;
    /// Metric has no fraction, so small metric figures are lower.
    [[nodiscard]] float figure_height(Size size = Size::figure,
                                      Marks marks = Marks::sixteenth) const;
    /// A stacked fraction centered in a box (keypad keys).
    void fraction(Box box, int numerator, int denominator, Colour colour);
    /// The sign for erasing the last digit, which B612 lacks, centered in a box.
    void backspace_sign(Box box, Colour colour);

    /// By how many pixels a finger that touched down on the box moved in this frame.
    struct Moved {
        float x = 0, y = 0;
    };
    [[nodiscard]] Moved dragged(Box box) const;

    /// A list that scrolls under the finger anywhere on it. Returns the moving box to draw in. A
    /// target of which less than 10 mm shows cannot be tapped until it is scrolled into view.
    /// Where there is more than shows, a bar at its right edge says so; the box stays clear of it.
    Box begin_scroll(std::string_view name, Box view, float content_height);
    void end_scroll();
    /// The same for content whose height is only known once drawn: the first frame assumes that it
    /// fits. The box has no lower end.
    Box begin_scroll(std::string_view name, Box view, OpensAt opens_at = {});
    void end_scroll(float content_height);
    /// Whether every list is as long as it was taken to be. If not, the next frame lies otherwise,
    /// and a touch would miss what this one shows.
    [[nodiscard]] bool is_laid_out() const { return is_laid_out_; }
    /// Within a list: what is to be seen before the screen's main action counts.
    void to_be_seen(Box box);
    /// How many such boxes lie below what shows of that list, as it was drawn last.
    [[nodiscard]] std::size_t left_below(std::string_view list) const;
    /// Scrolls that list on, to the first of them.
    void go_on_below(std::string_view list);
    /// Lists of another job open at their top.
    void lists_of(std::string_view job);

    [[nodiscard]] const std::vector<Target>& targets() const { return targets_; }
    /// The target that was tapped in this frame; empty: none.
    [[nodiscard]] const std::string& tapped() const { return tapped_; }
    /// Lines, paragraphs and figures of this frame, labels left out.
    [[nodiscard]] const std::vector<Words>& words() const { return words_; }
    /// What is wrong with this frame's targets, a line each: for tests. The program goes on anyway.
    [[nodiscard]] const std::vector<std::string>& faults() const { return faults_; }
    [[nodiscard]] Keyboard& keyboard() { return keyboard_; }
    [[nodiscard]] const Keyboard& keyboard() const { return keyboard_; }
    /// The target that the keyboard's focus is on, and around which it is drawn; or none.
    [[nodiscard]] std::optional<Target> focus() const;
    /// Seconds for which a key is still shown as refused, or the main action as waiting; 0 for
    /// none; then a frame is wanted.
    [[nodiscard]] double refusal_left() const;

  private:
    struct Scroll {
        Box view;
        float content = 0, top = 0;    ///< height of the list in pixels; pixels above the view
        bool drawn = false;            ///< in this frame
        std::vector<Box> wanted = {};  ///< what is to be seen, from the list's top
    };
    struct KeyTaps {
        std::string name, refused;
        bool bounced = false;                             ///< the touch under way came too soon
        double down = -1, lift = -1, refused_until = -1;  ///< seconds of ImGui::GetTime()
    };
    bool tap(std::string_view name, Box box, float w_min, float h_min, std::string_view label = {},
             bool primary = false);
    bool press_by_key(std::string_view name, Box shown);
    void do_keys();
    void scroll_to(const Focusable& one);
    void scroll_by(Key key);
    void draw_focus() const;
    void note(std::string_view words, Box box, Size size);
    void draw_scroll_bar() const;
    bool take_key(std::string_view name, bool tapped);
    bool take_primary(std::string_view name, bool tapped);
    [[nodiscard]] double key_refusal_left() const;
    struct Label {
        Size size = Size::small;
        std::vector<std::string_view> lines;
        bool fits = false;
    };
    [[nodiscard]] Label fit_label(std::string_view label, Box box, Size largest) const;
    void draw_button(std::string_view name, std::string_view label, Box box, Look look,
                     Size largest) const;
    [[nodiscard]] std::string cut_short(std::string_view words, Size size, float w) const;
    void draw_label(std::string_view label, Box box, Size largest, Colour colour) const;
    struct FigureLetters;
    [[nodiscard]] FigureLetters letters_of(Size size) const;
    void draw_fraction(const FigureLetters& letters, float mid_x, float mid_y, int numerator,
                       int denominator, Colour colour) const;
    [[nodiscard]] float fraction_width(const FigureLetters& letters, int numerator,
                                       int denominator) const;
    [[nodiscard]] ImFont* font_of(Size size) const;

    const Phrases* phrases_;
    const CrewWords* crew_words_;
    Marks marks_ = Marks::sixteenth;
    const Palette* palette_;
    const Fonts* fonts_;
    float px_per_mm_;
    Hand hand_ = Hand::right;
    Box page_;
    const TouchQueue* touch_ = nullptr;
    std::vector<Target> targets_;
    std::string tapped_;
    std::vector<Words> words_;
    std::vector<std::string> faults_;
    std::map<std::string, Scroll, std::less<>> scrolls_;  ///< by the list's name
    Scroll* scroll_ = nullptr;                            ///< the list being drawn in
    bool is_laid_out_ = true;
    std::string job_;  ///< whose lists they are
    KeyTaps keys_;
    std::set<std::string, std::less<>> asked_, asked_before_;  ///< warnings of this frame, the last
    double asked_at_ = -1e9;                                   ///< when a new one showed
    bool held_back_ = false;  ///< the main action was touched while it waited
    Keyboard keyboard_;
    mutable std::shared_ptr<ImDrawList> past_full_;  ///< what a full page has no room for
};

}  // namespace hemline
