// Containers written byte by byte, so that they can lie: APPNOTE.TXT of the zip
// format, 4.3.7, 4.3.12 and 4.3.16.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "engine/record/event_bytes.h"

namespace hemline {

struct HostileEntry {
    std::string name;
    Bytes packed;  ///< as in the file
    std::uint16_t method = 0;
    std::uint32_t size = 0;  ///< as claimed
    std::uint32_t crc = 0;
    std::uint16_t flags = 0;
};

inline HostileEntry stored(const std::string& name, const std::string& text) {
    const Bytes bytes(text.begin(), text.end());
    return {name, bytes, 0, static_cast<std::uint32_t>(bytes.size()), crc32_of(bytes), 0};
}

inline Bytes hostile_zip(const std::vector<HostileEntry>& entries) {
    Bytes file, directory;
    const auto put = [](Bytes& into, std::uint64_t value, int size) {
        for (int i = 0; i < size; ++i) {
            into.push_back(static_cast<std::uint8_t>(value >> (8 * i)));
        }
    };
    const auto put_about = [&](Bytes& into, const HostileEntry& entry) {
        put(into, 20, 2);  // version needed
        put(into, entry.flags, 2);
        put(into, entry.method, 2);
        put(into, 0x00210000, 4);  // 1 January 1980
        put(into, entry.crc, 4);
        put(into, entry.packed.size(), 4);
        put(into, entry.size, 4);
        put(into, entry.name.size(), 2);
        put(into, 0, 2);
    };
    for (const HostileEntry& entry : entries) {
        const std::size_t at = file.size();
        put(file, 0x04034b50, 4);
        put_about(file, entry);
        file.insert(file.end(), entry.name.begin(), entry.name.end());
        file.insert(file.end(), entry.packed.begin(), entry.packed.end());
        put(directory, 0x02014b50, 4);
        put(directory, 20, 2);
        put_about(directory, entry);
        put(directory, 0, 2);
        put(directory, 0, 2);
        put(directory, 0, 2);
        put(directory, 0, 4);
        put(directory, at, 4);
        directory.insert(directory.end(), entry.name.begin(), entry.name.end());
    }
    const std::size_t at = file.size();
    file.insert(file.end(), directory.begin(), directory.end());
    put(file, 0x06054b50, 4);
    put(file, 0, 4);
    put(file, entries.size(), 2);
    put(file, entries.size(), 2);
    put(file, directory.size(), 4);
    put(file, at, 4);
    put(file, 0, 2);
    return file;
}

}  // namespace hemline
