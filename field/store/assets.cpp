#include "field/store/assets.h"

#include <algorithm>
#include <string>

#include "engine/words/result.h"
#include "field/store/disk_problem.h"
#include "field/store/job_folder.h"
#include "field/store/listing.h"

namespace hemline {
namespace {

namespace fs = std::filesystem;

/// Reads a file and gives its text to `parse`; a problem in it names the file.
template <class Parse>
auto read_as(const fs::path& file, Parse parse) -> decltype(parse(std::string_view())) {
    const Result<Bytes> bytes = read_file(file);
    if (!bytes) {
        return bytes.problem();
    }
    auto parsed =
        parse(std::string_view(reinterpret_cast<const char*>(bytes->data()), bytes->size()));
    if (!parsed) {
        Problem problem = parsed.problem();
        problem.what = say("{1}: {2}", shown(file), problem.what);
        return problem;
    }
    return parsed;
}

/// The steps of FOLDER/procedures/NAME.csv; none where there is no such file.
Result<std::vector<StepRule>> read_steps(const fs::path& folder, std::string_view name) {
    const fs::path file = folder / "procedures" / (std::string(name) + ".csv");
    const Result<There> there = what_is(file);
    if (!there) {
        return there.problem();
    }
    return *there == There::nothing ? std::vector<StepRule>() : read_as(file, read_procedure);
}

/// English and the language of every PO file there.
Result<std::vector<Phrases>> read_languages(const fs::path& folder) {
    std::vector<Phrases> languages{Phrases()};
    const Result<std::vector<fs::path>> files = files_in(folder, {".po"});
    if (!files) {
        return files.problem();
    }
    for (const fs::path& file : *files) {
        auto language = read_as(file, Phrases::read);
        if (!language) {
            return language.problem();
        }
        const bool twice = std::any_of(languages.begin(), languages.end(), [&](const Phrases& one) {
            return one.tag() == language->tag();
        });
        if (twice) {
            return Problem{
                say("{1}: a second file of the language {2}.", shown(file), language->tag()),
                say("Keep one of them.")};
        }
        languages.push_back(std::move(*language));
    }
    std::sort(languages.begin() + 1, languages.end(),
              [](const Phrases& a, const Phrases& b) { return a.tag() < b.tag(); });
    return languages;
}

std::size_t place_of(const Assets& assets, std::string_view tag) {
    const auto found =
        std::find_if(assets.languages.begin(), assets.languages.end(),
                     [tag](const Phrases& language) { return language.tag() == tag; });
    return found == assets.languages.end()
               ? 0
               : static_cast<std::size_t>(found - assets.languages.begin());
}

}  // namespace

Result<Assets> read_assets(const fs::path& folder) {
    const auto catalogue = read_as(folder / "catalogue" / "trims.csv", Catalogue::read);
    if (!catalogue) {
        return catalogue.problem();
    }
    const auto sections = read_as(folder / "catalogue" / "sections.csv", Sections::read);
    if (!sections) {
        return sections.problem();
    }
    const auto rules = read_as(folder / "practice.csv", read_practice_rules);
    if (!rules) {
        return rules.problem();
    }
    const Result<Practice> practice = practice_of(*rules);
    if (!practice) {
        Problem problem = practice.problem();
        problem.what = say("{1}: {2}", shown(folder / "practice.csv"), problem.what);
        return problem;
    }
    Assets assets{*catalogue, *rules, *practice, {}, *sections};
    for (const KindOfEdge& one : kinds_of_edge()) {
        auto procedure = read_steps(folder, one.word);
        if (!procedure) {
            return procedure.problem();
        }
        if (!procedure->empty()) {
            assets.procedures.emplace(one.kind, std::move(*procedure));
        }
    }
    auto languages = read_languages(folder / "words");
    if (!languages) {
        return languages.problem();
    }
    assets.languages = std::move(*languages);
    auto notices = read_notices(folder / "notices");
    if (!notices) {
        return notices.problem();
    }
    assets.notices = std::move(*notices);
    return assets;
}

const Phrases& language_of(const Assets& assets, std::string_view tag) {
    return assets.languages[place_of(assets, tag)];
}

const Phrases& next_language(const Assets& assets, std::string_view tag) {
    return assets.languages[(place_of(assets, tag) + 1) % assets.languages.size()];
}

}  // namespace hemline
