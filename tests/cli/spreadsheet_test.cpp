// The tables of a job file in a real spreadsheet, LibreOffice: it evaluates nothing of what
// somebody typed.
#include <doctest/doctest.h>

#include <cstdlib>

#include "engine/words/csv.h"
#include "engine/words/csv_row.h"
#include "tests/cli/program.h"

using namespace hemline::test;

namespace {

namespace fs = std::filesystem;

const std::vector<std::string> mean_names = {
    "=1+1",      "+1+1",       "-1+1",
    "@SUM(1;1)", "\t=1+1",     "\r=1+1",
    "\n=1+1",    " =1+1",      "\"=1+1",
    "\uFF1D1+1", "\uFEFF=1+1", "\u00A0=1+1",
    "'=1+1",     "Vale;=1+1",  "Vale,=1",
    "-5",        "\u22125+1",  "=HYPERLINK(\"http://example.invalid\",\"look\")"};

/// The table as LibreOffice has it, split at that separator: a flat OpenDocument file.
std::string in_spreadsheet(const Desk& desk, const std::string& table, char separator) {
    const std::string out = (desk.folder() / ("at" + std::to_string(separator))).string();
    const std::string command = "soffice -env:UserInstallation='file://" + desk.folder().string() +
                                "/profile' --headless '--infilter=Text - txt - csv (StarCalc):" +
                                std::to_string(separator) +
                                ",34,76,1' --convert-to fods --outdir '" + out + "' '" + table +
                                "' >/dev/null 2>&1";
    REQUIRE_MESSAGE(std::system(command.c_str()) == 0, "soffice is needed: tools/install browser");
    return bytes_of(fs::path(out) / fs::path(table).stem().concat(".fods"));
}

bool has_formula(const std::string& sheet) {
    return sheet.find("table:formula") != std::string::npos;
}

std::string xml_of(const std::string& text) {
    std::string xml;
    for (const char c : text) {
        xml += c == '&'    ? "&amp;"
               : c == '<'  ? "&lt;"
               : c == '>'  ? "&gt;"
               : c == '"'  ? "&quot;"
               : c == '\'' ? "&apos;"
                           : std::string(1, c);
    }
    return xml;
}

/// The tables of a job of which every reading is by a mean name, as a hand takes them out of the
/// job file.
struct Tables : Desk {
    Tables() {
        const std::string roof = write("roof.csv",
                                       "edge,kind,trim,length,left,right,pitch\n"
                                       "A,eave,,46 ft,gable,gable,5/12\n");
        REQUIRE(run({"new", "job", "--from", roof, "--name", "=1+1"}).exit == 0);
        for (const std::string& name : mean_names) {
            REQUIRE(run({"take", "job", "A", "46 ft", "--by", name}).exit == 0);
        }
        REQUIRE(run({"pack", "job", "job.zip"}).exit == 0);
        const std::string unzip =
            "cd '" + folder().string() + "' && python3 -m zipfile -e job.zip tables";
        REQUIRE(std::system(unzip.c_str()) == 0);
    }
    [[nodiscard]] std::string path(const std::string& name) const {
        return (folder() / "tables" / name).string();
    }
};

}  // namespace

TEST_CASE("A spreadsheet works out nothing that somebody typed" * doctest::test_suite("full")) {
    const Tables tables;
    // What it would do with the names as they are: else this test could not fail.
    const std::string raw = tables.write("raw.csv", "by,what\n\"=1+1\",\"Vale;=1+1\"\n");
    CHECK(has_formula(in_spreadsheet(tables, raw, ',')));
    CHECK(has_formula(in_spreadsheet(tables, raw, ';')));
    for (const char* name : {"readings.csv", "events.csv"}) {
        for (const char separator : {',', ';'}) {
            const std::string sheet = in_spreadsheet(tables, tables.path(name), separator);
            CHECK_MESSAGE(sheet.find("46 ft") != std::string::npos, name);
            CHECK_MESSAGE(!has_formula(sheet), name << " split at " << separator);
        }
    }
    const std::string sheet = in_spreadsheet(tables, tables.path("readings.csv"), ',');
    for (const std::string& name : mean_names) {
        const std::string cell = xml_of(hemline::cell_of(name));
        CHECK_MESSAGE(sheet.find(">" + cell + "<") != std::string::npos, cell);
    }
}

TEST_CASE("Our own reader has the names of those tables as they were typed" *
          doctest::test_suite("long")) {
    const Tables tables;
    const auto read = hemline::read_table(bytes_of(tables.path("readings.csv")));
    REQUIRE(std::holds_alternative<hemline::Table>(read));
    const auto& table = std::get<hemline::Table>(read);
    const auto by = table.column("by");
    REQUIRE(by);
    std::vector<std::string> names;
    for (const auto& row : table.rows) {
        names.push_back(row[*by].text);
    }
    REQUIRE(names.size() == mean_names.size() + 1);
    CHECK(std::vector<std::string>(names.begin() + 1, names.end()) == mean_names);
}
