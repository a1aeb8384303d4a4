// What the machine does with files and paper for the program: a browser's downloads, its file
// picker, its printer.
#pragma once

#include <filesystem>
#include <functional>
#include <optional>
#include <string>
#include <string_view>

#include "engine/record/bytes.h"
#include "engine/words/result.h"

namespace hemline {

/// Each is empty where the machine cannot do it; then the screens do not offer it.
struct Platform {
    /// Gives a file to the person who holds the tablet. `kind`: its media type. Problem: it was not
    /// taken.
    std::function<std::optional<Problem>(const std::string& name, std::string_view kind,
                                         const Bytes& bytes)>
        give;
    /// Puts text where other programs paste from.
    std::function<void(const std::string& text)> copy;
    /// Whether a file was taken comes later, through App::given().
    bool gives_later = false;
    /// Lets a person choose a job file, which comes back through App::take_file().
    std::function<void()> choose;
    /// Prints an HTML page.
    std::function<void(const std::string& page)> print;
    /// Asks for a promise that jobs are not cleared; its answer comes through App::promised().
    std::function<void()> ask_promise;
    /// What was written is kept only once App::kept_whole() has been called.
    bool keeps_later = false;
};

}  // namespace hemline
