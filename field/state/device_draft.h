// Drafts of the device's screens: the screen being measured, and the notice being read.
#pragma once

#include <cstddef>
#include <optional>

namespace hemline {

struct CalibrateDraft {
    float px_per_mm = 0;   ///< 0: not begun
    bool lay_card = true;  ///< it is measured by a bank card, or by the tape
};

struct NoticesDraft {
    std::optional<std::size_t> part;  ///< the part of the program whose notice is shown
};

struct DeviceDrafts {
    CalibrateDraft calibrate;
    NoticesDraft notices;
};

}  // namespace hemline
