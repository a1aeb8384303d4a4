#include "field/store/new_job.h"

#include <optional>

#include "engine/record/event_bytes.h"
#include "engine/record/job.h"
#include "engine/record/seen.h"
#include "engine/words/result.h"
#include "field/store/folder_draft.h"
#include "field/store/whole_file.h"
#include "field/store/writer.h"

namespace hemline {

namespace {

/// All that a journal of those facts holds.
Result<Bytes> journal_of(const std::vector<Fact>& facts, const std::string& by,
                         std::uint64_t device, std::int64_t wall_ms) {
    std::vector<Event> events;
    Seen seen;
    Bytes bytes;
    for (const Fact& fact : facts) {
        Event event{{device, static_cast<std::uint32_t>(events.size() + 1)}, {}, by, {}, fact};
        event.supersedes = seen.of(event);
        stamp(event, events, wall_ms);
        if (const auto problem = cannot_be_held(event)) {
            return *problem;
        }
        seen.add(event);
        const Bytes frame = frame_of(event);
        bytes.insert(bytes.end(), frame.begin(), frame.end());
        events.push_back(std::move(event));
    }
    return bytes;
}

}  // namespace

std::optional<Problem> cannot_be_held(const Event& event) {
    const Bytes frame = frame_of(event);
    const JournalRead back = read_journal(frame);
    if (back.events.size() == 1 && frame_of(back.events.front()) == frame) {
        return {};
    }
    const Text why = back.set_aside.empty() ? say("another one") : back.set_aside.front().why;
    return Problem{say("The journal cannot hold this: it would be {1}.", why),
                   say("Say it shorter, in plain text, with lengths that a roof has.")};
}

Result<Text> write_new_job(Disk& disk, const std::filesystem::path& folder,
                           const std::vector<Fact>& facts, const std::string& by,
                           std::uint64_t device, std::int64_t wall_ms) {
    // Everything is checked before a folder is made, so that a failure leaves nothing behind.
    if (const Result<Bytes> fits = journal_of(facts, by, device, wall_ms); !fits) {
        return fits.problem();
    }
    const auto draft = FolderDraft::begin(disk, folder);
    if (!draft) {
        return draft.problem();
    }
    const Result<std::uint64_t> writer = claim_writer((*draft)->path(), device);
    if (!writer) {
        return writer.problem();
    }
    const Result<Bytes> journal = journal_of(facts, by, *writer, wall_ms);
    if (const auto problem = write_whole_file(
            disk, (*draft)->path() / (print_device(*writer) + ".journal"), *journal)) {
        return *problem;
    }
    if (const auto problem = (*draft)->put_in_place()) {
        return *problem;
    }
    return (*draft)->cleaned() ? said_of_remains(folder) : Text();
}

}  // namespace hemline
