// A job in a single file: it comes out as it went in, and a hostile file is refused by name.
#include <doctest/doctest.h>
#include <rapidcheck.h>
#include <zlib.h>

#include <ctime>

#include "engine/handover/job_file.h"
#include "engine/handover/job_pages.h"
#include "engine/record/frame.h"
#include "engine/words/result.h"
#include "tests/engine/handover/hostile_zip.h"
#include "tests/engine/record/eave_record.h"

namespace hemline {
namespace {

Journals eave_journals() {
    Merge merge;
    const Bytes journal = journal_of(eave_record());
    merge.add(0, journal);
    return merge.journals();
}

Bytes eave_file() { return *pack_job(eave_journals(), pages_of(eave_record(), {})); }

std::string text_of(const Bytes& bytes) { return {bytes.begin(), bytes.end()}; }

const std::string journal_name = "journals/" + print_device(eave_device) + ".journal";

std::string crc_hex(const std::string& text) {
    char hex[16];
    std::snprintf(hex, sizeof hex, "%08x", crc32_of(Bytes(text.begin(), text.end())));
    return hex;
}

/// A true manifest over the entries, whatever they hold.
HostileEntry manifest_over(const std::vector<HostileEntry>& entries,
                           const std::string& version = "1", const std::string& events = "1") {
    std::string csv = "version,file,bytes,events,crc32\n";
    for (const HostileEntry& entry : entries) {
        csv += version + "," + entry.name + "," + std::to_string(entry.packed.size()) + "," +
               events + "," + crc_hex(text_of(entry.packed)) + "\n";
    }
    return stored("manifest.csv", csv);
}

/// Why a file is refused; it must be, within a second.
std::string refusal(const Bytes& file) {
    const std::clock_t begun = std::clock();  // of this program alone, however busy the machine
    const Result<Journals> read = unpack_job(file);
    CHECK(std::clock() - begun < CLOCKS_PER_SEC);
    REQUIRE_FALSE(read);
    CHECK_FALSE(read.problem().mend.empty());
    return read.problem().what.english();
}

std::string refusal(std::vector<HostileEntry> entries) { return refusal(hostile_zip(entries)); }

bool says(const std::string& text, const std::string& part) {
    INFO(text);
    const bool there = text.find(part) != std::string::npos;
    CHECK(there);
    return there;
}

TEST_CASE("A job comes out of its file as it went in, and the same job gives the same file") {
    Journals journals = eave_journals();
    journals.damage = {{1, 2, 3}, {4}};
    const auto pages = pages_of(eave_record(), {});
    const Result<Bytes> file = pack_job(journals, pages);
    REQUIRE(file);
    CHECK(*pack_job(journals, pages) == *file);
    const Result<Journals> back = unpack_job(*file);
    REQUIRE_MESSAGE(back, back.problem().what);
    CHECK(*back == journals);
    // The signature of a local header by Info-ZIP: another program sees a zip file too.
    CHECK(text_of(*file).substr(0, 4) == "PK\3\4");
}

TEST_CASE("The pages say what was read, by whom, when, in HTML and CSV") {
    const auto pages = pages_of(eave_record(), {});
    says(pages.at("job.html"), "<h1>Invented house</h1>");
    says(pages.at("job.html"), "Edge A finished: film off");
    says(pages.at("readings.csv"), "\"A\",\"edge\",\"31 ft 7 5/8 in\"");
    says(pages.at("events.csv"), print_event_id({eave_device, 1}));
    // date -u -d @1780000000
    CHECK(print_minute({1'780'000'000'000}) == "2026-05-28 20:26");
    CHECK(print_minute({0}) == "1970-01-01 00:00");
    CHECK(print_minute({951'782'400'000}) == "2000-02-29 00:00");
    CHECK(print_minute({4'107'542'399'000}) == "2100-02-28 23:59");
    CHECK(print_minute({253'402'300'799'999}) == "9999-12-31 23:59");
}

TEST_CASE(
    "A file that is no zip, cut off, or has any byte changed is refused or gives the same job") {
    says(refusal(Bytes{}), "no zip container");
    says(refusal(Bytes(1000, 'x')), "no zip container");
    const Bytes whole = eave_file();
    const Journals journals = eave_journals();
    for (std::size_t size = 0; size < whole.size(); size += 7) {
        refusal(Bytes(whole.begin(), whole.begin() + static_cast<std::ptrdiff_t>(size)));
    }
    for (std::size_t at = 0; at < whole.size(); ++at) {
        Bytes changed = whole;
        changed[at] = static_cast<std::uint8_t>(changed[at] ^ (1U << (at % 8)));
        const Result<Journals> read = unpack_job(changed);
        if (read) {  // a date, or a flag that changes nothing
            CHECK(*read == journals);
        }
    }
}

TEST_CASE("Paths that lead out, unknown names and names that are no UTF-8 are refused by name") {
    const std::string journal = text_of(journal_of(eave_record()));
    for (const std::string name :
         {"../../etc/passwd", "/etc/passwd", "journals/../../x.journal", "journals\\x.journal",
          "journals/", "aside/../x.bytes", "journals/zzzz0000a0b1c2d3.journal", "a/b/c/d/e/f/g"}) {
        const auto entry = stored(name, journal);
        const std::string what = refusal({manifest_over({entry}), entry});
        says(what, "has no place in a job file");
        says(what, "\"" + name.substr(0, 40));
    }
    const auto entry = stored("journals/\xFF\xFE.journal", journal);
    says(refusal({manifest_over({entry}), entry}), "\"journals/\uFFFD\uFFFD.journal\"");
    std::string deep;
    for (int i = 0; i < 20'000; ++i) {
        deep += "a/";
    }
    says(refusal({stored(deep, "x")}), "has no place in a job file");
}

TEST_CASE("The same name twice, another's checksum and a lying size are refused by name") {
    const auto entry = stored(journal_name, text_of(journal_of(eave_record())));
    says(refusal({manifest_over({entry}), entry, entry}), "twice");
    auto wrong = entry;
    wrong.crc ^= 1;
    says(refusal({manifest_over({entry}), wrong}), journal_name.substr(0, 20));
    auto larger = entry;
    larger.size += 1;
    says(refusal({manifest_over({entry}), larger}), journal_name.substr(0, 20));
    auto smaller = entry;
    smaller.size -= 1;
    refusal({manifest_over({entry}), smaller});
    auto secret = entry;
    secret.flags = 1;
    refusal({manifest_over({entry}), secret});
}

TEST_CASE("A manifest that is missing, from the future, wrong or not UTF-8 is refused") {
    const std::string text = text_of(journal_of(eave_record()));
    const auto entry = stored(journal_name, text);
    says(refusal({entry}), "no manifest.csv");
    says(refusal({manifest_over({entry}, "2"), entry}), "newer program: its version is \"2\"");
    says(refusal({manifest_over({entry}, "1", "3"), entry}), "manifest.csv says \"3\"");
    says(refusal({manifest_over({}), entry}), "not named in manifest.csv");
    says(refusal({manifest_over({entry, stored("job.html", "x")}), entry}), "is missing");
    says(refusal({manifest_over({entry, entry}), entry}), "twice");
    says(refusal({stored("manifest.csv", "version,\xFF\n"), entry}), "manifest.csv, line");
    says(refusal({stored("manifest.csv", std::string(2'000'000, 'x')), entry}), "manifest.csv");
    says(refusal({stored("manifest.csv", "version\n1\n"), entry}), "lacks one of");
    says(refusal({stored("manifest.csv", "version,file,bytes,events,crc32\n")}), "no journal");
}

TEST_CASE("A journal in a file that is damaged, or whose event is not UTF-8, is refused by name") {
    std::string damaged = text_of(journal_of(eave_record()));
    damaged[40] ^= 1;
    auto entry = stored(journal_name, damaged);
    says(refusal({manifest_over({entry}), entry}), "byte 0: no whole event stands there");
    Event event = eave_record().front();
    event.by = "\xC3\x28";
    entry = stored(journal_name, text_of(frame_of(event)));
    says(refusal({manifest_over({entry}), entry}), "not UTF-8 text");
}

/// `size` zeros as a raw deflate stream.
Bytes deflated_zeros(std::size_t size) {
    Bytes packed(size / 500 + 1000);
    const Bytes zeros(std::size_t{1} << 20, 0);
    z_stream stream{};
    REQUIRE(deflateInit2(&stream, 9, Z_DEFLATED, -15, 9, Z_DEFAULT_STRATEGY) == Z_OK);
    stream.next_out = packed.data();
    stream.avail_out = static_cast<uInt>(packed.size());
    for (std::size_t left = size; left > 0;) {
        const std::size_t now = std::min(left, zeros.size());
        stream.next_in = const_cast<std::uint8_t*>(zeros.data());
        stream.avail_in = static_cast<uInt>(now);
        left -= now;
        REQUIRE(deflate(&stream, left == 0 ? Z_FINISH : Z_NO_FLUSH) >= Z_OK);
    }
    packed.resize(stream.total_out);
    deflateEnd(&stream);
    return packed;
}

TEST_CASE("Bombs, huge claims and a hundred thousand entries are refused within a second") {
    const auto bomb = [](std::size_t really, std::uint32_t claimed) {
        return HostileEntry{journal_name, deflated_zeros(really), 8, claimed, 0, 0};
    };
    says(refusal({bomb(1U << 26U, 1U << 30U)}), "larger than a job file can hold");
    says(refusal({bomb(1U << 26U, 1000)}), "larger than it says");
    says(refusal({bomb(1000, 0xFFFF'FFF0U)}), "larger than a job file can hold");
    // Many that are each small enough, and together are not.
    std::vector<HostileEntry> many;
    const Bytes packed = deflated_zeros(1U << 20U);
    const Bytes zeros(std::size_t{1} << 20, 0);
    for (int i = 0; i < 60; ++i) {
        char name[64];
        std::snprintf(name, sizeof name, "journals/%016x.journal", i + 1);
        many.push_back({name, packed, 8, 1U << 20U, crc32_of(zeros), 0});
    }
    says(refusal(many), "larger than a job file can hold");
    many.clear();
    for (int i = 0; i < 60'000; ++i) {
        many.push_back(stored("job.html", ""));
    }
    says(refusal(many), "more than 4096 entries");
    says(refusal(Bytes(std::size_t{21} << 20, 0)), "larger than 20 MiB");
    // A zip within the zip is no way in either.
    const auto nested = stored(journal_name, text_of(eave_file()));
    says(refusal({manifest_over({nested}), nested}), "no whole event stands there");
}

TEST_CASE("Whatever bytes stand in a container of true checksums, it opens or is refused") {
    CHECK(rc::check([](const Bytes& manifest, const Bytes& journal) {
        const auto entry = stored(journal_name, text_of(journal));
        const Result<Journals> a = unpack_job(hostile_zip({manifest_over({entry}), entry}));
        RC_ASSERT(!a.ok() || journal.size() > 16);
        RC_ASSERT(
            !unpack_job(hostile_zip({stored("manifest.csv", text_of(manifest)), entry})).ok());
        RC_ASSERT(!unpack_job(manifest).ok());
    }));
}

}  // namespace
}  // namespace hemline
