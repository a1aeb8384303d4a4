// What a job was opened for: decides what is shown and said once it is open.
#pragma once

#include <memory>
#include <string>
#include <variant>

#include "engine/words/result.h"
#include "field/state/left_off.h"
#include "field/store/job_carrying.h"

namespace hemline {

namespace opened_for {

struct Touch {};
struct NewJob {
    std::string name;
};
struct Demo {};
/// This tablet writes on under another number.
struct NewNumber {};
struct OtherFolder {
    WentOn went_on;
};
/// It was taken in, or is opened again because nothing was taken in.
struct TakenIn {
    Result<hemline::TakenIn> taken;
    std::string file = {};  ///< its name; empty: by hand, on the hand-over screen
};
/// The program was left in this job.
struct GoingBack {
    std::shared_ptr<const LeftAt> left;
};

}  // namespace opened_for

using OpenedFor =
    std::variant<opened_for::Touch, opened_for::NewJob, opened_for::Demo, opened_for::NewNumber,
                 opened_for::OtherFolder, opened_for::TakenIn, opened_for::GoingBack>;

}  // namespace hemline
