// `new`: starts a job, with the edges and first readings of a file.
#include <iostream>

#include "engine/handover/readings_file.h"
#include "engine/record/event_bytes.h"
#include "engine/roof/readings.h"
#include "field/store/clock.h"
#include "field/store/folder_draft.h"
#include "field/store/folders.h"
#include "field/store/journal_file.h"
#include "tools/cli/assets_here.h"
#include "tools/cli/commands.h"
#include "tools/cli/desk.h"
#include "tools/cli/input_file.h"

namespace hemline {
namespace {

/// The facts a new job opens with; says on stderr what is wrong with the file.
std::optional<std::vector<Fact>> first_facts(const NewArguments& arguments) {
    const std::filesystem::path folder = std::filesystem::path(arguments.job).lexically_normal();
    const std::filesystem::path last = folder.has_filename() ? folder : folder.parent_path();
    const std::string name = arguments.name.empty() ? last.filename().string() : arguments.name;
    std::vector<Fact> facts = {JobStarted{name, "common practice"}};
    if (arguments.readings.empty()) {
        return facts;
    }
    const std::optional<Assets> assets = assets_here();
    const auto rows =
        assets ? read_rows(arguments.readings, *assets, arguments.unit) : std::nullopt;
    if (!rows) {
        return {};
    }
    for (const EdgeReading& row : *rows) {
        if (const Text doubt = doubt_about_so_long(row.length); !doubt.empty()) {
            std::cerr << arguments.readings << ':' << row.line << ":1: " << doubt.english() << '\n';
        }
    }
    const std::vector<Fact> edges = facts_of(*rows, LengthsAre::first_readings);
    facts.insert(facts.end(), edges.begin(), edges.end());
    return facts;
}

/// Why the journal could not give a fact back as it was: a name that is no text, or far too long.
std::optional<Problem> why_not_kept(const std::vector<Fact>& facts, const std::string& by) {
    for (const Fact& fact : facts) {
        const Bytes frame = frame_of({{1, 1}, {}, by, {}, fact});
        const JournalRead back = read_journal(frame);
        if (!back.set_aside.empty() || back.events.size() != 1 ||
            frame_of(back.events.front()) != frame) {
            const Text why = back.set_aside.empty() ? Text() : back.set_aside.front().why;
            return Problem{"The journal cannot hold this: it would be " + why.english() + ".",
                           "Give names in plain text, shorter than a page."};
        }
    }
    return {};
}

/// All of the job or nothing of it. Gives back what is to be said of an earlier try's remains.
Result<Text> write_job(const NewArguments& arguments, const std::vector<Fact>& facts,
                       std::uint64_t device) {
    const auto disk = std::make_shared<Disk>();
    const auto draft = FolderDraft::begin(*disk, arguments.job);
    if (!draft) {
        return draft.problem();
    }
    (*draft)->unlock();
    const auto journal = JournalFile::open((*draft)->path(), device, Opening::new_job, disk);
    if (!journal) {
        return journal.problem();
    }
    for (const Fact& fact : facts) {
        const Result<Event> event = (*journal)->append(fact, arguments.by, {}, wall_ms());
        if (!event) {
            return event.problem();
        }
    }
    if (const auto problem = (*draft)->put_in_place()) {
        return *problem;
    }
    return (*draft)->cleaned() ? said_of_remains(arguments.job) : Text();
}

}  // namespace

Exit start_job(const NewArguments& arguments) {
    // All is checked before a folder is made, so that what is wrong leaves nothing behind.
    const std::optional<std::vector<Fact>> facts = first_facts(arguments);
    if (!facts) {
        return Exit::problem_in_input;
    }
    if (const auto problem = why_not_kept(*facts, arguments.by)) {
        return complain(arguments.job, 0, 0, *problem);
    }
    const Result<std::uint64_t> device = device_id();
    if (!device) {
        return complain("device", 0, 0, device.problem());
    }
    const Result<Text> written = write_job(arguments, *facts, *device);
    if (!written) {
        return complain(arguments.job, 0, 0, written.problem());
    }
    say_aside(*written);
    std::cout << "Saved " << facts->size() << " events in " << arguments.job << '\n';
    return Exit::fine;
}

}  // namespace hemline
