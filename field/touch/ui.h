// What screens draw with: text, figures and the only things that can be tapped.
#pragma once

#include <functional>
#include <map>
#include <memory>
#include <string>
#include <string_view>
#include <vector>

#include "engine/measure/length_text.h"
#include "engine/words/text.h"
#include "field/theme/theme.h"
#include "field/touch/box.h"
#include "field/touch/touch_queue.h"
#include "field/words/phrases.h"

struct ImDrawList;
struct ImFont;

namespace hemline {

/// Least sides of a target, of a primary one's height, and of a key, in mm.
constexpr float target_min = 10, primary_min = 14, key_min = 19;

/// A tappable place, by a name that is unique on its screen and stable between versions.
struct Target {
    std::string name;
    Box box;
    std::string label = {};  ///< what it says
    bool chosen = false;     ///< it is shown as selected
};

enum class Size { small, body, bold, title, figure, fraction };  // by height, then weight

/// Words on the screen, and where: for those who hear them, and for tests.
struct Words {
    std::string words;
    Box box;
    Size size = Size::body;
    bool warning = false;  ///< to be heard at once
};

enum class Look {
    plain,    ///< white, ink outline
    primary,  ///< the one thing to do: ink ground, paper text, bottom right
    key,      ///< keypad key
    chosen,   ///< chalk ground: what is selected
    quiet,    ///< text only, no outline
    off,      ///< shown, cannot be used now; not a target
};
/// The hand whose thumb works the screen: keys and the primary action stand at its side.
enum class Hand { right, left };
enum class Align { left, centre, right };

class Ui {
  public:
    Ui(const Palette& palette, const Fonts& fonts, float px_per_mm);
    void set_palette(const Palette& palette) { palette_ = &palette; }

    /// Opens a frame's page over the whole window, which the shell has cleared to the paper's
    /// colour (cheaper than a box as large); `touch` may be null (mouse only).
    void begin_page(const TouchQueue* touch);
    void end_page();
    /// The least page, in mm: a 7 in screen.
    static constexpr float page_long_mm = 150, page_short_mm = 90;
    /// The window, but never less than that: a smaller one shows a part.
    [[nodiscard]] Box page() const { return page_; }
    [[nodiscard]] bool portrait() const { return page_.h > page_.w; }

    /// The language of all that is drawn from now on, and the marks that its reader works on.
    void speak(const Phrases& phrases, Marks marks) {
        phrases_ = &phrases;
        marks_ = marks;
    }
    /// The text as it is drawn.
    [[nodiscard]] std::string in_words(const Text& text) const;

    void set_hand(Hand hand) { hand_ = hand; }
    [[nodiscard]] Hand hand() const { return hand_; }

    [[nodiscard]] float mm(float millimetres) const { return millimetres * px_per_mm_; }
    [[nodiscard]] const Palette& colours() const { return *palette_; }
    /// Draw list, clipped to the scroll area when inside one. A page holds no more than a list of
    /// its points can number: past that nothing shows, and it is a fault.
    [[nodiscard]] ImDrawList* ink() const;
    /// Whether any of the box is in view: shapes that are not need no ink. Words see to it
    /// themselves.
    [[nodiscard]] bool shows(Box box) const;

    /// A tappable box with a centred label (two lines at '\n'); a label too wide for its box is
    /// broken at a space, then set smaller, then cut short. True once, when tapped. Less than 10 mm
    /// a side (primary: 14 mm high; key: 19 mm) is a fault, and taps as if it were as large. The
    /// same key within 80 ms is refused, and shown so.
    bool button(std::string_view name, const Text& label, Box box, Look look = Look::plain,
                Size largest = Size::title);
    /// The largest letters in which each of these labels fits a box of that size: for buttons of a
    /// row, which look alike.
    [[nodiscard]] Size label_size(const std::vector<Text>& labels, Box box) const;
    /// A tappable box without drawing: the caller draws. `spoken`: what it is, for those who hear.
    bool area(std::string_view name, Box box, const Text& spoken = {});
    /// What the target of that name is, where its button has no letters of its own.
    void speak(std::string_view name, const Text& spoken);
    /// The words that were drawn last are a warning.
    void mark_warning();
    /// The least width of a box that shows the whole label, in small letters on two lines.
    [[nodiscard]] float label_width(const Text& label) const;
    /// True while the named target is pressed; ask after its area(): feedback within the frame.
    [[nodiscard]] bool pressed(std::string_view name) const;

    /// One line, `y` its top; returns its width. `align` about x.
    float text(float x, float y, const Text& words, Size size = Size::body,
               Align align = Align::left);
    float text(float x, float y, const Text& words, Size size, Align align, Colour colour);
    /// Lines broken at spaces to `w`; returns the height used.
    float paragraph(float x, float y, float w, const Text& words, Size size = Size::body);
    float paragraph(float x, float y, float w, const Text& words, Size size, Colour colour);
    /// The words, or so many of them and "…" as `w` holds.
    [[nodiscard]] Text shortened(const Text& words, Size size, float w) const;
    [[nodiscard]] float text_width(const Text& words, Size size) const;
    [[nodiscard]] float paragraph_height(float w, const Text& words, Size size) const;
    [[nodiscard]] float line_height(Size size) const;

    /// A length as large figures with a stacked fraction and spaced units, `y` the top of the
    /// fraction; returns its width. Metric prints whole millimetres. `size`: figure, title or bold.
    float figure(float x, float y, Length length, Marks marks, Size size = Size::figure,
                 Align align = Align::left);
    float figure(float x, float y, Length length, Marks marks, Size size, Align align,
                 Colour colour);
    [[nodiscard]] float figure_width(Length length, Marks marks, Size size) const;
    /// Metric has no fraction, so small metric figures are lower.
    [[nodiscard]] float figure_height(Size size = Size::figure,
                                      Marks marks = Marks::sixteenth) const;
    /// A stacked fraction centred in a box (keypad keys).
    void fraction(Box box, int numerator, int denominator, Colour colour);
    /// The sign of "take the last digit back", which B612 has no letter for, centred in a box.
    void backspace_sign(Box box, Colour colour);

    /// By how many pixels a finger that fell on the box moved it in this frame.
    struct Moved {
        float x = 0, y = 0;
    };
    [[nodiscard]] Moved dragged(Box box) const;

    /// A list that scrolls under the finger anywhere on it. Returns the moving box to draw in. A
    /// target of which less than 10 mm shows cannot be tapped until it is scrolled into view.
    /// Where there is more than shows, a bar at its right edge says so; the box stays clear of it.
    Box begin_scroll(std::string_view name, Box view, float content_height);
    void end_scroll();
    /// The same for what is measured while it is drawn: the first frame takes it to fit. The box
    /// has no end.
    Box begin_scroll(std::string_view name, Box view);
    void end_scroll(float content_height);

    [[nodiscard]] const std::vector<Target>& targets() const { return targets_; }
    /// The target that was tapped in this frame; empty: none.
    [[nodiscard]] const std::string& tapped() const { return tapped_; }
    /// Lines, paragraphs and figures of this frame, labels left out.
    [[nodiscard]] const std::vector<Words>& words() const { return words_; }
    /// What is wrong with this frame's targets, one line each: for tests; a crew goes on with them.
    [[nodiscard]] const std::vector<std::string>& faults() const { return faults_; }
    /// Text typed since the last frame on a keyboard or by a laser ("31-7-5/8\n").
    [[nodiscard]] const std::string& typed() const { return typed_; }
    void type(std::string_view text) { typed_ += text; }
    /// Seconds for which a refused key is still shown so, 0 for none: then a frame is wanted.
    [[nodiscard]] double refusal_left() const;

  private:
    struct Scroll {
        Box view;
        float content = 0, top = 0;  ///< pixels of the list; those above the view
    };
    struct KeyTaps {
        std::string name, refused;
        bool bounced = false;                             ///< the touch under way came too soon
        double down = -1, lift = -1, refused_until = -1;  ///< seconds of ImGui::GetTime()
    };
    bool tap(std::string_view name, Box box, float w_min, float h_min, std::string_view label = {});
    void note(std::string_view words, Box box, Size size);
    void draw_scroll_bar() const;
    bool take_key(std::string_view name, bool tapped);
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
    std::map<std::string, Scroll, std::less<>> scrolls_;  ///< a list keeps its place by its name
    Scroll* scroll_ = nullptr;                            ///< the one being drawn in
    KeyTaps keys_;
    std::string typed_;
    mutable std::shared_ptr<ImDrawList> past_full_;  ///< what a full page has no room for
};

}  // namespace hemline
