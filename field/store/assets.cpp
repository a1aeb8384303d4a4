#include "field/store/assets.h"

#include <array>
#include <string>
#include <system_error>

#include "field/store/disk_problem.h"
#include "field/store/job_folder.h"

namespace hemline {
namespace {

namespace fs = std::filesystem;

constexpr std::array<EdgeKind, 9> kinds{
    EdgeKind::eave,     EdgeKind::gable,      EdgeKind::ridge,
    EdgeKind::hip,      EdgeKind::valley,     EdgeKind::sidewall,
    EdgeKind::headwall, EdgeKind::transition, EdgeKind::high_eave};

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
        problem.what = shown(file) + ": " + problem.what;
        return problem;
    }
    return parsed;
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
        problem.what = shown(folder / "practice.csv") + ": " + problem.what;
        return problem;
    }
    Assets assets{*catalogue, *rules, *practice, {}, *sections};
    for (const EdgeKind kind : kinds) {
        const fs::path file = folder / "procedures" / (std::string(word_of(kind)) + ".csv");
        std::error_code error;
        if (!fs::exists(file, error)) {
            continue;
        }
        const auto procedure = read_as(file, read_procedure);
        if (!procedure) {
            return procedure.problem();
        }
        assets.procedures.emplace(kind, *procedure);
    }
    return assets;
}

}  // namespace hemline
