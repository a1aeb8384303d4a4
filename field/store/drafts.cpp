#include "field/store/drafts.h"

#include <cerrno>
#include <csignal>
#include <cstdlib>
#include <optional>
#include <string>
#include <vector>

#include "engine/words/result.h"
#include "field/store/listing.h"

namespace hemline {
namespace {

namespace fs = std::filesystem;

struct Draft {
    std::string name;  ///< name of the file it was to become
    pid_t writer = 0;
};

/// ".syncthing.NAME.PID.tmp".
std::optional<Draft> parse_draft(std::string_view text) {
    constexpr std::string_view begin = ".syncthing.", end = ".tmp";
    constexpr std::size_t digits_most = 9;
    if (text.substr(0, begin.size()) != begin || !text.ends_with(end)) {
        return {};
    }
    text = text.substr(begin.size(), text.size() - begin.size() - end.size());
    const std::size_t dot = text.rfind('.');
    const std::string_view digits = dot == text.npos ? "" : text.substr(dot + 1);
    if (digits.empty() || digits.size() > digits_most ||
        digits.find_first_not_of("0123456789") != digits.npos) {
        return {};
    }
    return Draft{std::string(text.substr(0, dot)),
                 static_cast<pid_t>(std::strtol(std::string(digits).c_str(), nullptr, 10))};
}

bool still_runs(pid_t program) { return ::kill(program, 0) == 0 || errno != ESRCH; }

}  // namespace

bool is_draft(std::string_view name) { return parse_draft(name).has_value(); }

bool sweep_drafts(Disk& disk, const fs::path& folder, Sweeping sweeping,
                  const std::function<bool(std::string_view name)>& is_ours) {
    // What cannot be listed or removed does no harm, and is removed the next time.
    const auto names = names_in(folder);
    bool any = false;
    for (const std::string& name : names ? *names : std::vector<std::string>()) {
        const auto draft = parse_draft(name);
        if (draft && is_ours(draft->name) &&
            (sweeping == Sweeping::locked || !still_runs(draft->writer))) {
            disk.remove(folder / name);
            any = true;
        }
    }
    return any;
}

bool is_job_file(std::string_view name) {
    return name.ends_with(".journal") || name.ends_with(".bytes") || name == ".backup" ||
           name.substr(0, 8) == ".device-";
}

}  // namespace hemline
