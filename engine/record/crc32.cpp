// The only file that includes zlib. Its CRC-32 is the one of journals and of zip: CRC-32/ISO-HDLC.
#include "engine/record/crc32.h"

#include <zlib.h>

#include "engine/record/event_bytes.h"

namespace hemline {

std::uint32_t crc32_of(std::span<const std::uint8_t> bytes, std::uint32_t so_far) {
    // For a null pointer zlib answers 0, whatever the CRC so far.
    return bytes.empty() ? so_far
                         : static_cast<std::uint32_t>(crc32_z(so_far, bytes.data(), bytes.size()));
}

StretchCrc::StretchCrc(std::span<const std::uint8_t> bytes) : prefix_(bytes.size() + 1) {
    for (std::size_t i = 0; i < bytes.size(); ++i) {
        prefix_[i + 1] = crc32_of(bytes.subspan(i, 1), prefix_[i]);
    }
}

std::uint32_t StretchCrc::of(std::size_t from, std::size_t size, std::uint32_t so_far) const {
    return static_cast<std::uint32_t>(
        crc32_combine(so_far ^ prefix_[from], prefix_[from + size], static_cast<z_off_t>(size)));
}

}  // namespace hemline
