// Drafts of the device's screens: its screen being measured, the notice that is read.
#pragma once

#include <cstddef>
#include <optional>

namespace hemline {

struct CalibrateDraft {
    float px_per_mm = 0;   ///< 0: not begun
    bool lay_card = true;  ///< it is measured by a bank card, or by the tape
};

struct NoticesDraft {
    std::optional<std::size_t> part;  ///< of what the program is made of: whose notice is read
};

struct DeviceDrafts {
    CalibrateDraft calibrate;
    NoticesDraft notices;
};

}  // namespace hemline
