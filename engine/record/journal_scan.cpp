// Reading a journal: frame after frame, and past damage to the next frame that checks out.
#include <optional>
#include <utility>

#include "engine/record/event_bytes.h"
#include "engine/record/frame.h"
#include "engine/record/frame_search.h"

namespace hemline {
namespace {

using View = std::span<const std::uint8_t>;

/// What a journal holds besides its events, in order. Neighbors that cannot be read for the same
/// reason are counted together, and so is everything past so many.
class Aside {
  public:
    void damage(std::size_t offset, std::size_t size, Text why) {
        add({offset, size, std::move(why)});
        after_event_ = 0;
    }
    /// A whole frame of an event that this program cannot read.
    void event(std::size_t offset, std::size_t size, Text why) {
        const bool listed = more_.count == 0;
        if (offset == after_event_ && offset > 0 && (!listed || all_.back().why == why)) {
            SetAside& before = listed ? all_.back() : more_;
            before.size += size;
            before.count += listed ? 1 : 0;
        } else {
            add({offset, size, std::move(why)});
        }
        after_event_ = offset + size;
    }
    /// The last of all.
    void torn(std::size_t offset, std::size_t size) {
        torn_.push_back(
            {offset, size, say("torn: the last write was not finished, or was damaged")});
    }
    [[nodiscard]] std::vector<SetAside> all() {
        for (SetAside& stretch : all_) {
            if (stretch.count > 1) {
                stretch.why = say("{1} events one after another, the first of them {2}",
                                  stretch.count, stretch.why);
            }
        }
        if (more_.count > 0) {
            more_.why =
                say("in {1} more places that hold no event this program can read", more_.count);
            all_.push_back(std::move(more_));
        }
        all_.insert(all_.end(), torn_.begin(), torn_.end());
        return std::move(all_);
    }

  private:
    void add(SetAside stretch) {
        if (all_.size() < set_aside_most) {
            all_.push_back(std::move(stretch));
            return;
        }
        more_.offset = more_.count == 0 ? stretch.offset : more_.offset;
        more_.size += stretch.size;
        ++more_.count;
    }

    std::vector<SetAside> all_, torn_;
    SetAside more_{0, 0, {}, 0};
    std::size_t after_event_ = 0;  ///< where the last unreadable stretch ends
};

void read_frame(View frame, std::size_t at, JournalRead& read, Aside& aside) {
    const FrameHeader header = header_at(frame);
    if (!is_version_known(header.of.version)) {
        aside.event(at, frame.size(),
                    say("written by another version of the program (format {1}, this one reads "
                        "{2})",
                        header.of.version, frame_version));
        return;
    }
    auto found = event_in(header.of, frame.subspan(frame_header_size));
    if (auto* event = std::get_if<Event>(&found)) {
        read.events.push_back(std::move(*event));
    } else {
        aside.event(at, frame.size(),
                    say("an event of kind {1} that this program cannot read ({2})", header.of.kind,
                        std::get<std::string>(found)));
    }
}

}  // namespace

JournalRead read_journal(View bytes) {
    JournalRead read;
    Aside aside;
    FrameSearch search(bytes);
    while (const std::optional<FramePlace> found = search.next()) {
        if (found->at > read.whole_size) {
            aside.damage(read.whole_size, found->at - read.whole_size,
                         say("damaged: no whole event can be read here"));
        }
        read_frame(bytes.subspan(found->at, found->size), found->at, read, aside);
        read.whole_size = found->at + found->size;
    }
    if (bytes.size() > read.whole_size) {
        aside.torn(read.whole_size, bytes.size() - read.whole_size);
    }
    read.set_aside = aside.all();
    return read;
}

}  // namespace hemline
