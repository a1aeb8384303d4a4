#include "tests/cli/program.h"

#include <doctest/doctest.h>
#include <fcntl.h>
#include <glob.h>
#include <stdlib.h>
#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

#include <csignal>
#include <cstdio>
#include <fstream>
#include <sstream>

namespace hemline::test {

namespace {

/// Where Debian puts it for this processor; empty where it is not installed.
std::string faketime_library() {
    glob_t found{};
    const bool is_there = ::glob("/usr/lib/*/faketime/libfaketime.so.1", 0, nullptr, &found) == 0;
    std::string library = is_there ? found.gl_pathv[0] : "";
    ::globfree(&found);
    return library;
}

/// In the child: streams to files, a separate home, then the program.
[[noreturn]] void become(std::vector<char*> words, const std::filesystem::path& folder,
                         const std::string& clock) {
    const auto onto = [](const std::filesystem::path& file, int stream) {
        const int opened = ::open(file.c_str(), O_WRONLY | O_CREAT | O_TRUNC, 0600);
        ::dup2(opened, stream);
    };
    ::dup2(::open("/dev/null", O_RDONLY), STDIN_FILENO);
    onto(folder / ".out", STDOUT_FILENO);
    onto(folder / ".err", STDERR_FILENO);
    ::setenv("XDG_DATA_HOME", (folder / "home").c_str(), 1);
    ::setenv("HOME", folder.c_str(), 1);
    if (!clock.empty()) {
        ::setenv("FAKETIME", clock.c_str(), 1);
        ::setenv("LD_PRELOAD", faketime_library().c_str(), 1);
        ::setenv("ASAN_OPTIONS", "verify_asan_link_order=0", 1);  // the clock's library is first
    }
    if (::chdir(folder.c_str()) == 0) {
        ::execvp(words.front(), words.data());
    }
    ::_exit(127);
}

}  // namespace

nlohmann::json Ran::json() const {
    const auto parsed = nlohmann::json::parse(out, nullptr, false);
    CHECK_MESSAGE(!parsed.is_discarded(), "no JSON: ", out, err);
    return parsed.is_discarded() ? nlohmann::json() : parsed;
}

Desk::Desk() {
    std::string pattern = (std::filesystem::temp_directory_path() / "hemline-desk-XXXXXX").string();
    REQUIRE(::mkdtemp(pattern.data()) != nullptr);
    folder_ = pattern;
}

Desk::~Desk() {
    std::error_code ignored;
    std::filesystem::remove_all(folder_, ignored);
}

Ran Desk::run(const std::vector<std::string>& words) const { return ran(start(words)); }

Ran Desk::run_and_kill(const std::vector<std::string>& words, int after_us) const {
    const int child = start(words);
    ::usleep(static_cast<useconds_t>(after_us));
    ::kill(child, SIGKILL);
    return ran(child);
}

Ran Desk::run_at(const std::string& clock, const std::vector<std::string>& words) const {
    REQUIRE_MESSAGE(!faketime_library().empty(), "install faketime: tools/install does");
    return ran(start(words, clock));
}

Ran Desk::run_failing(const std::string& call, const std::string& error, int nth,
                      const std::vector<std::string>& words) const {
    const std::string inject =
        "inject=" + call + ":error=" + error + ":when=" + std::to_string(nth);
    return ran(start(words, "",
                     {"strace", "-f", "-qq", "-o", "/dev/null", "-E",
                      "ASAN_OPTIONS=detect_leaks=0",  // the leak check cannot be traced
                      "-e", "trace=" + call, "-e", inject}));
}

int Desk::start(const std::vector<std::string>& words, const std::string& clock,
                const std::vector<std::string>& before) const {
    const char* program = std::getenv("HEMLINE_CLI");
    REQUIRE_MESSAGE(program != nullptr, "HEMLINE_CLI names the program under test");
    std::vector<std::string> all = before;
    all.emplace_back(program);
    all.insert(all.end(), words.begin(), words.end());
    std::vector<char*> pointers;
    for (std::string& word : all) {
        pointers.push_back(word.data());
    }
    pointers.push_back(nullptr);
    std::error_code none;  // a program killed at its start has printed nothing
    std::filesystem::remove(folder_ / ".out", none);
    std::filesystem::remove(folder_ / ".err", none);
    const pid_t child = ::fork();
    REQUIRE(child >= 0);
    if (child == 0) {
        become(pointers, folder_, clock);
    }
    return child;
}

Ran Desk::ran(int child) const {
    int status = 0;
    rusage used{};
    REQUIRE(::wait4(child, &status, 0, &used) == child);
    const int exit = WIFEXITED(status) ? WEXITSTATUS(status) : 128 + WTERMSIG(status);
    return {exit, bytes_of(folder_ / ".out"), bytes_of(folder_ / ".err"), used.ru_maxrss};
}

std::string Desk::write(const std::string& name, const std::string& text) const {
    const std::filesystem::path path = folder_ / name;
    std::ofstream(path, std::ios::binary) << text;
    return path.string();
}

Ran fine(const Ran& ran) {
    CHECK_MESSAGE(ran.exit == 0, ran.err);
    return ran;
}

bool has(std::string_view text, std::string_view part) {
    return text.find(part) != std::string_view::npos;
}

std::string last_word(const std::string& text) {
    std::istringstream in(text);
    std::string word;
    while (in >> word) {
    }
    return word;
}

std::string bytes_of(const std::filesystem::path& file) {
    std::ifstream in(file, std::ios::binary);
    std::ostringstream text;
    text << in.rdbuf();
    return text.str();
}

std::string printed_by(const std::string& command) {
    std::string text;
    FILE* pipe = popen(command.c_str(), "r");
    REQUIRE(pipe != nullptr);
    char part[4096];
    for (std::size_t n = 0; (n = std::fread(part, 1, sizeof part, pipe)) > 0;) {
        text.append(part, n);
    }
    CHECK_MESSAGE(pclose(pipe) == 0, command);
    return text;
}

}  // namespace hemline::test
