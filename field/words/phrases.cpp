#include "field/words/phrases.h"

#include <algorithm>

#include "engine/words/first_use.h"
#include "engine/words/result.h"
#include "field/words/english_beside.h"
#include "field/words/po_file.h"
#include "field/words/short_id.h"
#include "field/words/short_path.h"

namespace hemline {

namespace {

/// As gettext joins them.
std::string key_of(const std::string& context, const std::string& id) {
    return context.empty() ? id : context + '\4' + id;
}

/// What the header says after NAME and a colon; nothing without such a line.
std::optional<std::string_view> said_in(std::string_view header, std::string_view name) {
    while (!header.empty()) {
        const std::string_view line = header.substr(0, header.find('\n'));
        header.remove_prefix(std::min(line.size() + 1, header.size()));
        if (line.substr(0, name.size()) == name && line.substr(name.size(), 1) == ":") {
            const std::string_view value = line.substr(name.size() + 1);
            return value.substr(std::min(value.find_first_not_of(' '), value.size()));
        }
    }
    return {};
}

/// A tag of BCP 47, as far as the settings file and a page need it: letters, digits, hyphens.
bool is_tag(std::string_view tag) {
    return tag.size() >= 2 && tag.size() <= 35 && std::all_of(tag.begin(), tag.end(), [](char c) {
               return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') ||
                      c == '-';
           });
}

}  // namespace

Result<Phrases> Phrases::read(std::string_view po) {
    Result<std::vector<PoEntry>> entries = read_po(po);
    if (!entries) {
        return entries.problem();
    }
    Phrases phrases;
    std::string_view header;
    for (const PoEntry& entry : *entries) {
        if (entry.id.empty()) {
            header = entry.strings.front();
        }
    }
    const std::optional<std::string_view> tag = said_in(header, "Language");
    const std::optional<std::string_view> name = said_in(header, "X-Language-Name");
    if (!tag || !is_tag(*tag) || !name || name->empty()) {
        return Problem{say("The phrases do not say which language they are."),
                       say("Write \"Language: es\\n\" and \"X-Language-Name: Español\\n\" into "
                           "their header, the entry whose msgid is empty.")};
    }
    phrases.tag_ = *tag;
    phrases.name_ = *name;
    phrases.short_ids_ = said_in(header, "X-Ids") == "short";
    if (const auto forms = said_in(header, "Plural-Forms")) {
        const Result<PluralRule> rule = PluralRule::read(*forms);
        if (!rule) {
            return rule.problem();
        }
        phrases.plural_ = *rule;
    }
    const auto forms = static_cast<std::size_t>(phrases.plural_.forms());
    for (const PoEntry& entry : *entries) {
        if (!entry.id_plural.empty() && entry.strings.size() != forms) {
            return Problem{
                say("line {1} of the phrases has {2} forms for a count, its header says "
                    "{3}.",
                    entry.line, static_cast<int>(entry.strings.size()), phrases.plural_.forms()),
                say("Write msgstr[0] to the last form, each once.")};
        }
        const bool translated = std::none_of(entry.strings.begin(), entry.strings.end(),
                                             [](const std::string& s) { return s.empty(); });
        if (!entry.id.empty() && !entry.fuzzy && translated) {
            phrases.strings_[key_of(entry.context, entry.id)] = entry.strings;
        }
    }
    return phrases;
}

std::string Phrases::of(const Text& text, std::optional<Marks> marks,
                        const CrewWords& words) const {
    const auto phrase = [this](const Text& asked) {
        const auto found =
            strings_.find(key_of(asked.context, short_ids_ ? short_id(asked.key) : asked.key));
        if (found == strings_.end()) {
            return asked.count != 1 && !asked.key_many.empty() ? asked.key_many : asked.key;
        }
        const std::vector<std::string>& forms = found->second;
        return forms[forms.size() > 1 ? static_cast<std::size_t>(plural_.form_of(asked.count)) : 0];
    };
    bool beside = false;
    const Lookup lookup = [&](const Text& asked) {
        if (asked.as_is) {
            return short_path(asked.key);
        }
        beside = beside || is_first_use(asked);
        const std::string said = phrase(asked);
        return in_crew_words(beside ? english_beside(said) : said, tag_, words);
    };
    return fill(text, lookup, marks);
}

}  // namespace hemline
