// A catalogue of phrases in the PO format of GNU gettext: text that any translator's editor opens.
//
//   #. what stands where                     a comment
//   msgctxt "hem"                            which meaning; may be left out
//   msgid "{1} piece"                        English
//   msgid_plural "{1} pieces"                for counts other than one; may be left out
//   msgstr[0] "{1} pieza"                    or msgstr, without a plural
//   msgstr[1] "{1} piezas"
//
// Source: GNU gettext manual, "The Format of PO Files".
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "engine/words/result_declared.h"

namespace hemline {

struct PoEntry {
    std::string context, id, id_plural;
    std::vector<std::string> strings;  ///< one, or one for each plural form
    bool fuzzy = false;                ///< a guess that nobody has checked
    int line = 0;                      ///< where its msgid stands, from 1
};

/// All entries, the header too (its id is empty). Problem: names the line and what to fix.
Result<std::vector<PoEntry>> read_po(std::string_view po);

}  // namespace hemline
