// What the program knows about the trade, read from the assets folder: data that a person can edit.
#pragma once

#include <filesystem>
#include <map>
#include <string_view>
#include <vector>

#include "engine/trim/catalogue.h"
#include "engine/trim/practice.h"
#include "engine/trim/section.h"
#include "engine/words/result_declared.h"
#include "engine/work/procedure.h"
#include "field/store/notices.h"
#include "field/words/phrases.h"

namespace hemline {

struct Assets {
    Catalogue catalogue;
    std::vector<PracticeRule> rules;
    Practice practice;                                     ///< the practice rules, applied
    std::map<EdgeKind, std::vector<StepRule>> procedures;  ///< only for kinds that have a procedure
    Sections sections;
    std::vector<Phrases> languages{Phrases()};  ///< English, then the others by tag
    std::vector<Notice> notices = {};
};

/// Reads FOLDER/catalogue/trims.csv and sections.csv, FOLDER/practice.csv and
/// FOLDER/procedures/KIND.csv, every FOLDER/words/*.po, and FOLDER/notices. Problem: names the
/// file, and what is wrong in it.
Result<Assets> read_assets(const std::filesystem::path& folder);

/// The language of that tag; English where there is none.
const Phrases& language_of(const Assets& assets, std::string_view tag);
/// The language after that one, and after the last the first.
const Phrases& next_language(const Assets& assets, std::string_view tag);

}  // namespace hemline
