// A settings file that could not be read is never overwritten.
#include "field/store/settings_file.h"

#include <doctest/doctest.h>

#include "engine/words/result.h"
#include "field/store/job_folder.h"
#include "field/store/kept_folders.h"
#include "field/store/screen_scale.h"
#include "tests/field/store/home.h"

using namespace hemline;

namespace {

std::string text_of(const std::filesystem::path& file) {
    const Result<Bytes> bytes = read_file(file);
    return bytes ? std::string(bytes->begin(), bytes->end()) : "nothing";
}

}  // namespace

TEST_CASE("A screen's file that makes no sense is kept beside when another is written") {
    const Home home;
    home.write("screen", "5.9 px/mm\nfrom a program to come\n");
    REQUIRE_FALSE(read_screen_scale().ok());
    Disk disk;
    REQUIRE_FALSE(keep_screen_scale(disk, {6.3125F}));
    CHECK(*read_screen_scale()->px_per_mm == doctest::Approx(6.3125));
    CHECK(text_of(home.file("screen-unread")) == "5.9 px/mm\nfrom a program to come\n");
    REQUIRE_FALSE(keep_screen_scale(disk, {5.0F}));
    CHECK(text_of(home.file("screen-unread-2")) == "nothing");
}

TEST_CASE("A file of folders that makes no sense is kept beside when another is written") {
    const Home home;
    home.write("folders", "crew /media/stick\nhan");
    REQUIRE_FALSE(read_kept_folders().ok());
    KeptFolders folders;
    folders.crew = "/media/other";
    REQUIRE_FALSE(keep_folders(folders));
    CHECK(read_kept_folders()->crew == "/media/other");
    CHECK(text_of(home.file("folders-unread")) == "crew /media/stick\nhan");
}

TEST_CASE("Where the file cannot be moved aside it stays, and nothing is written over it") {
    class Stuck : public Disk {
      public:
        int rename(const std::filesystem::path&, const std::filesystem::path&) override {
            errno = EIO;
            return -1;
        }
    } disk;
    const Home home;
    home.write("screen", "torn");
    CHECK(keep_screen_scale(disk, {5.0F}));
    CHECK(text_of(home.file("screen")) == "torn");
}
