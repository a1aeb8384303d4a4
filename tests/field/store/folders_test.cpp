// Where jobs, the device's number and the assets are found.
#include "field/store/folders.h"

#include <doctest/doctest.h>

#include <fstream>
#include <set>

#include <sys/stat.h>
#include <sys/wait.h>
#include <unistd.h>

#include "engine/record/event.h"
#include "engine/words/result.h"
#include "field/store/assets.h"
#include "field/store/job_lock.h"
#include "tests/field/store/temporary_folder.h"

namespace hemline {
namespace {

namespace fs = std::filesystem;

TEST_CASE("Jobs lie in the XDG data home, or in .local/share of the home folder") {
    // XDG Base Directory Specification 0.8: $XDG_DATA_HOME, default $HOME/.local/share; a path that
    // is not absolute is to be ignored.
    const Setting home("HOME", "/home/ada");
    {
        const Setting data("XDG_DATA_HOME", "/data");
        CHECK(*hemline_folder() == "/data/hemline");
        CHECK(*jobs_folder() == "/data/hemline/jobs");
    }
    {
        const Setting data("XDG_DATA_HOME", "data");
        CHECK(*jobs_folder() == "/home/ada/.local/share/hemline/jobs");
    }
    const Setting data("XDG_DATA_HOME", "");
    CHECK(*jobs_folder() == "/home/ada/.local/share/hemline/jobs");
    const Setting no_home("HOME", "");
    CHECK_FALSE(jobs_folder());
}

TEST_CASE("Jobs are the folders that hold a journal, by name") {
    const TemporaryFolder folder;
    for (const char* name : {"north", "east", "empty"}) {
        fs::create_directory(folder.path() / name);
    }
    std::ofstream(folder.path() / "north" / "0000000000000001.journal");
    std::ofstream(folder.path() / "east" / "0000000000000001.journal");
    std::ofstream(folder.path() / "stray.journal");
    CHECK(*list_jobs(folder.path()) ==
          std::vector<fs::path>{folder.path() / "east", folder.path() / "north"});
    CHECK(list_jobs(folder.path() / "none")->empty());
}

TEST_CASE("A job's name becomes a folder name that is free, and stays inside the jobs folder") {
    const TemporaryFolder folder;
    const auto name = [&](const std::string& job) {
        const fs::path made = *new_job_folder(folder.path(), job);
        CHECK(made.parent_path() == folder.path());
        return made.filename().string();
    };
    CHECK(name("Mill house, north") == "Mill house, north");
    CHECK(name("gr\xC3\xBCn") == "gr\xC3\xBCn");
    CHECK(name("../../etc/passwd") == "-..-etc-passwd");
    CHECK(name("a/b\\c:d\n") == "a-b-c-d-");
    CHECK(name("") == "job");
    CHECK(name("..") == "job");
    CHECK(name(". .lock .") == "lock");
    CHECK(name(std::string(79, 'x') + "\xC3\xBC") == std::string(79, 'x'));  // no half character
    CHECK(name(std::string(5000, 'x')).size() == 80);
    for (const char* house : {"house", "house-2"}) {
        fs::create_directory(folder.path() / house);
        std::ofstream(folder.path() / house / "notes") << "mine";
    }
    CHECK(name("house") == "house-3");
}

TEST_CASE("A job begun by a program that was stopped before its first event leaves its name free") {
    const TemporaryFolder folder;
    const fs::path begun = folder.path() / "house";
    fs::create_directory(begun);
    CHECK(*new_job_folder(folder.path(), "house") == begun);
    std::ofstream(begun / ".lock");
    std::ofstream(begun / ".device-00c0ffee00c0ffee") << "00c0ffee00c0ffee 1\n";
    std::ofstream(begun / "00c0ffee00c0ffee.journal");
    CHECK(*new_job_folder(folder.path(), "house") == begun);
    const Result<int> locked = lock_job(begun);  // it is open elsewhere
    REQUIRE(locked);
    CHECK(*new_job_folder(folder.path(), "house") == folder.path() / "house-2");
    ::close(*locked);
    std::ofstream(begun / "00c0ffee00c0ffee.journal") << "a torn first event";
    CHECK(*new_job_folder(folder.path(), "house") == folder.path() / "house-2");
}

TEST_CASE("A job is named by its folder or by a journal in it") {
    const TemporaryFolder home;
    const fs::path north = home.path() / "north";
    fs::create_directory(north);
    std::ofstream(north / "00c0ffee00c0ffee.journal");
    CHECK(*job_folder(north) == north);
    CHECK(*job_folder(north / "00c0ffee00c0ffee.journal") == north);
    CHECK(*job_folder("no job here") == "no job here");
}

TEST_CASE("A job whose name ends like a journal's lies in a folder of that name") {
    const TemporaryFolder home;
    const fs::path smith = home.path() / "Smith.journal";
    CHECK(*job_folder(smith) == smith);
    fs::create_directory(smith);
    CHECK(*job_folder(smith) == smith);
}

TEST_CASE("A device draws its number once, keeps it, and keeps it to its owner") {
    const TemporaryFolder folder;
    const Setting data("XDG_DATA_HOME", folder.path().string());
    const auto device = device_id();
    REQUIRE(device);
    CHECK(*device != 0);
    CHECK(*device_id() == *device);
    const fs::path file = folder.path() / "hemline" / "device";
    struct stat about {};
    REQUIRE(::stat(file.c_str(), &about) == 0);
    CHECK((about.st_mode & 07777U) == 0600U);
    std::string line;
    std::getline(std::ifstream(file), line);
    CHECK(line == print_device(*device));
    CHECK(std::distance(fs::directory_iterator(file.parent_path()), {}) ==
          2);  // and where it lies; no draft is left
    fs::remove(file);
    // Once taken for a copy when the new file came to lie elsewhere: that is held here.
    std::ofstream(folder.path() / "in its place") << "x";
    const auto drawn_again = device_id();
    REQUIRE(drawn_again);
    CHECK(*drawn_again != *device);
}

TEST_CASE("Programs started together agree on the device's number") {
    const TemporaryFolder folder;
    const Setting data("XDG_DATA_HOME", folder.path().string());
    int ends[2];
    REQUIRE(::pipe(ends) == 0);
    for (int n = 0; n < 8; ++n) {
        if (::fork() == 0) {
            const auto device = device_id();
            const std::uint64_t told = device ? *device : 0;
            ::_exit(::write(ends[1], &told, sizeof told) == sizeof told ? 0 : 1);
        }
    }
    ::close(ends[1]);
    std::set<std::uint64_t> told;
    std::uint64_t device = 0;
    int answers = 0;
    while (::read(ends[0], &device, sizeof device) == sizeof device) {
        told.insert(device);
        ++answers;
    }
    ::close(ends[0]);
    while (::wait(nullptr) > 0) {
    }
    CHECK(answers == 8);
    CHECK(told == std::set<std::uint64_t>{*device_id()});
}

TEST_CASE("A device file that holds no number is a problem and is left as it is") {
    const TemporaryFolder folder;
    const Setting data("XDG_DATA_HOME", folder.path().string());
    fs::create_directories(folder.path() / "hemline");
    const fs::path file = folder.path() / "hemline" / "device";
    for (const char* text : {"", "xyz\n", "0000000000000000\n", "00c0ffee00c0ffee\nmore\n"}) {
        std::ofstream(file) << text;
        const auto device = device_id();
        REQUIRE_FALSE(device);
        CHECK(device.problem().what.english().find("sixteen hex digits") != std::string::npos);
        CHECK(fs::file_size(file) == std::string(text).size());
    }
    std::ofstream(file) << "00c0ffee00c0ffee\n";
    CHECK(*device_id() == 0x00c0ffee00c0ffeeU);
}

TEST_CASE(
    "The assets are where HEMLINE_ASSETS says, or a problem says where they were looked for") {
    const TemporaryFolder folder;
    {
        const Setting told("HEMLINE_ASSETS", folder.path().string());
        CHECK(*assets_folder() == folder.path());
        const auto none = read_assets(folder.path());
        REQUIRE_FALSE(none);
        CHECK(none.problem().what.english().find("trims.csv") != std::string::npos);
    }
    const Setting told("HEMLINE_ASSETS", (folder.path() / "none").string());
    REQUIRE_FALSE(assets_folder());
    CHECK(assets_folder().problem().what.english().find("HEMLINE_ASSETS") == 0);
}

TEST_CASE("The assets that ship are read whole, the eave's procedure among them") {
    const auto folder = assets_folder();
    REQUIRE(folder);
    const auto assets = read_assets(*folder);
    if (!assets) {
        FAIL(assets.problem().what);
    }
    CHECK(assets->catalogue.default_for(EdgeKind::eave) != nullptr);
    CHECK_FALSE(assets->rules.empty());
    REQUIRE(assets->procedures.count(EdgeKind::eave) == 1);
    CHECK_FALSE(assets->procedures.at(EdgeKind::eave).empty());
}

TEST_CASE("A slip in an assets file is named with the file") {
    const auto shipped = assets_folder();
    REQUIRE(shipped);
    const TemporaryFolder folder;
    for (const char* file : {"catalogue/trims.csv", "practice.csv", "procedures/eave.csv"}) {
        CAPTURE(file);
        const fs::path copy = folder.path() / "assets";
        fs::remove_all(copy);
        fs::copy(*shipped, copy, fs::copy_options::recursive);
        REQUIRE(read_assets(copy));
        std::ofstream(copy / file, std::ios::app) << "\"never closed";
        const auto broken = read_assets(copy);
        REQUIRE_FALSE(broken);
        CHECK(broken.problem().what.english().find(file) != std::string::npos);
    }
}

TEST_CASE("Two files of one language are refused, both languages that ship are read") {
    const auto shipped = assets_folder();
    REQUIRE(shipped);
    const TemporaryFolder folder;
    const fs::path copy = folder.path() / "assets";
    fs::copy(*shipped, copy, fs::copy_options::recursive);
    const auto assets = read_assets(copy);
    REQUIRE(assets);
    REQUIRE(assets->languages.size() == 2);
    CHECK(next_language(*assets, "en").tag() == "es");
    CHECK(next_language(*assets, "es").tag() == "en");
    CHECK(language_of(*assets, "of a tablet with more of them").tag() == "en");
    fs::copy(copy / "words" / "es.po", copy / "words" / "other.po");
    const auto twice = read_assets(copy);
    REQUIRE_FALSE(twice);
    CHECK(twice.problem().what.english().find("other.po\": a second file of the language es") !=
          std::string::npos);
}

}  // namespace
}  // namespace hemline
