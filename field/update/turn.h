// An update under way: the session as it will be, and the deeds so far. The news of each subject is
// handled in a separate source file.
#pragma once

#include <vector>

#include "field/update/deed.h"
#include "field/update/news.h"
#include "field/update/session.h"

namespace hemline {

struct Turn {
    Session& session;
    State& state;
    std::vector<Deed>& deeds;

    void want(Deed deed) { deeds.push_back(std::move(deed)); }
};

// update_going.cpp
void go(Turn turn, Where where);
/// Goes back to the screen that was put aside, as it was keyed in.
void go_back(Turn turn, const Aside& aside);
[[nodiscard]] Aside aside_now(Turn turn);
void tell(Turn turn, Text words);
/// What was asked for is not done, and why.
void refuse(Turn turn, Text words);
/// Adds to what is said already.
void tell_more(Turn turn, const Text& words);
void on(Turn turn, const Go& wish);
void on(Turn turn, const news::Tilted& tilted);
void on(Turn turn, const news::TimeIs& time);

// update_drafts.cpp
/// What is half keyed in here waits here, for take_up(); nothing is keyed in then.
void lay_aside(Turn turn);
/// What waits where the program is now is keyed in again.
void take_up(Turn turn);
void forget_draft_at(Turn turn, const Where& where);
/// On the open job, what waits at edges that are no longer there.
void forget_withdrawn(Turn turn);
void forget_drafts_of(Turn turn, const std::string& job);
/// The job goes on in another folder.
void move_drafts(Turn turn, const std::string& from, const std::string& to);
/// It waits for take_up().
void wait(Turn turn, LeftAt left);
void on(Turn turn, const news::LeftThere& there);

// update_plan.cpp
/// Works out everything that follows from the events.
void compute(Turn turn);
void look_for_choices(Turn turn);
void on(Turn turn, const news::ChoicesFound& found);

// update_saving.cpp
[[nodiscard]] bool is_of_open_job(Turn turn, int job);
void on(Turn turn, const Keep& wish);
void on(Turn turn, const KeepAll& wish);
/// Changes in the plan are not announced.
void keep_quietly(Turn turn, const Keep& wish);
/// All events are on the disk.
void call_saved(Turn turn);
void carry(Turn turn);
void on(Turn turn, const PickSide& wish);
void on(Turn turn, const UndoLast& wish);
void on(Turn turn, const news::HandedOver& handed);
void on(Turn turn, const news::NotHandedOver& refused);
void on(Turn turn, const news::SavesReturned& returned);
void on(Turn turn, const news::KeptWhole& kept);

// update_opening.cpp
void on(Turn turn, const OpenJob& wish);
void on(Turn turn, const StartJob& wish);
void on(Turn turn, const StartDemo& wish);
void on(Turn turn, const news::Started& started);
void on(Turn turn, const news::Opened& opened);
void on(Turn turn, const news::NotOpened& refused);
void on(Turn turn, const news::OpenAlready& open);
void on(Turn turn, const news::NotWritten& refused);
void on(Turn turn, const news::NotTakenIn& refused);

// update_outside.cpp
void look_outside(Turn turn);
void list_jobs(Turn turn);
void leave_folder(Turn turn);
void on(Turn turn, const ChooseFolder& wish);
void on(Turn turn, const LookInto& wish);
void on(Turn turn, const UseFolder& wish);
void on(Turn turn, const LeaveFolder& wish);
void on(Turn turn, const ForgetCrew& wish);
void on(Turn turn, const PutIntoFile& wish);
void on(Turn turn, const TakeFile& wish);
void on(Turn turn, const JoinCrewJob& wish);
void on(Turn turn, const news::FileChosen& chosen);
void on(Turn turn, const news::CrewCarried& carried);
void on(Turn turn, const news::NumberRefused& refused);
void on(Turn turn, const news::JobsListed& listed);
void on(Turn turn, const news::OutsideSeen& seen);
void on(Turn turn, const news::FoldersFound& found);
void on(Turn turn, const news::FolderSeen& seen);
void on(Turn turn, const news::PutIntoFileDone& done);
Text count_of_events(std::size_t n);

// update_device.cpp
void ask_who(Turn turn);
/// The same for what only the foreman may write.
void ask_foreman(Turn turn);
void on(Turn turn, Toggle toggle);
void on(Turn turn, const SayWord& wish);
void on(Turn turn, const HoldTablet& wish);
void on(Turn turn, const ScaleScreen& wish);
void on(Turn turn, const PutOffScale& wish);
void on(Turn turn, Errand errand);
void on(Turn turn, const news::Given& given);
void on(Turn turn, const news::Taken& taken);
void on(Turn turn, const news::PromiseAnswered& answered);

// update_keys.cpp
/// What going to another screen would lose: what is keyed in here, or what waits until somebody
/// says who holds the tablet.
[[nodiscard]] bool has_draft(const Session& session);
void on(Turn turn, const news::KeyPressed& pressed);

}  // namespace hemline
