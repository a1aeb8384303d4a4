#include "field/app/left_off.h"

#include <charconv>
#include <map>
#include <sstream>

#include "engine/record/event_bytes.h"
#include "field/app/kept_drafts.h"
#include "field/screens/screens.h"

namespace hemline {

namespace {

constexpr std::int64_t format =
    1;  ///< raised when numbers of Screen, TrimRole or a notation change
constexpr std::size_t keyed_most = 64, line_most = 4096;
constexpr int pieces_most = 1'000'000;
constexpr auto screen_last = static_cast<Screen>(screens.size() - 1);

/// An edge as the journal writes it, so that no field of it is forgotten here.
std::string hex_of(const Edge& edge) {
    static constexpr char digits[] = "0123456789abcdef";
    Event event;
    event.id = {1, 1};
    event.fact = EdgeAdded{edge};
    std::string hex;
    for (const std::uint8_t byte : frame_of(event)) {
        hex += digits[byte >> 4U];
        hex += digits[byte & 15U];
    }
    return hex;
}

std::optional<Edge> edge_of_hex(const std::string& hex) {
    Bytes bytes;
    for (std::size_t i = 0; i + 1 < hex.size(); i += 2) {
        std::uint8_t byte = 0;
        std::from_chars(hex.data() + i, hex.data() + i + 2, byte, 16);
        bytes.push_back(byte);
    }
    const JournalRead read = read_journal(bytes);
    const auto* const added =
        read.events.size() == 1 ? std::get_if<EdgeAdded>(&read.events.front().fact) : nullptr;
    return added == nullptr ? std::nullopt : std::optional(added->edge);
}

/// Lines of a key and what it says; what is empty, or as usual, is not said.
class Printing {
  public:
    void operator()(const std::string& key, const std::string& text) {
        if (!text.empty() && text.find('\n') == std::string::npos) {
            lines_ += key + " " + text + "\n";
        }
    }
    void operator()(const std::string& key, bool is) { number(key, is ? 1 : 0); }
    void operator()(const std::string& key, int number_said, int, int) { number(key, number_said); }
    void operator()(const std::string& key, std::int64_t said, int, int) { number(key, said); }
    void operator()(const std::string& key, std::int64_t said) { number(key, said); }
    void operator()(const std::string& key, std::optional<int> said, int) {
        if (said) {
            number(key, *said);
        }
    }
    void operator()(const std::string& key, std::optional<std::int64_t> said) {
        if (said) {
            number(key, *said);
        }
    }
    template <class Kind>
    void operator()(const std::string& key, Kind kind, Kind) {
        number(key, static_cast<std::int64_t>(kind));
    }
    template <class Kind>
    void operator()(const std::string& key, std::optional<Kind> kind, Kind) {
        number(key, kind ? static_cast<std::int64_t>(*kind) : -1);
    }
    void operator()(const std::string& key, std::optional<EventId> id) {
        (*this)(key, id ? print_event_id(*id) : std::string());
    }
    void operator()(const std::string& key, const Edge& edge) { (*this)(key, hex_of(edge)); }
    void operator()(const std::string& key, const std::vector<TiltSample>& samples) {
        std::ostringstream said;
        for (const TiltSample& sample : samples) {
            said << sample.beta << ' ' << sample.gamma << ' ';
        }
        (*this)(key, said.str());
    }
    [[nodiscard]] const std::string& lines() const { return lines_; }

  private:
    void number(const std::string& key, std::int64_t said) { (*this)(key, std::to_string(said)); }
    std::string lines_;
};

/// A text from elsewhere is no place to go to: what is not within its bounds is as not said.
class Reading {
  public:
    explicit Reading(const std::string& text) {
        std::istringstream lines(text);
        for (std::string line; std::getline(lines, line);) {
            const std::size_t space = line.find(' ');
            if (space != std::string::npos && line.size() <= line_most) {
                said_[line.substr(0, space)] = line.substr(space + 1);
            }
        }
    }
    void operator()(const std::string& key, std::string& text) {
        const std::string& said = said_[key];
        text = said.size() > keyed_most ? "" : said;
    }
    void operator()(const std::string& key, bool& is) {
        is = number(key).value_or(is ? 1 : 0) == 1;
    }
    void operator()(const std::string& key, int& into, int least, int most) {
        into = static_cast<int>(within(key, least, most).value_or(into));
    }
    void operator()(const std::string& key, std::int64_t& into, int least, int most) {
        into = within(key, least, most).value_or(into);
    }
    void operator()(const std::string& key, std::int64_t& into) { into = number(key).value_or(0); }
    void operator()(const std::string& key, std::optional<int>& into, int most) {
        const std::optional<std::int64_t> said = within(key, 0, most);
        into = said ? std::optional(static_cast<int>(*said)) : std::nullopt;
    }
    void operator()(const std::string& key, std::optional<std::int64_t>& into) {
        into = number(key);
    }
    template <class Kind>
    void operator()(const std::string& key, Kind& kind, Kind last) {
        const auto said = within(key, 0, static_cast<int>(last));
        all_there_ = all_there_ && (said || said_[key].empty());
        kind = said ? static_cast<Kind>(*said) : kind;
    }
    template <class Kind>
    void operator()(const std::string& key, std::optional<Kind>& kind, Kind last) {
        if (number(key)) {
            const auto said = within(key, 0, static_cast<int>(last));
            kind = said ? std::optional(static_cast<Kind>(*said)) : std::nullopt;
        }
    }
    void operator()(const std::string& key, std::optional<EventId>& id) {
        id = parse_event_id(said_[key]);
    }
    void operator()(const std::string& key, Edge& edge) {
        edge = edge_of_hex(said_[key]).value_or(edge);
    }
    void operator()(const std::string& key, std::vector<TiltSample>& samples) {
        std::istringstream said(said_[key]);
        for (TiltSample sample;
             samples.size() < tilt_samples && said >> sample.beta >> sample.gamma;) {
            samples.push_back(sample);
        }
    }
    [[nodiscard]] std::optional<std::int64_t> number(const std::string& key) {
        const std::string& said = said_[key];
        std::int64_t number = 0;
        const char* const end = said.data() + said.size();
        const auto [stop, error] = std::from_chars(said.data(), end, number);
        return error == std::errc() && stop == end ? std::optional(number) : std::nullopt;
    }
    /// Every kind that was said is one that there is.
    [[nodiscard]] bool all_there() const { return all_there_; }

  private:
    [[nodiscard]] std::optional<std::int64_t> within(const std::string& key, int least, int most) {
        const std::optional<std::int64_t> said = number(key);
        return said && *said >= least && *said <= most ? said : std::nullopt;
    }
    std::map<std::string, std::string> said_;
    bool all_there_ = true;
};

template <class Each>
void each_of(Each& each, LeftOff& left) {
    each("job", left.job);
    each("wall_ms", left.wall_ms);
    each("place", left.where.screen, screen_last);
    each("edge_at", left.where.edge);
    each("role", left.where.role, TrimRole::cleat);
    each("piece", left.where.piece, 0, pieces_most);
    each("reading_of", left.where.reading_of, ReadingOf::remainder);
    each("stick_at", left.where.stick, 0, pieces_most);
    each_kept_draft(each, left.drafts);
}

}  // namespace

std::string print_left_off(const LeftOff& left) {
    LeftOff all = left;
    Printing printing;
    printing("format", format);
    each_of(printing, all);
    return printing.lines();
}

std::optional<LeftOff> left_off_in(const std::string& text) {
    Reading reading(text);
    LeftOff left;
    each_of(reading, left);
    const bool good =
        reading.number("format") == format && reading.number("place") && reading.all_there();
    return good ? std::optional(left) : std::nullopt;
}

}  // namespace hemline
