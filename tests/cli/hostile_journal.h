// Writes journals byte by byte as docs/journal_format.md has them (version 1), whatever is in them:
// every frame checks out.
#pragma once

#include <array>
#include <cstdint>
#include <filesystem>
#include <fstream>
#include <string>
#include <vector>

#include "tests/cli/frames.h"

namespace hemline::test {

/// Fields of a payload, little endian.
class Payload {
  public:
    Payload& number(std::uint64_t value, int bytes) {
        for (int i = 0; i < bytes; ++i) {
            bytes_ += static_cast<char>(value >> (8 * i) & 0xFF);
        }
        return *this;
    }
    Payload& octet(int value) { return number(static_cast<std::uint64_t>(value), 1); }
    Payload& length(std::int64_t nm) { return number(static_cast<std::uint64_t>(nm), 8); }
    Payload& text(const std::string& words) {
        number(words.size(), 4);
        bytes_ += words;
        return *this;
    }
    [[nodiscard]] const std::string& bytes() const { return bytes_; }

  private:
    std::string bytes_;
};

class HostileJournal {
  public:
    explicit HostileJournal(std::uint64_t device = 0x1111) : device_(device) {
        event(1, Payload().text("Invented house").text("common practice"));
    }

    /// One event; the numbers of those that it supersedes.
    std::uint32_t event(int kind, const Payload& fields,
                        const std::vector<std::uint32_t>& supersedes = {}) {
        ++sequence_;
        event_as({device_, sequence_}, kind, fields, supersedes);
        return sequence_;
    }
    /// By a tablet and under a number that another event may have too.
    void event_as(FrameId id, int kind, const Payload& fields,
                  const std::vector<std::uint32_t>& supersedes = {}) {
        Payload payload;
        payload.octet(1).number(id.device, 8).number(id.sequence, 4);
        payload.number(1'700'000'000'000 + ++events_, 8).number(0, 4).text("Ada");
        payload.number(supersedes.size(), 4);
        for (const std::uint32_t number : supersedes) {
            payload.number(device_, 8).number(number, 4);
        }
        frame(kind, payload.bytes() + fields.bytes());
    }
    /// A frame round any bytes.
    void frame(int kind, const std::string& payload) {
        Payload head;
        head.number(1, 2).number(static_cast<std::uint64_t>(kind), 2).number(payload.size(), 4);
        bytes_ += "\xFEHEM" + head.bytes();
        bytes_ += Payload().number(crc_of(head.bytes() + payload), 4).bytes() + payload;
    }
    /// An eave between gables under 5/12, free to run out, read twice.
    void eave(const std::string& id, std::int64_t nm) {
        Payload edge;
        edge.text(id).octet(0).text("").octet(0).octet(0);  // kind, trim, left, right
        edge.octet(1).octet(0).length(5'000'000);           // pitch
        edge.octet(0).octet(0).octet(2).octet(0).octet(0);  // first, seam, looks, fascia, wrap
        edge.octet(0).octet(0).text("").text("").octet(0);  // face, flange, metal, colour, thick
        edge.octet(0).octet(0).octet(0);                    // pitch2, corners
        event(2, edge);
        read(id, nm, {read(id, nm)});
    }
    std::uint32_t read(const std::string& edge, std::int64_t nm,
                       const std::vector<std::uint32_t>& supersedes = {}) {
        return event(3, Payload().text(edge).octet(0).length(nm), supersedes);
    }
    void house() {
        for (int i = 0; i < 4; ++i) {
            eave(std::string(1, static_cast<char>('A' + i)), 14'020'800'000 + i * 914'400'000LL);
        }
    }
    void save(const std::filesystem::path& job) const {
        std::filesystem::create_directories(job);
        std::array<char, 40> name{};
        std::snprintf(name.data(), name.size(), "%016llx.journal",
                      static_cast<unsigned long long>(device_));
        std::ofstream(job / name.data(), std::ios::binary) << bytes_;
    }

  private:
    std::uint64_t device_;
    std::uint32_t sequence_ = 0;
    std::uint64_t events_ = 0;
    std::string bytes_;
};

}  // namespace hemline::test
