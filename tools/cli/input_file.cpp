#include "tools/cli/input_file.h"

#include <array>
#include <cerrno>
#include <cstdio>
#include <memory>
#include <system_error>

namespace hemline {
namespace {

constexpr std::size_t size_most = std::size_t{1} << 20U;

Problem unreadable(int error) {
    return {say("This file cannot be read: {1}.", std::generic_category().message(error)),
            say("Name a readings file (CSV) that exists and may be read.")};
}

}  // namespace

Result<std::string> read_input_file(const std::string& path) {
    errno = 0;
    const std::unique_ptr<std::FILE, int (*)(std::FILE*)> file(std::fopen(path.c_str(), "rb"),
                                                               &std::fclose);
    if (!file) {
        return unreadable(errno);
    }
    std::string text;
    std::array<char, 65536> block{};
    while (const std::size_t got = std::fread(block.data(), 1, block.size(), file.get())) {
        text.append(block.data(), got);
        if (text.size() > size_most) {
            return Problem{say("This file is larger than 1 MiB, far past any roof's readings."),
                           say("Name the readings file itself, one row for each edge.")};
        }
    }
    if (std::ferror(file.get()) != 0) {
        return unreadable(errno);
    }
    return text;
}

}  // namespace hemline
