// A stream that lets nothing through to a terminal but text: what goes out is as shown_lines shows
// it.
#pragma once

#include <ostream>
#include <streambuf>
#include <string>

namespace hemline {

/// While it lives, all that is written to the stream passes through it. JSON stays JSON: what it
/// changes inside a string is what a reader of JSON turns back.
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
    std::string begun_;  ///< the first bytes of a character that is not yet whole
};

}  // namespace hemline
