#include "field/words/shown_stream.h"

#include <algorithm>

#include "engine/words/shown_text.h"

namespace hemline {

namespace {

bool goes_on(char c) { return (static_cast<unsigned char>(c) & 0xC0U) == 0x80U; }

/// Number of bytes in a character, by its first byte; 1 where it cannot be a first byte.
std::size_t bytes_from(char first) {
    const auto lead = static_cast<unsigned char>(first);
    return lead < 0xC2 ? 1 : lead < 0xE0 ? 2 : lead < 0xF0 ? 3 : lead < 0xF5 ? 4 : 1;
}

/// How many bytes at the end may be the beginning of a character whose rest is still to come.
std::size_t begun_at_end(std::string_view text) {
    const std::size_t last = std::min<std::size_t>(text.size(), 3);
    for (std::size_t back = 1; back <= last; ++back) {
        const char c = text[text.size() - back];
        if (!goes_on(c)) {
            return bytes_from(c) > back ? back : 0;
        }
    }
    return 0;
}

}  // namespace

ShownStream::ShownStream(std::ostream& out) : out_(out), to_(out.rdbuf(this)) {}

ShownStream::~ShownStream() {
    const std::string rest = shown_lines(begun_);
    to_->sputn(rest.data(), static_cast<std::streamsize>(rest.size()));
    to_->pubsync();
    out_.rdbuf(to_);
}

bool ShownStream::put(std::string_view text) {
    begun_ += text;
    const std::size_t whole = begun_.size() - begun_at_end(begun_);
    const std::string shown = shown_lines(std::string_view(begun_).substr(0, whole));
    begun_.erase(0, whole);
    return to_->sputn(shown.data(), static_cast<std::streamsize>(shown.size())) ==
           static_cast<std::streamsize>(shown.size());
}

ShownStream::int_type ShownStream::overflow(int_type c) {
    if (traits_type::eq_int_type(c, traits_type::eof())) {
        return traits_type::not_eof(c);
    }
    const char one = traits_type::to_char_type(c);
    return put({&one, 1}) ? c : traits_type::eof();
}

std::streamsize ShownStream::xsputn(const char* text, std::streamsize size) {
    return put({text, static_cast<std::size_t>(size)}) ? size : 0;
}

int ShownStream::sync() { return to_->pubsync(); }

}  // namespace hemline
