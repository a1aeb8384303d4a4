// Events to payload bytes and back: the only file that includes cereal. Exceptions stop here.
#include "engine/record/event_bytes.h"

#include <algorithm>
#include <array>
#include <cereal/archives/portable_binary.hpp>
#include <sstream>
#include <string>
#include <type_traits>

#include "engine/record/event_fields.h"
#include "engine/record/frame.h"
#include "engine/words/utf8.h"

namespace hemline {
namespace {

using Options = cereal::PortableBinaryOutputArchive::Options;

[[noreturn]] void refuse(const char* name, const std::string& why) {
    throw cereal::Exception(std::string(name) + ": " + why);
}

/// UTF-8 throughout, and no NUL, which would end a text early on a screen.
bool is_clean_utf8(std::string_view text) {
    for (std::size_t at = 0; at < text.size();) {
        const CodePoint point = code_point_at(text, at);
        if (point.bytes == 0 || point.value == 0) {
            return false;
        }
        at += point.bytes;
    }
    return true;
}

/// Writes fields. Checks nothing: what cannot be read back is found by reading it back.
class Writer {
  public:
    explicit Writer(std::ostream& out) : archive_(out, Options::LittleEndian()) {}

    template <class T>
    void number(const char* /*name*/, const T& value, T /*least*/ = {}, T /*most*/ = {}) {
        archive_(value);
    }
    template <class E>
    void choice(const char* /*name*/, E value, E /*last*/) {
        archive_(static_cast<std::uint8_t>(value));
    }
    void flag(const char* /*name*/, bool value) {
        archive_(static_cast<std::uint8_t>(value ? 1 : 0));
    }
    void length(const char* /*name*/, Length value) { archive_(value.nm()); }
    void text(const char* name, const std::string& value) {
        count(name, value, 1, AtMost<text_most>());
        bytes(value.data(), value.size());
    }
    template <class Many, std::size_t most>
    void count(const char* /*name*/, const Many& many, std::size_t /*size_each*/,
               AtMost<most> /*bound*/) {
        archive_(static_cast<std::uint32_t>(many.size()));
    }
    void rest(const Bytes& value) { bytes(value.data(), value.size()); }

  private:
    void bytes(const void* data, std::size_t size) {
        if (size > 0) {
            archive_(cereal::binary_data(static_cast<const std::uint8_t*>(data), size));
        }
    }
    cereal::PortableBinaryOutputArchive archive_;
};

/// Reads fields. Refuses a value out of range, and a size past the bytes left before anything is
/// allocated for it.
class Reader {
  public:
    explicit Reader(std::istream& in) : in_(in), archive_(in) {}

    [[nodiscard]] std::size_t left() const {
        return static_cast<std::size_t>(std::max<std::streamsize>(0, in_.rdbuf()->in_avail()));
    }

    template <class T>
    void number(const char* /*name*/, T& value) {
        static_assert(std::is_same_v<T, std::uint64_t> || std::is_same_v<T, std::int64_t> ||
                      std::is_same_v<T, std::uint32_t> || std::is_same_v<T, std::int32_t>);
        archive_(value);
    }
    template <class T>
    void number(const char* name, T& value, T least, T most) {
        number(name, value);
        if (value < least || value > most) {
            refuse(name, "out of range");
        }
    }
    template <class E>
    void choice(const char* name, E& value, E last) {
        const std::uint8_t raw = octet();
        if (raw > static_cast<std::uint8_t>(last)) {
            refuse(name, "no such choice");
        }
        value = static_cast<E>(raw);
    }
    void flag(const char* name, bool& value) {
        const std::uint8_t raw = octet();
        if (raw > 1) {
            refuse(name, "neither yes nor no");
        }
        value = raw == 1;
    }
    void length(const char* name, Length& value) {
        std::int64_t nm = 0;
        number(name, nm, std::int64_t{0}, longest_readable().nm());
        value = Length::of_nm(nm);
    }
    void text(const char* name, std::string& value) {
        count(name, value, 1, AtMost<text_most>());
        bytes(value.data(), value.size());
        if (!is_clean_utf8(value)) {
            refuse(name, "not UTF-8 text");
        }
    }
    /// `most`: how many a list may hold, so that no list from a file makes unbounded work.
    template <class Many, std::size_t most>
    void count(const char* name, Many& many, std::size_t size_each, AtMost<most> /*bound*/) {
        std::uint32_t size = 0;
        archive_(size);
        if (size > left() / size_each) {
            refuse(name, "says it is longer than the event");
        }
        if (size > most) {
            const bool is_text = std::is_same_v<Many, std::string>;
            refuse(name, (is_text ? "longer than " : "more than ") + std::to_string(most) +
                             (is_text ? " bytes" : ""));
        }
        many.resize(size);
    }
    void rest(Bytes& value) {
        value.resize(left());
        bytes(value.data(), value.size());
    }

  private:
    std::uint8_t octet() {
        std::uint8_t raw = 0;
        archive_(raw);
        return raw;
    }
    void bytes(void* data, std::size_t size) {
        if (size > 0) {
            archive_(cereal::binary_data(static_cast<std::uint8_t*>(data), size));
        }
    }
    std::istream& in_;
    cereal::PortableBinaryInputArchive archive_;
};

}  // namespace

Bytes frame_of(const Event& event) {
    std::ostringstream out;
    Writer writer(out);
    Event fields_in_order = event;
    all_fields(writer, fields_in_order);
    const std::string written = out.str();
    return frame_around(
        {event.moment ? frame_version : frame_version_before, std::visit(KindNumber{}, event.fact)},
        Bytes(written.begin(), written.end()));
}

std::variant<Event, std::string> event_in(PayloadKind of, std::span<const std::uint8_t> payload) {
    // cereal accepts any first byte as the byte order; this program writes little endian only.
    if (payload.empty() || payload.front() != 1) {
        return "does not begin with the mark of little-endian bytes";
    }
    try {
        std::istringstream in(std::string(payload.begin(), payload.end()));
        Reader reader(in);
        Event event;
        event.fact = blank_fact(of.kind);
        if (of.version == frame_version) {
            event.moment.emplace();
        }
        all_fields(reader, event);
        if (reader.left() > 0) {
            return "holds more bytes than its kind has fields";
        }
        return event;
    } catch (const std::exception& refused) {
        return std::string(refused.what());
    }
}

}  // namespace hemline
