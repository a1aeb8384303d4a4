// Says when something new is in a folder, without polling it (inotify).
#pragma once

#include <filesystem>

namespace hemline {

class CrewWatch {
  public:
    /// Watches for files that are closed after writing or moved into the folder. Where the system
    /// cannot watch, changed() is true each time it is asked.
    explicit CrewWatch(const std::filesystem::path& folder);
    CrewWatch(const CrewWatch&) = delete;
    CrewWatch& operator=(const CrewWatch&) = delete;
    ~CrewWatch();

    /// Whether anything came since the last call. Never waits.
    [[nodiscard]] bool changed();
    /// Readable when something came: for a loop that sleeps until then. −1: cannot watch.
    [[nodiscard]] int file() const { return file_; }

  private:
    int file_;
};

}  // namespace hemline
