#include "field/store/assets.h"

#include <string>

#include "field/store/disk_problem.h"
#include "field/store/job_folder.h"
#include "field/store/listing.h"

namespace hemline {
namespace {

namespace fs = std::filesystem;

/// Reads a file and gives its text to `parse`; a problem in it gets the file's name.
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
    auto spanish = read_as(folder / "words" / "es.po", Phrases::read);
    if (!spanish) {
        return spanish.problem();
    }
    assets.spanish = std::move(*spanish);
    auto notices = read_notices(folder / "notices");
    if (!notices) {
        return notices.problem();
    }
    assets.notices = std::move(*notices);
    return assets;
}

}  // namespace hemline
