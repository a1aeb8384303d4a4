// A row of a table for other programs, written so that a spreadsheet works nothing out of what
// somebody typed, and so that read_table gives back what was written.
//
//   =HYPERLINK("x")  ──▶  "'=HYPERLINK(""x"")"      tab 5  ──▶  "\u00095"
#pragma once

#include <cstdint>
#include <initializer_list>
#include <optional>
#include <string>
#include <string_view>

#include "engine/words/text.h"

namespace hemline {

/// A cell as it is written: text, made harmless; or a whole number of ours, which a spreadsheet may
/// count with and which may begin with "-".
struct CsvCell {
    std::string written;

    CsvCell(std::string_view text);
    CsvCell(const std::string& text) : CsvCell(std::string_view(text)) {}
    CsvCell(const char* text) : CsvCell(std::string_view(text)) {}
    /// Shown as text already; lengths for a reader who works on those marks.
    CsvCell(const Text& words, std::optional<Marks> marks = {});
    CsvCell(std::int64_t number) : written(std::to_string(number)) {}
};

/// The cells, each in quotes (RFC 4180), CR LF at the end.
std::string csv_row(std::initializer_list<CsvCell> cells);

/// Text as a cell holds it. Where a spreadsheet could take a formula to begin (at the start, and
/// after a comma or semicolon, where one set to other separators splits cells) an apostrophe stands
/// before = + - @ and their like in other widths, spaces and quotes between passed over. What is
/// not seen stands as \uXXXX (shown_text), a backslash before u and four digits as \u005C. Bytes
/// that are no UTF-8 are lost, as U+FFFD.
std::string cell_of(std::string_view text);

/// The text of which cell_of made the cell; a cell that it would not have made stays as it is.
std::string text_of_cell(std::string_view cell);

}  // namespace hemline
