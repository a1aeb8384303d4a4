#include "field/app/left_off.h"

#include <charconv>
#include <map>
#include <sstream>

namespace hemline {

namespace {

constexpr std::int64_t format = 1;  ///< raised when numbers of Place, TrimRole or a notation change
constexpr std::size_t keyed_most = 64;

using Said = std::map<std::string, std::string>;

std::optional<std::int64_t> number_in(const Said& said, const char* key) {
    const auto found = said.find(key);
    std::int64_t number = 0;
    if (found == said.end()) {
        return std::nullopt;
    }
    const char* const end = found->second.data() + found->second.size();
    const auto [stop, error] = std::from_chars(found->second.data(), end, number);
    return error == std::errc() && stop == end ? std::optional(number) : std::nullopt;
}

std::optional<int> number_in(const Said& said, const char* key, int most) {
    const std::optional<std::int64_t> number = number_in(said, key);
    return number && *number >= 0 && *number <= most ? std::optional(static_cast<int>(*number))
                                                     : std::nullopt;
}

std::string text_in(const Said& said, const char* key) {
    const auto found = said.find(key);
    return found == said.end() || found->second.size() > keyed_most ? "" : found->second;
}

/// Within what a screen can show: a text from elsewhere is no place to go to.
template <typename Kind>
bool take(const Said& said, const char* key, Kind last, Kind& into) {
    const std::optional<int> number = number_in(said, key, static_cast<int>(last));
    into = static_cast<Kind>(number.value_or(0));
    return number.has_value();
}

LengthDraft length_in(const Said& said) {
    LengthDraft length;
    length.feet = text_in(said, "feet");
    length.inches = number_in(said, "inches", 11);
    length.sixteenths = number_in(said, "sixteenths", 15);
    length.millimetres = text_in(said, "millimetres");
    length.field = number_in(said, "field", 2).value_or(0);
    return length;
}

class Lines {
  public:
    void put(const char* key, const std::string& text) {
        if (!text.empty() && text.find('\n') == std::string::npos) {
            lines_ += std::string(key) + " " + text + "\n";
        }
    }
    void put(const char* key, std::int64_t number) { put(key, std::to_string(number)); }
    void put(const char* key, std::optional<int> number) {
        if (number) {
            put(key, std::int64_t{*number});
        }
    }
    [[nodiscard]] const std::string& all() const { return lines_; }

  private:
    std::string lines_;
};

}  // namespace

std::string print_left_off(const LeftOff& left) {
    const LengthDraft& length = left.drafts.length;
    Lines lines;
    lines.put("format", format);
    lines.put("job", left.job);
    lines.put("wall_ms", left.wall_ms);
    lines.put("place", static_cast<std::int64_t>(left.where.place));
    lines.put("edge", left.where.edge);
    lines.put("role", static_cast<std::int64_t>(left.where.role));
    lines.put("piece", std::int64_t{left.where.piece});
    lines.put("reading_of", static_cast<std::int64_t>(left.where.reading_of));
    lines.put("stick", std::int64_t{left.where.stick});
    lines.put("feet", length.feet);
    lines.put("inches", length.inches);
    lines.put("sixteenths", length.sixteenths);
    lines.put("millimetres", length.millimetres);
    lines.put("field", std::int64_t{length.field});
    lines.put("field_opened", std::int64_t{left.drafts.field_opened});
    lines.put("keys_out", std::int64_t{left.drafts.keys_out});
    lines.put("pitch", left.drafts.pitch_number);
    lines.put("notation", static_cast<std::int64_t>(left.drafts.pitch_notation));
    lines.put("typed", left.drafts.typed);
    lines.put("count", left.drafts.count);
    lines.put("rule", left.drafts.rule);
    return lines.all();
}

std::optional<LeftOff> left_off_in(const std::string& text) {
    constexpr int pieces_most = 1'000'000;
    Said said;
    std::istringstream lines(text);
    for (std::string line; std::getline(lines, line);) {
        const std::size_t space = line.find(' ');
        if (space != std::string::npos) {
            said[line.substr(0, space)] = line.substr(space + 1);
        }
    }
    LeftOff left;
    if (number_in(said, "format") != format ||
        !take(said, "place", Place::edge_lap, left.where.place) ||
        !take(said, "role", TrimRole::cleat, left.where.role) ||
        !take(said, "reading_of", ReadingOf::remainder, left.where.reading_of) ||
        !take(said, "notation", SlopeNotation::percent, left.drafts.pitch_notation)) {
        return std::nullopt;
    }
    left.job = said["job"];
    left.wall_ms = number_in(said, "wall_ms").value_or(0);
    left.where.edge = said["edge"];
    left.where.piece = number_in(said, "piece", pieces_most).value_or(0);
    left.where.stick = number_in(said, "stick", pieces_most).value_or(0);
    left.drafts.length = length_in(said);
    left.drafts.field_opened = number_in(said, "field_opened") == 1;
    left.drafts.keys_out = number_in(said, "keys_out") == 1;
    left.drafts.pitch_number = text_in(said, "pitch");
    left.drafts.typed = text_in(said, "typed");
    left.drafts.count = text_in(said, "count");
    left.drafts.rule = text_in(said, "rule");
    return left;
}

}  // namespace hemline
