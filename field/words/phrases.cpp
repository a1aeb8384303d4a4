#include "field/words/phrases.h"

#include <algorithm>
#include <utility>

#include "field/words/po_file.h"

namespace hemline {

namespace {

/// As gettext joins them.
std::string key_of(const std::string& context, const std::string& id) {
    return context.empty() ? id : context + '\4' + id;
}

}  // namespace

Result<Phrases> Phrases::read(std::string_view po) {
    Result<std::vector<PoEntry>> entries = read_po(po);
    if (!entries) {
        return entries.problem();
    }
    Phrases phrases;
    for (const PoEntry& entry : *entries) {
        const bool translated = std::none_of(entry.strings.begin(), entry.strings.end(),
                                             [](const std::string& s) { return s.empty(); });
        if (!entry.id.empty() && !entry.fuzzy && translated) {
            phrases.strings_[key_of(entry.context, entry.id)] = entry.strings;
        }
    }
    return phrases;
}

std::string Phrases::of(const Text& text, std::optional<Marks> marks) const {
    const Lookup lookup = [this](const Text& asked) {
        const bool many = asked.count != 1 && !asked.key_many.empty();
        const auto found = strings_.find(key_of(asked.context, asked.key));
        if (found == strings_.end()) {
            return many ? asked.key_many : asked.key;
        }
        return found->second[many && found->second.size() > 1 ? 1 : 0];
    };
    return fill(text, lookup, marks);
}

}  // namespace hemline
