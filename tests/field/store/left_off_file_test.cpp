// The small file of where the program was left: whole or not at all, and written now and then.
#include "field/store/left_off_file.h"

#include <doctest/doctest.h>

#include <atomic>

#include "tests/field/store/home.h"

using namespace hemline;
using std::chrono_literals::operator""ms;

TEST_CASE("Where the program was left is read as it was written, and is empty before") {
    const Home home;
    Disk disk;
    CHECK(*read_left_off() == "");
    CHECK_FALSE(write_left_off(disk, "format 2\nplace 1\n"));
    CHECK_FALSE(write_left_off(disk, "format 2\nplace 3\n"));
    CHECK(*read_left_off() == "format 2\nplace 3\n");
}

TEST_CASE("What cannot be read or written is a problem, and nothing else is touched") {
    const Home home;
    Disk disk;
    std::filesystem::create_directories(home.file("left_off") / "folder");
    CHECK_FALSE(read_left_off().ok());
    CHECK(write_left_off(disk, "format 2\n"));
    CHECK(std::filesystem::is_directory(home.file("left_off") / "folder"));
}

TEST_CASE("The newest text is written, the first at once, and the others after a rest") {
    std::mutex lock;
    std::vector<std::string> written;
    std::vector<std::chrono::steady_clock::time_point> at;
    {
        LeftOffKeeper keeper(
            [&](const std::string& text) {
                const std::scoped_lock hold(lock);
                written.push_back(text);
                at.push_back(std::chrono::steady_clock::now());
                return std::optional<Problem>();
            },
            60ms);
        for (int i = 0; i < 200; ++i) {
            CHECK_FALSE(keeper.keep(std::to_string(i)));
            std::this_thread::sleep_for(1ms);
        }
        std::this_thread::sleep_for(150ms);
        const std::scoped_lock hold(lock);
        REQUIRE_FALSE(written.empty());
        CHECK(written.back() == "199");  // nobody keyed in more, and it came to the disk
    }
    CHECK(written.size() >= 2);
    for (std::size_t i = 1; i < at.size(); ++i) {
        CHECK(at[i] - at[i - 1] >= 60ms);
    }
}

TEST_CASE("At the end what waits is written, without a rest") {
    std::string written;
    const auto from = std::chrono::steady_clock::now();
    {
        LeftOffKeeper keeper(
            [&](const std::string& text) {
                written = text;
                return std::optional<Problem>();
            },
            60'000ms);
        keeper.keep("a");
        std::this_thread::sleep_for(20ms);
        keeper.keep("ab");
    }
    CHECK(written == "ab");
    CHECK(std::chrono::steady_clock::now() - from < 20'000ms);
}

TEST_CASE("A disk that takes nothing is said once, and again after it took something") {
    std::atomic<bool> full = true;
    std::atomic<int> tried = 0;
    LeftOffKeeper keeper(
        [&](const std::string&) {
            ++tried;
            return full ? std::optional(Problem{Text("The disk is full."), Text("Make room.")})
                        : std::optional<Problem>();
        },
        1ms);
    int said = 0;
    const auto keep = [&](int times) {
        for (int i = 0; i < times; ++i) {
            const int before = tried;
            said += keeper.keep(std::to_string(i)) ? 1 : 0;
            for (int waited = 0; tried == before && waited < 2000; ++waited) {
                std::this_thread::sleep_for(1ms);
            }
            std::this_thread::sleep_for(5ms);
        }
    };
    keep(5);
    CHECK(said == 1);
    full = false;
    keep(2);
    full = true;
    keep(5);
    CHECK(said == 2);
}
