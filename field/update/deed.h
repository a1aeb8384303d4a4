// What update() wants done outside: files, folders, settings, the search for better plans. The
// result of a deed comes back as news ("─▶").
#pragma once

#include <filesystem>
#include <memory>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "field/state/left_off.h"
#include "field/state/wish.h"
#include "field/store/backup_note.h"
#include "field/store/kept_folders.h"
#include "field/store/screen_scale.h"

namespace hemline {

/// Deeds that open, take in or send out a job first wait until everything is saved; they are not
/// done if something could not be saved.
namespace deed {

/// Hands the fact over to be saved ─▶ news::HandedOver or news::NotHandedOver.
struct Append {
    Fact fact;
    std::string by;
    std::vector<EventId> supersedes;
};
/// ─▶ news::Opened, news::NotOpened or news::OpenAlready.
struct Open {
    std::filesystem::path folder;
    std::shared_ptr<const LeftAt> left = {};  ///< where to go back to, and what was half keyed in
};
/// A new job of that name ─▶ news::Opened or news::NotOpened.
struct OpenNew {
    std::string name;
};
/// The invented roof as a new job ─▶ the same, or news::NotWritten.
struct OpenDemo {
    std::string by;
};
/// Nothing more is written to the job or carried.
struct Close {};
/// Carries the job to and from the crew folder ─▶ news::CrewCarried, now and later.
struct Carry {
    std::filesystem::path crew;
};
struct StopCarrying {};
/// Others hold events under this tablet's number ─▶ news::Opened or news::NumberRefused.
struct TakeNewNumber {};

/// ─▶ news::JobsListed.
struct ListJobs {
    std::vector<std::filesystem::path> elsewhere;  ///< jobs outside the folder of jobs
};
/// ─▶ news::OutsideSeen.
struct LookOutside {
    KeptFolders kept;
};
/// ─▶ news::FoldersFound.
struct FindFolders {
    std::optional<std::filesystem::path> used;  ///< starts there, if it exists
};
/// ─▶ news::FolderSeen.
struct LookIntoFolder {
    std::filesystem::path folder;
};
/// ─▶ news::Opened, news::NotOpened or news::Told.
struct GoOnIn {
    std::filesystem::path job, folder;
};
/// ─▶ news::PutIntoFileDone.
struct PutJobIntoFile {
    std::filesystem::path folder;
};
/// A job file, or a job of the crew folder; a file may be opened from outside the screens too
/// ─▶ news::Opened, news::NotOpened or news::NotTakenIn.
struct TakeIn {
    std::vector<std::filesystem::path> elsewhere;
    std::filesystem::path file;
    std::filesystem::path crew;
    std::string job;       ///< of the crew folder; empty: the file
    bool by_hand = false;  ///< on the screen of handing over
};

/// ─▶ news::Told when it is not kept.
struct KeepSettings {
    ScreenScale screen;
};
/// ─▶ news::Added when it is not kept.
struct KeepFolders {
    KeptFolders kept;
};

/// Looks for the plans worth choosing from ─▶ news::ChoicesFound, now and later.
struct LookForChoices {
    int search = 0;
};
struct StopSearch {};

/// ─▶ news::BackupGiven or news::Told.
struct BackUp {};
/// ─▶ news::Added when it is not written.
struct NoteBackup {
    BackupNote note;
};
/// ─▶ news::TimeIs.
struct TellTime {};
/// Does something with files and paper for what the screen shows ─▶ news::Told.
struct RunErrand {
    Errand errand;
};

}  // namespace deed

using AnyDeed =
    std::variant<deed::Append, deed::Open, deed::OpenNew, deed::OpenDemo, deed::Close, deed::Carry,
                 deed::StopCarrying, deed::TakeNewNumber, deed::ListJobs, deed::LookOutside,
                 deed::FindFolders, deed::LookIntoFolder, deed::GoOnIn, deed::PutJobIntoFile,
                 deed::TakeIn, deed::KeepSettings, deed::KeepFolders, deed::LookForChoices,
                 deed::StopSearch, deed::BackUp, deed::NoteBackup, deed::TellTime, deed::RunErrand>;

/// A class, so that copying it is compiled once, in deed.cpp.
struct Deed : AnyDeed {
    using AnyDeed::AnyDeed;
    Deed(const Deed&);
    Deed(Deed&&) noexcept;
    Deed& operator=(const Deed&);
    Deed& operator=(Deed&&) noexcept;
    ~Deed();
};

}  // namespace hemline
