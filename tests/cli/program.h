// The real program, run as a desk runs it, in a separate folder.
#pragma once

#include <cstdint>
#include <filesystem>
#include <nlohmann/json.hpp>
#include <string>
#include <string_view>
#include <vector>

namespace hemline::test {

using Json = nlohmann::json;

struct Ran {
    int exit = 0;  ///< 128 + the signal, when a signal killed it
    std::string out, err;
    std::int64_t peak_kib = 0;  ///< of memory, at its most

    /// stdout as JSON; a failed check and null when it is none.
    [[nodiscard]] nlohmann::json json() const;
};

/// A temporary folder that is gone afterwards; the program's home while it runs in it.
class Desk {
  public:
    Desk();
    ~Desk();
    Desk(const Desk&) = delete;
    Desk& operator=(const Desk&) = delete;

    /// Runs hemline-cli with these words, in this folder.
    [[nodiscard]] Ran run(const std::vector<std::string>& words) const;
    /// Runs it and kills it (SIGKILL) so many microseconds after its start, if it still runs.
    [[nodiscard]] Ran run_and_kill(const std::vector<std::string>& words, int after_us) const;
    /// Runs it with its clock off by so much, as libfaketime has it: "+10y", "-90m".
    [[nodiscard]] Ran run_at(const std::string& clock, const std::vector<std::string>& words) const;
    /// Runs it with the nth of its calls of that name failing, as strace has it: "getdents64",
    /// "EIO", 6.
    [[nodiscard]] Ran run_failing(const std::string& call, const std::string& error, int nth,
                                  const std::vector<std::string>& words) const;
    /// Writes a file and gives its path.
    [[nodiscard]] std::string write(const std::string& name, const std::string& text) const;
    [[nodiscard]] const std::filesystem::path& folder() const { return folder_; }

  private:
    [[nodiscard]] int start(const std::vector<std::string>& words, const std::string& clock = "",
                            const std::vector<std::string>& before = {}) const;
    [[nodiscard]] Ran ran(int child) const;
    std::filesystem::path folder_;
};

/// Checks that the run succeeded.
Ran fine(const Ran& ran);

bool has(std::string_view text, std::string_view part);
std::string last_word(const std::string& text);
std::string bytes_of(const std::filesystem::path& file);
/// What a shell command prints.
std::string printed_by(const std::string& command);

/// An inch is 25.4 mm exactly (international yard and pound agreement, 1959).
constexpr std::int64_t inch_nm = 25'400'000;
constexpr std::int64_t sixteenth_nm = 1'587'500;

inline const std::string readings_header = "edge,kind,trim,length,left,right,pitch\n";
inline const std::string one_eave = readings_header + "A,eave,,46 ft,gable,gable,5/12\n";
inline const std::string two_eaves = readings_header +
                                     "A,eave,,46 ft 0 1/4 in,gable,gable,5/12\n"
                                     "B,eave,,31 ft 7 5/8 in,wall,corner_out,5/12\n";

}  // namespace hemline::test
