#include "field/words/po_file.h"
#include "engine/words/result.h"

#include <optional>

namespace hemline {

namespace {

Problem bad_line(int line, std::string_view why) {
    return {say("line {1} of the phrases: {2}", line, why),
            say("Fix it with a PO editor, or check it with msgfmt.")};
}

/// The string in quotes that makes up `text`; none: it is not a quoted string.
std::optional<std::string> unquoted(std::string_view text) {
    if (text.size() < 2 || text.front() != '"' || text.back() != '"') {
        return {};
    }
    std::string words;
    for (std::size_t i = 1; i + 1 < text.size(); ++i) {
        if (text[i] == '"') {
            return {};
        }
        if (text[i] != '\\') {
            words += text[i];
            continue;
        }
        if (++i + 1 >= text.size()) {
            return {};
        }
        switch (text[i]) {
            case 'n':
                words += '\n';
                break;
            case 't':
                words += '\t';
                break;
            case '"':
            case '\\':
                words += text[i];
                break;
            default:
                return {};
        }
    }
    return words;
}

/// Puts lines together to entries.
class PoReader {
  public:
    /// Takes the next line in; what is wrong with it, or empty.
    std::string_view take(std::string_view line) {
        ++line_;
        while (!line.empty() && (line.back() == '\r' || line.back() == ' ')) {
            line.remove_suffix(1);
        }
        if (line.empty()) {
            return "";
        }
        if (line.front() == '#') {
            fuzzy_ = fuzzy_ || (line.substr(0, 2) == "#," && line.find("fuzzy") != line.npos);
            return "";
        }
        if (line.front() == '"') {
            return into_ == nullptr ? "words stand before any msgid" : add(line);
        }
        const std::size_t end = line.find(' ');
        if (end == line.npos) {
            return "a keyword and words in quotes belong here";
        }
        return begin(line.substr(0, end)) ? add(line.substr(end + 1))
                                          : "such a keyword does not belong here";
    }
    [[nodiscard]] int line() const { return line_; }
    [[nodiscard]] const std::vector<PoEntry>& entries() const { return entries_; }

  private:
    bool begin(std::string_view keyword) {
        const bool whole = entries_.empty() || !entries_.back().strings.empty();
        if (keyword == "msgctxt" || (keyword == "msgid" && (whole || has_id_))) {
            if (!whole) {
                return false;
            }
            entries_.push_back({{}, {}, {}, {}, fuzzy_, line_});
            fuzzy_ = false;
            has_id_ = false;
        }
        if (entries_.empty()) {
            return false;
        }
        PoEntry& entry = entries_.back();
        if (keyword == "msgctxt") {
            into_ = &entry.context;
        } else if (keyword == "msgid") {
            into_ = &entry.id;
            has_id_ = true;
        } else if (keyword == "msgid_plural" && has_id_ && entry.strings.empty()) {
            into_ = &entry.id_plural;
        } else if (has_id_ &&
                   (keyword == "msgstr"
                        ? entry.strings.empty()
                        : keyword == "msgstr[" + std::to_string(entry.strings.size()) + "]")) {
            into_ = &entry.strings.emplace_back();
        } else {
            return false;
        }
        return true;
    }
    std::string_view add(std::string_view quoted) {
        const std::optional<std::string> words = unquoted(quoted);
        if (!words) {
            return "its words do not stand in quotes, with \\\" for a quote";
        }
        *into_ += *words;
        return "";
    }

    std::vector<PoEntry> entries_;
    std::string* into_ = nullptr;  ///< what the next quoted line continues
    bool fuzzy_ = false, has_id_ = false;
    int line_ = 0;
};

}  // namespace

Result<std::vector<PoEntry>> read_po(std::string_view po) {
    PoReader reader;
    while (!po.empty()) {
        const std::size_t end = std::min(po.find('\n'), po.size());
        if (const std::string_view wrong = reader.take(po.substr(0, end)); !wrong.empty()) {
            return bad_line(reader.line(), wrong);
        }
        po.remove_prefix(std::min(end + 1, po.size()));
    }
    if (!reader.entries().empty() && reader.entries().back().strings.empty()) {
        return bad_line(reader.line(), "the last phrase has no msgstr");
    }
    return reader.entries();
}

}  // namespace hemline
