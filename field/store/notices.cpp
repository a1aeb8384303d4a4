#include "field/store/notices.h"

#include <array>
#include <sstream>

#include "engine/words/csv.h"
#include "engine/words/result.h"
#include "field/store/disk_problem.h"
#include "field/store/job_folder.h"

namespace hemline {

namespace {

namespace fs = std::filesystem;

struct Field {
    std::string_view column;
    std::string Notice::*value;
};
constexpr std::array<Field, 7> fields{{{"part", &Notice::part},
                                       {"version", &Notice::version},
                                       {"license", &Notice::license},
                                       {"inside", &Notice::inside},
                                       {"beside", &Notice::beside},
                                       {"text", &Notice::text},
                                       {"note", &Notice::note}}};

Result<std::string> text_in(const fs::path& file) {
    const Result<Bytes> bytes = read_file(file);
    if (!bytes) {
        return bytes.problem();
    }
    return std::string(bytes->begin(), bytes->end());
}

/// The texts of those names, joined.
Result<std::string> texts_in(const fs::path& folder, const std::string& names) {
    std::string all;
    std::istringstream words(names);
    for (std::string name; words >> name;) {
        const Result<std::string> text = text_in(folder / (name + ".txt"));
        if (!text) {
            return text.problem();
        }
        all += (all.empty() ? "" : "\n") + *text;
    }
    return all;
}

Problem in_list(const fs::path& file, const Text& what) {
    return {say("{1}: {2}", shown(file), what),
            say("Put back the file that came with the program.")};
}

}  // namespace

Result<std::vector<Notice>> read_notices(const fs::path& folder) {
    const fs::path file = folder / "notices.csv";
    const Result<std::string> csv = text_in(file);
    if (!csv) {
        return csv.problem();
    }
    const auto read = read_table(*csv);
    if (const auto* problem = std::get_if<TableProblem>(&read)) {
        return in_list(file, Text(problem->what));
    }
    const Table& table = std::get<Table>(read);
    std::vector<Notice> notices;
    for (const auto& row : table.rows) {
        Notice& notice = notices.emplace_back();
        for (const Field& field : fields) {
            const auto column = table.column(field.column);
            if (!column) {
                return in_list(file, say("There is no column {1}.", field.column));
            }
            notice.*field.value = row[*column].text;
        }
        Result<std::string> text = texts_in(folder, notice.text);
        if (!text) {
            return text.problem();
        }
        notice.text = std::move(*text);
    }
    return notices;
}

std::vector<std::string> paragraphs_of(const std::string& text) {
    std::vector<std::string> paragraphs;
    std::istringstream lines(text);
    bool goes_on = false;
    for (std::string line; std::getline(lines, line); goes_on = !line.empty()) {
        if (!line.empty() && goes_on) {
            paragraphs.back() += ' ' + line;
        } else if (!line.empty()) {
            paragraphs.push_back(line);
        }
    }
    return paragraphs;
}

}  // namespace hemline
