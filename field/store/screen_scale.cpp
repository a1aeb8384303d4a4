#include "field/store/screen_scale.h"

#include <cstdio>
#include <string>
#include <string_view>

#include "engine/words/result.h"
#include "field/store/disk_problem.h"
#include "field/store/folders.h"
#include "field/store/job_folder.h"
#include "field/store/listing.h"
#include "field/store/settings_file.h"

namespace hemline {

namespace {

namespace fs = std::filesystem;

constexpr std::size_t crew_words_most = 100;

/// Takes in a line; false for a line that is not known.
bool take_line(const std::string& line, ScreenScale& scale) {
    if (line == "left hand" || line == "right hand") {
        scale.left_hand = line == "left hand";
        return true;
    }
    constexpr std::string_view language = "language ";
    if (line == "spanish" || line.rfind(language, 0) == 0) {
        scale.language = line == "spanish" ? "es" : line.substr(language.size());
        return !scale.language.empty();
    }
    if (line == "both units") {
        scale.both_units = true;
        return true;
    }
    if (line == "night" || line == "day") {
        scale.night = line == "night";
        return true;
    }
    constexpr std::string_view word = "word ";
    const std::size_t is = line.find('=');
    if (line.rfind(word, 0) == 0 && is != line.npos) {
        scale.crew_words[line.substr(word.size(), is - word.size())] = line.substr(is + 1);
        return scale.crew_words.size() <= crew_words_most;
    }
    if (line == "later") {
        scale.put_off = true;
        return true;
    }
    if (const std::optional<Person> person = person_of(line)) {
        hold(scale.people, *person);
        return true;
    }
    float px = 0;
    int end = 0;
    const bool read = std::sscanf(line.c_str(), "%12f px/mm%n", &px, &end) == 1 &&
                      static_cast<std::size_t>(end) == line.size() && end > 0;
    if (!read || !(px >= px_per_mm_least && px <= px_per_mm_most)) {
        return false;
    }
    scale.px_per_mm = px;
    return true;
}

std::optional<ScreenScale> parse(const std::string& text) {
    ScreenScale scale;
    std::size_t from = 0;
    while (from < text.size()) {
        const std::size_t end = text.find('\n', from);
        if (end == std::string::npos || !take_line(text.substr(from, end - from), scale)) {
            return std::nullopt;
        }
        from = end + 1;
    }
    return text.empty() ? std::nullopt : std::optional(scale);
}

std::string print(const ScreenScale& scale) {
    std::string text;
    if (scale.px_per_mm) {
        char line[32];
        std::snprintf(line, sizeof line, "%.4f px/mm\n", static_cast<double>(*scale.px_per_mm));
        text = line;
    } else if (scale.put_off) {
        text = "later\n";
    }
    text += scale.left_hand ? "left hand\n" : "right hand\n";
    text += "language " + scale.language + "\n";
    text += scale.both_units ? "both units\n" : "";
    text += scale.night ? (*scale.night ? "night\n" : "day\n") : "";
    for (const auto& [thing, word] : scale.crew_words) {
        text += "word " + thing + "=" + word + "\n";
    }
    for (const Person& person : scale.people) {
        if (const std::string line = print_person(person); person_of(line)) {
            text += line + "\n";
        }
    }
    return text;
}

}  // namespace

Result<ScreenScale> read_screen_scale() {
    const Result<fs::path> home = hemline_folder();
    if (!home) {
        return home.problem();
    }
    const fs::path file = *home / "screen";
    const Result<There> there = what_is(file);
    if (!there) {
        return there.problem();
    }
    if (*there == There::nothing) {
        return ScreenScale{};
    }
    const Result<Bytes> bytes = read_file(file);
    if (!bytes) {
        return bytes.problem();
    }
    const std::optional<ScreenScale> scale = parse(std::string(bytes->begin(), bytes->end()));
    if (!scale) {
        return Problem{say("{1} does not say the screen's scale, like \"5.9 px/mm\".", shown(file)),
                       say("Measure it again on the jobs screen: Screen size.")};
    }
    return *scale;
}

std::optional<Problem> keep_screen_scale(Disk& disk, const ScreenScale& scale) {
    return write_settings(disk, "screen", print(scale), read_screen_scale().ok());
}

}  // namespace hemline
