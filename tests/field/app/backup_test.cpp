// A job saved to a file and read from a file, and a piece on paper, on a machine that can share
// files.
#include <doctest/doctest.h>

#include <fstream>

#include "engine/handover/job_file.h"
#include "engine/words/result.h"
#include "tests/field/app/journey.h"

using namespace hemline;

namespace {

/// A machine that takes files and paper, and what it was given.
struct BackupTablet {
    explicit BackupTablet(bool keeps_later = false) {
        AppOptions options;
        options.jobs_folder = folder.path() / "jobs";
        options.device = 0x0000'5eed'0000'0002U;
        options.wall_ms = [this] { return wall_ms += 1000; };
        options.promised = Promised::not_asked;
        options.screen.people = {{"Installer", Way::cut}};
        options.platform.give = [this](const std::string& name, std::string_view kind,
                                       const Bytes& bytes) -> std::optional<Problem> {
            if (refuses) {
                return Problem{Text("No downloads here."), Text("Allow them.")};
            }
            given.emplace_back(name, std::string(kind), bytes);
            return {};
        };
        options.platform.choose = [this] { ++asked; };
        options.platform.print = [this](const std::string& page) { printed.push_back(page); };
        options.platform.ask_promise = [this] { app->promised(Promised::refused); };
        options.platform.keeps_later = keeps_later;
        app = std::make_unique<App>(assets_read(), options);
        screen = std::make_unique<Harness>([this](Ui& ui) { app->draw(ui); });
    }
    std::filesystem::path put(const std::string& name, const Bytes& bytes) const {
        const std::filesystem::path file = folder.path() / name;
        std::ofstream(file, std::ios::binary)
            .write(reinterpret_cast<const char*>(bytes.data()),
                   static_cast<std::streamsize>(bytes.size()));
        return file;
    }
    void take(const std::filesystem::path& file) {
        app->take_file(file);
        screen->frames();
    }
    [[nodiscard]] bool says(const std::string& words) const {
        return app->state().notice.english().find(words) != std::string::npos;
    }

    struct Given {
        Given(std::string n, std::string k, Bytes b)
            : name(std::move(n)), kind(std::move(k)), bytes(std::move(b)) {}
        std::string name, kind;
        Bytes bytes;
    };
    TemporaryFolder folder;
    std::int64_t wall_ms = 1'760'000'000'000;
    bool refuses = false;
    int asked = 0;
    std::vector<Given> given;
    std::vector<std::string> printed;
    std::unique_ptr<App> app;
    std::unique_ptr<Harness> screen;
};

/// All events as the journal writes them.
Bytes record_of(const BackupTablet& tablet) {
    Bytes bytes;
    for (const Event& event : tablet.app->state().events) {
        const Bytes frame = frame_of(event);
        bytes.insert(bytes.end(), frame.begin(), frame.end());
    }
    return bytes;
}

}  // namespace

TEST_CASE(
    "A backup holds the whole job, its age is on the screen, and another tablet takes it in") {
    BackupTablet tablet;
    tablet.screen->tap_all({"demo", "backup"});
    CHECK(tablet.app->state().backed_up == "Never backed up to a file.");
    tablet.screen->tap("back up");
    REQUIRE(tablet.given.size() == 1);
    CHECK(tablet.given[0].kind == "application/zip");
    CHECK(tablet.app->state().backed_up == "Last backup just now; all is in it.");
    const auto journals = unpack_job(tablet.given[0].bytes);
    REQUIRE(journals.ok());

    BackupTablet other;
    other.take(other.put("roof.hemline.zip", tablet.given[0].bytes));
    CHECK(other.says("roof.hemline.zip is taken in"));
    CHECK(record_of(other) == record_of(tablet));
    CHECK(other.app->state().backed_up == "Never backed up to a file.");
    other.take(other.put("again.zip", tablet.given[0].bytes));
    CHECK(other.says("0 new entries"));
    CHECK(record_of(other) == record_of(tablet));
    CHECK(other.app->state().jobs.size() <= 1);
}

TEST_CASE("A backup that nobody took is said, and counts for none") {
    BackupTablet tablet;
    tablet.screen->tap_all({"demo", "backup"});
    tablet.refuses = true;
    tablet.screen->tap("back up");
    CHECK(tablet.says("No downloads here. Allow them."));
    CHECK(tablet.app->state().backed_up == "Never backed up to a file.");
}

TEST_CASE("A file that is no job file is refused by name, and the open job goes on") {
    BackupTablet tablet;
    tablet.screen->tap("demo");
    const Bytes before = record_of(tablet);
    tablet.take(tablet.put("holiday.zip", {'P', 'K', 3, 4, 0, 0}));
    CHECK(tablet.says("\"holiday.zip\" is not taken in."));
    CHECK(record_of(tablet) == before);
    tablet.screen->tap("edge A");
    CHECK(tablet.app->state().where.screen == Screen::reading);
}

TEST_CASE("Where a machine keeps later, a job taken in is saved only when it says so") {
    BackupTablet from;
    from.screen->tap_all({"demo", "backup", "back up"});
    BackupTablet tablet(true);
    const auto file = tablet.put("roof.zip", from.given[0].bytes);
    tablet.take(file);
    CHECK(tablet.app->state().saving == Saving::under_way);
    tablet.app->kept_whole({});
    CHECK(tablet.app->state().saving == Saving::saved);

    BackupTablet full(true);
    full.take(full.put("roof.zip", from.given[0].bytes));
    full.app->kept_whole(Problem{Text("No room."), Text("Make some.")});
    CHECK(full.app->state().where.screen == Screen::jobs);
    CHECK(full.app->state().saving == Saving::failed);
    CHECK(full.app->state().events.empty());
    CHECK(full.says("not taken in. No room. Make some."));
}

TEST_CASE(
    "The picker is asked for from the jobs and from the backup, and a refused promise is told") {
    BackupTablet tablet;
    tablet.screen->tap("choose file");
    tablet.screen->tap_all({"demo", "backup", "choose file"});
    CHECK(tablet.asked == 2);
    tablet.screen->tap("ask promise");
    CHECK(tablet.app->state().promised == Promised::refused);
}

TEST_CASE("Paper speaks as the tablet does") {
    BackupTablet tablet;
    tablet.screen->tap_all({"language", "demo", "person Foreman", "day", "print day"});
    REQUIRE(tablet.printed.size() == 1);
    const auto has = [&](const char* words) {
        return tablet.printed.front().find(words) != std::string::npos;
    };
    CHECK(has("<html lang=\"es\">"));
    CHECK(has("<h1>Hoja del día, "));
    CHECK(has("Capataz: "));
    CHECK_FALSE(has("Foreman: "));
}

TEST_CASE("Paper tells lengths on the job's marks, in both languages") {
    Edge eave;
    eave.id = "A";
    Bytes journal;
    std::vector<Event> events;
    for (const Fact& fact :
         std::vector<Fact>{JobStarted{"Invented shed", "common practice"}, EdgeAdded{eave},
                           RuleSet{"cut_grid", "1 mm"},
                           PieceCut{"A", TrimRole::main, 1, feet(5), {feet(10), {}}}}) {
        Event event{{7, static_cast<std::uint32_t>(events.size() + 1)}, {}, "Ada", {}, fact};
        stamp(event, events, 1'760'000'000'000);
        const Bytes frame = frame_of(event);
        journal.insert(journal.end(), frame.begin(), frame.end());
        events.push_back(std::move(event));
    }
    for (const bool spanish : {false, true}) {
        BackupTablet tablet;
        if (spanish) {
            tablet.screen->tap("language");
        }
        tablet.take(tablet.put("shed.zip", *pack_job({{{7, journal}}, {}}, {})));
        tablet.screen->tap_all({"person Foreman", "day", "print day"});
        REQUIRE(tablet.printed.size() == 1);
        CHECK(tablet.printed.front().find("1524 mm") != std::string::npos);
        CHECK(tablet.printed.front().find("5 ft") == std::string::npos);
    }
}

TEST_CASE("The day sheet is printed where there is a printer") {
    BackupTablet tablet;
    tablet.screen->tap_all({"demo", "person Foreman", "day", "print day"});
    REQUIRE(tablet.printed.size() == 1);
    CHECK(tablet.printed.front().find("<h1>Day sheet, ") != std::string::npos);
    CHECK(tablet.printed.front().find("Heron Lane") != std::string::npos);
}
