// What the program knows of the trade, read from the assets folder: data that a person can edit.
#pragma once

#include <filesystem>
#include <map>
#include <vector>

#include "engine/trim/catalogue.h"
#include "engine/trim/practice.h"
#include "engine/trim/section.h"
#include "engine/words/result.h"
#include "engine/work/procedure.h"
#include "field/store/notices.h"
#include "field/words/phrases.h"

namespace hemline {

struct Assets {
    Catalogue catalogue;
    std::vector<PracticeRule> rules;
    Practice practice;                                     ///< the rules, set
    std::map<EdgeKind, std::vector<StepRule>> procedures;  ///< only of kinds that have one
    Sections sections;
    Phrases spanish = {};
    std::vector<Notice> notices = {};
};

/// Reads FOLDER/catalogue/trims.csv and sections.csv, FOLDER/practice.csv and
/// FOLDER/procedures/KIND.csv, FOLDER/words/es.po, and FOLDER/notices. Problem: names the file, and
/// what is wrong in it.
Result<Assets> read_assets(const std::filesystem::path& folder);

}  // namespace hemline
