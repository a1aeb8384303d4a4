#include "field/app/left_off_text.h"

#include <charconv>
#include <cstdio>
#include <map>
#include <set>
#include <sstream>

#include "engine/record/event_bytes.h"
#include "field/app/kept_drafts.h"
#include "field/screens/screens.h"

namespace hemline {

namespace {

/// Raise it when numbers of Screen, TrimRole or a notation change.
constexpr const char* format = "format 2\n";
constexpr const char* next_place = "aside\n";
constexpr std::size_t keyed_most = 200, line_most = 8192;
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

/// Lines of a key and its value; empty values are left out.
class Printing {
  public:
    void operator()(const std::string& key, const std::string& text) {
        if (!text.empty() && text.find('\n') == std::string::npos) {
            lines_.push_back(key + " " + text + "\n");
        }
    }
    void operator()(const std::string& key, bool is) { number(key, is ? 1 : 0); }
    void operator()(const std::string& key, int number_said, int, int) { number(key, number_said); }
    void operator()(const std::string& key, std::int64_t said, int, int) { number(key, said); }
    void operator()(const std::string& key, std::int64_t said) { number(key, said); }
    void whole(const std::string& key, const std::string& text) { (*this)(key, text); }
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
    [[nodiscard]] const std::vector<std::string>& lines() const { return lines_; }

  private:
    void number(const std::string& key, std::int64_t said) { (*this)(key, std::to_string(said)); }
    std::vector<std::string> lines_;
};

/// The text may come from elsewhere: a value outside its bounds counts as missing.
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
    void whole(const std::string& key, std::string& text) { text = said_[key]; }
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
    /// Whether every kind of edge in it exists.
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
void each_of(Each& each, LeftAt& left) {
    each.whole("job", left.job);
    each("place", left.where.screen, screen_last);
    each("edge_at", left.where.edge);
    each("role", left.where.role, TrimRole::cleat);
    each("piece", left.where.piece, 0, pieces_most);
    each("reading_of", left.where.reading_of, ReadingOf::remainder);
    each("stick_at", left.where.stick, 0, pieces_most);
    each_kept_draft(each, left.drafts);
}

std::vector<std::string> lines_of(LeftAt left) {
    Printing printing;
    each_of(printing, left);
    return printing.lines();
}

std::string sum_of(const std::string& text) {
    const auto* const bytes = reinterpret_cast<const std::uint8_t*>(text.data());
    char line[16];
    std::snprintf(line, sizeof line, "sum %08x\n",
                  static_cast<unsigned>(crc32_of({bytes, text.size()})));
    return line;
}

std::optional<LeftAt> left_at_in(const std::string& text) {
    Reading reading(text);
    LeftAt left;
    each_of(reading, left);
    return reading.all_there() ? std::optional(left) : std::nullopt;
}

}  // namespace

std::string print_left_off(const LeftOff& left) {
    // What is as in a new draft is left out: the text is compared with the last one in each frame.
    const std::vector<std::string> usual = lines_of({});
    const std::set<std::string> is_usual(usual.begin(), usual.end());
    std::string text = format;
    const auto print = [&](const LeftAt& at) {
        for (const std::string& line : lines_of(at)) {
            text += is_usual.count(line) == 0 ? line : "";
        }
    };
    print(left);
    for (const LeftAt& at : left.aside) {
        text += next_place;
        print(at);
    }
    return text + sum_of(text);
}

std::optional<LeftOff> left_off_in(const std::string& text) {
    const std::size_t size = sum_of({}).size(), begin = std::string(format).size();
    if (text.size() < begin + size || text.compare(0, begin, format) != 0 ||
        text.substr(text.size() - size) != sum_of(text.substr(0, text.size() - size))) {
        return std::nullopt;
    }
    std::vector<std::string> places(1);
    std::istringstream lines(text.substr(begin, text.size() - size - begin));
    for (std::string line; std::getline(lines, line) && places.size() <= aside_most + 1;) {
        line += '\n';
        if (line == next_place) {
            places.emplace_back();
        } else {
            places.back() += line;
        }
    }
    LeftOff left;
    for (std::size_t i = 0; i < places.size(); ++i) {
        const std::optional<LeftAt> at = left_at_in(places[i]);
        if (i == 0 && !at) {
            return std::nullopt;
        }
        if (i == 0) {
            static_cast<LeftAt&>(left) = *at;
        } else if (at && left.aside.size() < aside_most) {
            left.aside.push_back(*at);
        }
    }
    return left;
}

}  // namespace hemline
