#include "engine/handover/job_file.h"

#include <array>
#include <cstdio>
#include <string_view>

#include "engine/record/frame.h"
#include "engine/words/csv.h"
#include "engine/words/quote.h"
#include "engine/words/result.h"

namespace hemline {
namespace {

using View = std::span<const std::uint8_t>;

constexpr std::string_view journal_folder = "journals/", journal_ending = ".journal",
                           aside_folder = "aside/", aside_ending = ".bytes",
                           manifest_name = "manifest.csv";

Text mend_again() { return say("Ask for the file again: it did not arrive whole."); }

bool begins(std::string_view text, std::string_view with) {
    return text.substr(0, with.size()) == with;
}

std::string crc_text(View bytes) {
    std::array<char, 16> text{};
    std::snprintf(text.data(), text.size(), "%08x", crc32_of(bytes));
    return text.data();
}

std::string journal_name(std::uint64_t device) {
    return std::string(journal_folder) + print_device(device) + std::string(journal_ending);
}

/// The device of "journals/3f9c….journal"; none where the name has another form.
std::optional<std::uint64_t> device_of_entry(std::string_view name) {
    const std::size_t digits = 16;
    if (name.size() != journal_folder.size() + digits + journal_ending.size() ||
        !begins(name, journal_folder) ||
        name.substr(journal_folder.size() + digits) != journal_ending) {
        return {};
    }
    return parse_device(name.substr(journal_folder.size(), digits));
}

bool is_aside(std::string_view name) {
    return begins(name, aside_folder) && name.size() < 80 &&
           name.find_first_not_of("0123456789abcdefghijklmnopqrstuvwxyz-.", aside_folder.size()) ==
               std::string_view::npos &&
           name.find("..") == std::string_view::npos &&
           name.size() > aside_folder.size() + aside_ending.size() &&
           name.substr(name.size() - aside_ending.size()) == aside_ending;
}

bool is_known(const std::string& name) {
    return name == manifest_name || name == "job.html" || name == "events.csv" ||
           name == "readings.csv" || is_aside(name) || device_of_entry(name).has_value();
}

/// The frame at `at`, whole, or nothing.
View frame_here(View bytes, std::size_t at) {
    const View rest = bytes.subspan(at);
    if (!has_magic(rest) || rest.size() < frame_header_size) {
        return {};
    }
    const FrameHeader header = header_at(rest);
    if (header.length > frame_payload_most || header.length > rest.size() - frame_header_size ||
        crc32_of(rest.subspan(frame_header_size, header.length), header_crc(rest)) != header.crc) {
        return {};
    }
    return rest.first(frame_header_size + header.length);
}

/// Why a whole frame cannot be an event; empty when it is an event, or comes from a newer program.
std::string why_no_event(View frame) {
    const FrameHeader header = header_at(frame);
    if (!is_version_known(header.of.version)) {
        return {};
    }
    const auto found = event_in(header.of, frame.subspan(frame_header_size));
    const auto* why = std::get_if<std::string>(&found);
    return why == nullptr ? std::string() : *why;
}

std::string manifest_row(const std::string& name, View bytes, std::size_t events) {
    return std::to_string(job_file_version) + ',' + name + ',' + std::to_string(bytes.size()) +
           ',' + std::to_string(events) + ',' + crc_text(bytes) + '\n';
}

void put_aside(Entries& entries, View stretch) {
    const Bytes bytes(stretch.begin(), stretch.end());
    for (int number = 1;; ++number) {
        const auto [entry, is_new] =
            entries.emplace(std::string(aside_folder) + damage_name(stretch, number), bytes);
        if (is_new || entry->second == bytes) {
            return;
        }
    }
}

struct Row {
    std::string bytes, events, crc;
};
using Manifest = std::map<std::string, Row>;

Result<Manifest> read_manifest(const Entries& entries) {
    const auto found = entries.find(std::string(manifest_name));
    if (found == entries.end()) {
        return Problem{say("The file holds no manifest.csv: it is no job file."),
                       say("Choose a job file that this program packed.")};
    }
    const auto read = read_table(std::string_view(
        reinterpret_cast<const char*>(found->second.data()), found->second.size()));
    if (const auto* wrong = std::get_if<TableProblem>(&read)) {
        return Problem{say("manifest.csv, line {1}: {2}", wrong->line, wrong->what), mend_again()};
    }
    const Table& table = std::get<Table>(read);
    const auto version = table.column("version"), file = table.column("file"),
               bytes = table.column("bytes"), events = table.column("events"),
               crc = table.column("crc32");
    if (version && !table.rows.empty() &&
        table.rows[0][*version].text != std::to_string(job_file_version)) {
        return Problem{
            say("The job file was packed by a newer program: its version is {1}, this one "
                "reads {2}.",
                quoted(table.rows[0][*version].text), job_file_version),
            say("Bring this program up to date, then open the file.")};
    }
    if (!version || !file || !bytes || !events || !crc) {
        return Problem{say("manifest.csv lacks one of version, file, bytes, events, crc32."),
                       mend_again()};
    }
    Manifest manifest;
    for (const auto& row : table.rows) {
        if (!manifest
                 .emplace(row[*file].text, Row{row[*bytes].text, row[*events].text, row[*crc].text})
                 .second) {
            return Problem{say("manifest.csv names {1} twice.", quoted(row[*file].text)),
                           mend_again()};
        }
    }
    return manifest;
}

/// Whether each entry is as the manifest says, and no entry is missing or extra.
std::optional<Problem> compare(const Manifest& manifest, const Entries& entries) {
    for (const auto& [name, row] : manifest) {
        const auto entry = entries.find(name);
        if (entry == entries.end()) {
            return Problem{say("The entry {1} that manifest.csv names is missing.", quoted(name)),
                           mend_again()};
        }
        if (row.bytes != std::to_string(entry->second.size()) ||
            row.crc != crc_text(entry->second)) {
            return Problem{
                say("The entry {1} is not what manifest.csv says: {2} bytes with checksum {3}.",
                    quoted(name), row.bytes, quoted(row.crc)),
                mend_again()};
        }
    }
    for (const auto& [name, bytes] : entries) {
        if (name != manifest_name && manifest.count(name) == 0) {
            return Problem{say("The entry {1} is not named in manifest.csv.", quoted(name)),
                           mend_again()};
        }
    }
    return {};
}

std::optional<Problem> check_journal(const std::string& name, View bytes,
                                     const std::string& count) {
    std::size_t events = 0;
    for (std::size_t at = 0; at < bytes.size();) {
        const View frame = frame_here(bytes, at);
        if (frame.empty()) {
            return Problem{say("{1}, byte {2}: no whole event stands there.", quoted(name), at),
                           mend_again()};
        }
        if (const std::string why = why_no_event(frame); !why.empty()) {
            return Problem{
                say("{1}, byte {2}: the event cannot be read ({3}).", quoted(name), at, why),
                mend_again()};
        }
        at += frame.size();
        ++events;
    }
    if (count != std::to_string(events)) {
        return Problem{say("{1} holds {2} events, and manifest.csv says {3}.", quoted(name), events,
                           quoted(count)),
                       mend_again()};
    }
    return {};
}

}  // namespace

std::string damage_name(View stretch, int number) {
    return "damage-" + crc_text(stretch) + "-" + std::to_string(stretch.size()) +
           (number > 1 ? "-" + std::to_string(number) : "") + ".bytes";
}

Result<Bytes> pack_job(const Journals& journals, const std::map<std::string, std::string>& pages) {
    Entries entries;
    std::map<std::string, std::size_t> events_in;
    std::size_t size = 0;
    for (const auto& [device, bytes] : journals.of_device) {
        Bytes& whole = entries[journal_name(device)];
        for (const FrameAt& frame : read_frames(bytes).frames) {
            if (why_no_event(frame.bytes).empty()) {
                whole.insert(whole.end(), frame.bytes.begin(), frame.bytes.end());
                ++events_in[journal_name(device)];
            } else {
                put_aside(entries, frame.bytes);
            }
        }
    }
    for (const Bytes& stretch : journals.damage) {
        put_aside(entries, stretch);
    }
    for (const auto& [name, text] : pages) {
        entries[name] = Bytes(text.begin(), text.end());
    }
    std::string manifest = "version,file,bytes,events,crc32\n";
    for (const auto& [name, bytes] : entries) {
        manifest += manifest_row(name, bytes, events_in[name]);
        size += bytes.size();
    }
    entries[std::string(manifest_name)] = Bytes(manifest.begin(), manifest.end());
    const Problem too_large{say("The job is larger than a job file can hold: {1} MiB of {2}.",
                                size >> 20U, job_file_limits.unpacked >> 20U),
                            say("Carry it with a crew folder, or copy its folder.")};
    if (size + manifest.size() > job_file_limits.unpacked ||
        entries.size() > job_file_limits.entries) {
        return too_large;
    }
    Result<Bytes> file = zip_of(entries);
    return file && file->size() > job_file_limits.file ? Result<Bytes>(too_large) : file;
}

Result<Journals> unpack_job(View file) {
    Entries entries;
    if (auto problem = unzip(file, job_file_limits, is_known, entries)) {
        return *problem;
    }
    const Result<Manifest> manifest = read_manifest(entries);
    if (!manifest) {
        return manifest.problem();
    }
    if (auto problem = compare(*manifest, entries)) {
        return *problem;
    }
    Journals journals;
    for (auto& [name, bytes] : entries) {
        if (const auto device = device_of_entry(name)) {
            if (auto problem = check_journal(name, bytes, manifest->at(name).events)) {
                return *problem;
            }
            journals.of_device[*device] = std::move(bytes);
        } else if (is_aside(name)) {
            journals.damage.insert(std::move(bytes));
        }
    }
    if (journals.of_device.empty()) {
        return Problem{say("The file holds no journal: there is no job in it."), mend_again()};
    }
    return journals;
}

}  // namespace hemline
