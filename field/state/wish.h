// What a touch asks for: a screen returns one of these, or nothing. None is done by the screen.
#pragma once

#include <filesystem>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "engine/record/event.h"
#include "field/state/outside.h"
#include "field/state/where.h"
#include "field/store/people.h"

namespace hemline {

/// Another screen.
struct Go {
    Where where;
};

/// A fact that is to be saved.
struct Keep {
    Fact fact;
    std::optional<Where> then = {};  ///< none: what comes next on that edge
    std::vector<EventId> supersedes = {};
};
struct UndoLast {};
/// Of what was made apart, this is to stand.
struct PickSide {
    EventId chosen;
};

struct OpenJob {
    std::filesystem::path folder;
};
struct StartJob {
    std::string name;
};
struct StartDemo {};

/// This person holds the tablet now.
struct HoldTablet {
    Person person;
};
/// The other way round than it is.
enum class Toggle { light, hand, language, units };
/// The screen has so many times the pixels in a millimetre.
struct ScaleScreen {
    float by = 1;
};
/// The screen is not measured now.
struct PutOffScale {};

/// Choosing a folder: begin, look into another, take the one that is looked into, take none.
struct ChooseFolder {
    Choosing choosing = Choosing::hand_over;
};
struct LookInto {
    std::filesystem::path folder;
};
struct UseFolder {
    std::filesystem::path folder;
};
struct LeaveFolder {};
struct ForgetCrew {};
struct PutIntoFile {};
struct TakeFile {
    std::filesystem::path file;
};
struct JoinCrewJob {
    std::string job;  ///< in the crew folder
};

/// What the machine does with files and paper.
enum class Errand {
    back_up,
    choose_file,
    ask_promise,
    print_card,
    print_templates,
    print_day,
    give_svg,
    give_dxf
};

using Wish = std::variant<Go, Keep, UndoLast, PickSide, OpenJob, StartJob, StartDemo, HoldTablet,
                          Toggle, ScaleScreen, PutOffScale, ChooseFolder, LookInto, UseFolder,
                          LeaveFolder, ForgetCrew, PutIntoFile, TakeFile, JoinCrewJob, Errand>;
using Wished = std::optional<Wish>;

}  // namespace hemline
