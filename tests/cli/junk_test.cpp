// Junk in a crew folder under names of segments: it costs neither memory nor what is real.
#include <doctest/doctest.h>

#include <filesystem>
#include <fstream>

#include "tests/cli/program.h"

using namespace hemline::test;

namespace {

namespace fs = std::filesystem;

constexpr std::uintmax_t mib = std::uintmax_t{1} << 20;

/// The sanitizers keep what was given back for a while, and shadow all of it.
#ifdef __SANITIZE_ADDRESS__
constexpr std::int64_t peak_most_kib = 1'000'000;
#else
constexpr std::int64_t peak_most_kib = 160 * 1024;
#endif

std::string junk_name(int number, const std::string& crc) {
    return "00000000000000ba-0000" + std::to_string(10 + number) + "-" + crc + ".hemline";
}

/// As large as 60 MiB of zeros, of which the disk keeps none, and 15 MiB of beginnings of frames;
/// all with the checksum that their names say (by zlib's crc32).
void put_junk(const fs::path& folder) {
    for (int number = 0; number < 20; ++number) {
        const fs::path zeros = folder / junk_name(number, "d2c6e40b");
        std::ofstream(zeros).close();
        fs::resize_file(zeros, 60 * mib);
    }
    std::string beginnings;
    while (beginnings.size() < 15 * mib) {
        beginnings += "\xFEHEM";
    }
    for (int number = 20; number < 26; ++number) {
        std::ofstream(folder / junk_name(number, "e6c7a2ae"), std::ios::binary) << beginnings;
    }
}

}  // namespace

TEST_SUITE_BEGIN("large");

TEST_CASE("carry and joining pass over 26 junk segments, 1.3 GB, within 160 MB") {
    const Desk desk;
    const std::string roof = desk.write(
        "roof.csv", "edge,kind,trim,length,left,right,pitch\nA,eave,,46 ft,gable,gable,5/12\n");
    REQUIRE(desk.run({"new", "one", "--from", roof}).exit == 0);
    fs::create_directories(desk.folder() / "crew");
    REQUIRE(desk.run({"carry", "one", "crew"}).exit == 0);
    put_junk(fs::directory_iterator(desk.folder() / "crew")->path());
    const Ran joined = desk.run({"carry", "two", "crew"});
    CHECK_MESSAGE(joined.exit == 0, joined.err);
    CHECK(joined.peak_kib < peak_most_kib);
    REQUIRE(desk.run({"take", "two", "A", "46 ft"}).exit == 0);
    REQUIRE(desk.run({"carry", "two", "crew"}).exit == 0);
    const Ran carried = desk.run({"carry", "one", "crew"});
    CHECK(carried.out == "Took in 1 events, gave out 0\n");
    CHECK(carried.peak_kib < peak_most_kib);
    MESSAGE("joining took " << joined.peak_kib << " kB, carrying " << carried.peak_kib << " kB");
}

TEST_SUITE_END();
