// A limit on the size of files (ulimit -f): the program is not killed by it, says so, and leaves
// nothing half written.
#include <doctest/doctest.h>
#include <sys/resource.h>

#include <filesystem>

#include "tests/cli/program.h"

using namespace hemline::test;

namespace {

namespace fs = std::filesystem;

/// While it lives, what this program starts can write no file past that size.
class FileLimit {
  public:
    explicit FileLimit(rlim_t size) {
        REQUIRE(getrlimit(RLIMIT_FSIZE, &was_) == 0);
        rlimit limit = was_;
        limit.rlim_cur = size;
        REQUIRE(setrlimit(RLIMIT_FSIZE, &limit) == 0);
    }
    FileLimit(const FileLimit&) = delete;
    FileLimit& operator=(const FileLimit&) = delete;
    ~FileLimit() { setrlimit(RLIMIT_FSIZE, &was_); }

  private:
    rlimit was_{};
};

fs::path journal_in(const fs::path& job) {
    for (const auto& entry : fs::directory_iterator(job)) {
        if (entry.path().extension() == ".journal") {
            return entry.path();
        }
    }
    return {};
}

}  // namespace

TEST_CASE("take past a limit on file sizes says that it is not saved, and leaves nothing of it") {
    const Desk desk;
    const std::string roof = desk.write("roof.csv",
                                        "edge,kind,trim,length,left,right,pitch\n"
                                        "A,eave,,46 ft,gable,gable,5/12\n");
    REQUIRE(desk.run({"new", "job", "--from", roof}).exit == 0);
    for (int reading = 0; reading < 5; ++reading) {  // more bytes than the messages take
        REQUIRE(desk.run({"take", "job", "A", "46 ft", "--by", std::string(200, 'x')}).exit == 0);
    }
    const fs::path journal = journal_in(desk.folder() / "job");
    const std::uintmax_t size = fs::file_size(journal);
    const std::string before = desk.run({"journal", "job"}).out;
    for (const std::uintmax_t limit : {size, size + 20}) {
        CAPTURE(limit);
        Ran refused;
        {
            const FileLimit none(limit);
            refused = desk.run({"take", "job", "A", "46 ft", "--by", std::string(200, 'x')});
        }
        CHECK(refused.exit == 1);
        CHECK(refused.err.find("Not saved.") != std::string::npos);
        CHECK(refused.err.find("the disk takes no file as large") != std::string::npos);
        CHECK(fs::file_size(journal) == size);
        CHECK(desk.run({"journal", "job"}).out == before);
    }
    CHECK(desk.run({"take", "job", "A", "46 ft"}).exit == 0);
}
