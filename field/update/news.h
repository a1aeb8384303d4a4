// What update() is told: what a touch asks for, and the results of deeds. Times come with the news.
#pragma once

#include <cstdint>
#include <filesystem>
#include <memory>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "engine/measure/tilt.h"
#include "engine/plan/plan.h"
#include "field/state/left_off.h"
#include "field/state/state.h"
#include "field/state/wish.h"
#include "field/store/backup_note.h"
#include "field/store/job_carrying.h"
#include "field/store/job_folder.h"
#include "field/touch/keys.h"
#include "field/update/opened_for.h"

namespace hemline {

/// `job`: OpenedJob::number. News of a job that is no longer the open one changes nothing.
namespace news {

/// The program starts, with that job if a job is named.
struct Started {
    std::optional<std::filesystem::path> job;
};
/// The program was left there, some time ago.
struct LeftThere {
    std::shared_ptr<const LeftOff> left;
};
struct KeyPressed {
    Key key;
};
struct Tilted {
    TiltSample sample;
};
struct TimeIs {
    std::int64_t ms = 0;
};

/// Shown, and not saved yet: the event, and before it a strike if that had to go first.
struct HandedOver {
    int job = 0;
    std::vector<Event> added;
};
struct NotHandedOver {
    int job = 0;
    Problem problem;
    std::vector<Event> events;  ///< all that stand
};
/// How many of the events under way are saved; the next may have failed, and with it all after it.
struct SavesReturned {
    int job = 0;
    std::size_t saved = 0;
    std::optional<Problem> problem = {};
    std::vector<Event> events = {};  ///< all that stand, where there is a problem
};
/// Whether files that were put in place as a whole are kept.
struct KeptWhole {
    std::optional<Problem> problem;
};

struct Opened {
    int job = 0;
    JobRecord record;
    std::uint64_t writer = 0;
    std::optional<BackupNote> backup;
    OpenedFor what_for;
};
/// `closed`: nothing is open now.
struct NotOpened {
    Problem problem;
    bool closed = false;
    std::optional<std::filesystem::path> stuck;  ///< it may go on in another folder
    OpenedFor what_for;
};
struct OpenAlready {
    OpenedFor what_for;
};
struct NotWritten {
    Problem problem;
};
struct NotTakenIn {
    Problem problem;
    bool by_hand = false;
};
struct NumberRefused {
    Problem problem;
};
/// A job file was chosen outside the screens.
struct FileChosen {
    std::filesystem::path file;
};

struct CrewCarried {
    int job = 0;
    std::size_t taken_in = 0, given_out = 0;
    std::optional<Problem> problem;
    bool number_used_elsewhere = false;
    std::int64_t now_ms = 0;
    std::vector<Event> events = {};  ///< all of the job, where some were taken in
};

struct JobsListed {
    std::vector<std::filesystem::path> jobs;
    std::optional<Problem> problem;  ///< why there may be more
};
struct OutsideSeen {
    std::vector<std::filesystem::path> files;
    std::vector<JobInCrew> in_crew;
    std::vector<Problem> problems;
};
struct FoldersFound {
    std::vector<std::filesystem::path> begin;
    FolderView view;
    std::optional<Problem> problem;
};
struct FolderSeen {
    FolderView view;
};
struct PutIntoFileDone {
    Result<FilePut> put;
};

struct ChoicesFound {
    int search = 0;
    std::optional<std::vector<PlanChoice>> choices;  ///< nothing: as before
    bool under_way = false;
};

/// A file was given to the machine, which took it, will answer later (`later`), or refused it.
struct Given {
    Text words;
    std::optional<BackupNote> backup = {};  ///< it is a backup, and was not refused
    bool later = false;
};
/// What happened to the file that was given last.
struct Taken {
    std::optional<Problem> problem;
};
struct PromiseAnswered {
    Promised promised;
};
/// To be read on the screen, in place of what is there, or after it.
struct Told {
    Text words;
};
struct Added {
    Text words;
};

}  // namespace news

using AnyNews =
    std::variant<Wish, news::Started, news::LeftThere, news::KeyPressed, news::Tilted, news::TimeIs,
                 news::HandedOver, news::NotHandedOver, news::SavesReturned, news::KeptWhole,
                 news::Opened, news::NotOpened, news::OpenAlready, news::NotWritten,
                 news::NotTakenIn, news::NumberRefused, news::FileChosen, news::CrewCarried,
                 news::JobsListed, news::OutsideSeen, news::FoldersFound, news::FolderSeen,
                 news::PutIntoFileDone, news::ChoicesFound, news::Given, news::Taken,
                 news::PromiseAnswered, news::Told, news::Added>;

/// A class, so that copying it is compiled once, in news.cpp.
struct News : AnyNews {
    using AnyNews::AnyNews;
    News(const News&);
    News(News&&) noexcept;
    News& operator=(const News&);
    News& operator=(News&&) noexcept;
    ~News();
};

}  // namespace hemline
