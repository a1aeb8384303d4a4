// A stream that lets only text through to a terminal: everything written is passed through
// shown_lines.
#pragma once

#include <ostream>
#include <streambuf>
#include <string>

namespace hemline {

/// While it lives, everything written to the stream passes through it. JSON stays JSON: what it
/// changes inside a string, a JSON reader changes back.
class ShownStream : std::streambuf {
  public:
    explicit ShownStream(std::ostream& out);
    ~ShownStream() override;
    ShownStream(const ShownStream&) = delete;
    ShownStream& operator=(const ShownStream&) = delete;

  private:
    int_type overflow(int_type c) override;
    std::streamsize xsputn(const char* text, std::streamsize size) override;
    int sync() override;
    bool put(std::string_view text);

    std::ostream& out_;
    std::streambuf* to_;
    std::string begun_;  ///< the first bytes of an incomplete character
};

}  // namespace hemline
