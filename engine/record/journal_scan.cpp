// Reading a journal: frame after frame, and past damage to the next frame that checks out.
#include <optional>
#include <utility>

#include "engine/record/event_bytes.h"
#include "engine/record/frame.h"
#include "engine/record/frame_search.h"

namespace hemline {
namespace {

using View = std::span<const std::uint8_t>;

void read_frame(View frame, std::size_t at, JournalRead& read) {
    const FrameHeader header = header_at(frame);
    if (!is_version_known(header.of.version)) {
        read.set_aside.push_back({at, frame.size(),
                                  say("written by another version of the program (format {1}, this "
                                      "one reads {2})",
                                      header.of.version, frame_version)});
        return;
    }
    auto found = event_in(header.of, frame.subspan(frame_header_size));
    if (auto* event = std::get_if<Event>(&found)) {
        read.events.push_back(std::move(*event));
    } else {
        read.set_aside.push_back({at, frame.size(),
                                  say("an event of kind {1} that this program cannot read ({2})",
                                      header.of.kind, std::get<std::string>(found))});
    }
}

}  // namespace

JournalRead read_journal(View bytes) {
    JournalRead read;
    FrameSearch search(bytes);
    while (const std::optional<FramePlace> found = search.next()) {
        if (found->at > read.whole_size) {
            read.set_aside.push_back({read.whole_size, found->at - read.whole_size,
                                      say("damaged: no whole event can be read here")});
        }
        read_frame(bytes.subspan(found->at, found->size), found->at, read);
        read.whole_size = found->at + found->size;
    }
    if (bytes.size() > read.whole_size) {
        read.set_aside.push_back({read.whole_size, bytes.size() - read.whole_size,
                                  say("torn: the last write was not finished, or was damaged")});
    }
    return read;
}

}  // namespace hemline
