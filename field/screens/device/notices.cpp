// What the program is made of: the parts written by others, each with its notice a touch away.
#include <algorithm>
#include <sstream>

#include "engine/words/program_version.h"
#include "field/screens/page/frame.h"
#include "field/screens/screens.h"
#include "field/touch/box.h"

namespace hemline {

namespace {

constexpr float row_mm = 11;

Text program_name(const std::string& word) {
    if (word == "tablet") {
        return say("the tablet's program");
    }
    if (word == "desk") {
        return say("the desk's program");
    }
    return word == "cli" ? say("the command line") : say("the browser's program");
}

Text program_names(const std::string& words) {
    std::vector<Text> names;
    std::istringstream all(words);
    for (std::string word; all >> word;) {
        names.push_back(program_name(word));
    }
    return joined(names, ", ");
}

/// Names of licenses are the same in every language; a part without a license is described in
/// words.
Text license_words(const std::string& license) {
    std::vector<Text> names;
    for (std::size_t at = 0; at <= license.size();) {
        const std::size_t end = std::min(license.find("; ", at), license.size());
        const std::string one = license.substr(at, end - at);
        names.push_back(one == "notice alone"    ? say("notice alone")
                        : one == "public domain" ? say("public domain")
                                                 : Text(one));
        at = end + 2;
    }
    return joined(names, "; ");
}

Text own_words() {
    return say(
        "Hemline's own license is its owner's to choose; none is given yet. These parts of "
        "others are in it, or loaded by it:");
}

Wished draw_parts(Ui& ui, const State& state, NoticesDraft& draft) {
    const Frame frame = open_frame(ui, state, say("What it is made of"), {{"leave", say("Back")}});
    Wished wish = frame.wish;
    Box body = ui.begin_scroll("parts", frame.body);
    const float top = body.y;
    take_top(body, ui.paragraph(body.x, body.y, body.w, words_of(program_version()), Size::bold) +
                       ui.mm(gap_mm));
    take_top(body, ui.paragraph(body.x, body.y, body.w, own_words()) + ui.mm(gap_mm));
    const auto& parts = state.assets->notices;
    for (std::size_t i = 0; i < parts.size(); ++i) {
        const Text label(parts[i].part + ' ' + parts[i].version);
        if (ui.button("part " + parts[i].part, label, take_top(body, ui.mm(row_mm)))) {
            draft.part = i;
        }
        take_top(body, ui.mm(1));
        take_top(body, ui.paragraph(body.x, body.y, body.w, license_words(parts[i].license),
                                    Size::small, ui.colours().soft) +
                           ui.mm(gap_mm));
    }
    ui.end_scroll(body.y - top);
    if (frame.tapped == "leave") {
        wish = Go{{Screen::jobs, {}}};
    }
    return wish;
}

void draw_notice(Ui& ui, const Notice& notice, Box& body) {
    const auto put = [&](const Text& words, Size size) {
        if (!words.empty()) {
            take_top(body, ui.paragraph(body.x, body.y, body.w, words, size) + ui.mm(2));
        }
    };
    put(Text(notice.part + ' ' + notice.version),
        Size::bold);  // shown whole, because a long title is cut
    put(license_words(notice.license), Size::body);
    if (!notice.inside.empty()) {
        put(say("Inside: {1}", program_names(notice.inside)), Size::body);
    }
    if (!notice.beside.empty()) {
        put(say("Loaded by: {1}", program_names(notice.beside)), Size::body);
    }
    put(notice.note.empty() ? Text() : say(notice.note), Size::body);
    for (const std::string& paragraph : paragraphs_of(notice.text)) {
        put(Text(paragraph), Size::small);
    }
}

}  // namespace

Wished draw_notices(Ui& ui, const State& state, Drafts& drafts) {
    NoticesDraft& draft = drafts.notices;
    const auto& parts = state.assets->notices;
    if (!draft.part || *draft.part >= parts.size()) {
        return draw_parts(ui, state, draft);
    }
    const Notice& notice = parts[*draft.part];
    const Frame frame = open_frame(ui, state, say("What it is made of"),
                                   {way_back({"parts", say("All parts"), Look::primary})});
    Box body = ui.begin_scroll("notice " + notice.part, frame.body);
    const float top = body.y;
    draw_notice(ui, notice, body);
    ui.end_scroll(body.y - top);
    if (frame.tapped == "parts") {
        draft.part.reset();
    }
    return frame.wish;
}

}  // namespace hemline
