// A row of a table for other programs, written so that a spreadsheet does not evaluate what
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

/// A cell: text, made harmless; or a whole number of ours, which a spreadsheet may calculate with
/// and which may begin with "-".
struct CsvCell {
    std::string written;

    CsvCell(std::string_view text);
    CsvCell(const std::string& text) : CsvCell(std::string_view(text)) {}
    CsvCell(const char* text) : CsvCell(std::string_view(text)) {}
    /// Words as text, lengths on those tape marks.
    CsvCell(const Text& words, std::optional<Marks> marks = {});
    CsvCell(std::int64_t number) : written(std::to_string(number)) {}
};

/// The cells, each in quotes (RFC 4180), CR LF at the end.
std::string csv_row(std::initializer_list<CsvCell> cells);

/// Text as a cell holds it. Where a spreadsheet could see the start of a formula (at the beginning,
/// and after a comma or semicolon, where a spreadsheet set to other separators splits cells) an
/// apostrophe is put before = + - @ and their full-width forms, also after spaces and quotes.
/// Invisible characters become \uXXXX (shown_text), a backslash before u and four digits becomes
/// \u005C. Bytes that are not UTF-8 are lost and become U+FFFD.
std::string cell_of(std::string_view text);

/// The text from which cell_of made the cell; a cell that it would not have made stays unchanged.
std::string text_of_cell(std::string_view cell);

}  // namespace hemline
