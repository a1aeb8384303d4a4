// What a touch asks for: a screen returns one of these, or nothing. update() does it, never the
// screen.
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
    bool leaves_draft = false;  ///< what is half keyed in there was not what was kept
};
/// Facts that a single touch says, saved one after the other.
struct KeepAll {
    std::vector<Fact> facts;  ///< at least one
    std::optional<Where> then = {};
};
struct UndoLast {};
/// Where tablets disagree, this side is to stand.
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
/// Switches it over.
enum class Toggle { light, hand, language, units };
/// The crew's word for a thing, in the language that is spoken.
struct SayWord {
    std::string thing, word;
};
/// Multiplies the number of pixels in a millimeter.
struct ScaleScreen {
    float by = 1;
};
/// The screen is not to be measured now.
struct PutOffScale {};

/// Choosing a folder: begin, go to another, take the one shown, or cancel.
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

/// What the machine is asked to do with files and paper.
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

using AnyWish =
    std::variant<Go, Keep, KeepAll, UndoLast, PickSide, OpenJob, StartJob, StartDemo, HoldTablet,
                 Toggle, SayWord, ScaleScreen, PutOffScale, ChooseFolder, LookInto, UseFolder,
                 LeaveFolder, ForgetCrew, PutIntoFile, TakeFile, JoinCrewJob, Errand>;
/// A class, so that copying it is compiled once, in wish.cpp.
struct Wish : AnyWish {
    using AnyWish::AnyWish;
    Wish(const Wish&);
    Wish(Wish&&) noexcept;
    Wish& operator=(const Wish&);
    Wish& operator=(Wish&&) noexcept;
    ~Wish();
};
using Wished = std::optional<Wish>;

}  // namespace hemline
