// update(): news changes the session and nothing else.
#include "field/update/update.h"

#include <doctest/doctest.h>

#include "engine/words/result.h"
#include "field/state/edge_view.h"
#include "tests/field/update/made_up.h"

using namespace hemline;

namespace {

const Fact reading = ReadingTaken{"A", ReadingOf::edge, feet(31)};

/// An eave is being read: 31 ft are keyed in, and "keep" is touched.
Told keeping_a_reading() {
    Told told;
    told.open(1, job_of(1));
    told.tell(Wish{Go{{Screen::reading, "A"}}});
    told.session.drafts.reading.length.feet = "31";
    told.tell(Wish{Keep{reading}});
    return told;
}

}  // namespace

TEST_CASE("A fact is shown once it is handed over, and is called saved when the disk says so") {
    Told told = keeping_a_reading();
    REQUIRE(told.wants<deed::Append>() != nullptr);
    CHECK(told.wants<deed::Append>()->by == "Installer");
    CHECK(told.session.state.events.size() == 2);
    told.tell(news::HandedOver{1, {event_of(9, reading)}});
    CHECK(told.session.state.events.size() == 3);
    CHECK(told.session.state.job.find("A")->readings.size() == 1);
    CHECK(told.session.state.saving == Saving::under_way);
    CHECK(is_empty(told.session.drafts.reading.length));
    told.tell(news::SavesReturned{1, 1});
    CHECK(told.session.state.saving == Saving::saved);
}

TEST_CASE("A fact that is not saved goes back to its draft, with the reason") {
    Told told = keeping_a_reading();
    told.tell(news::HandedOver{1, {event_of(9, reading)}});
    told.tell(Wish{Go{{Screen::roof, {}}}});  // the crew has gone on meanwhile
    told.tell(news::SavesReturned{1, 0, Problem{Text("The disk is full."), Text("Make room.")},
                                  job_of(1)});
    CHECK(told.session.state.saving == Saving::failed);
    CHECK(told.session.state.where.screen == Screen::reading);
    CHECK(told.session.drafts.reading.length.feet == "31");
    CHECK(told.session.state.notice.english().find("The disk is full.") == 0);
    CHECK(told.session.state.events == job_of(1));
    CHECK(told.session.state.job.find("A")->readings.empty());
}

TEST_CASE("What was half keyed in after a fact that is not saved comes after it again") {
    Told told = keeping_a_reading();
    told.tell(news::HandedOver{1, {event_of(9, reading)}});
    told.session.drafts.reading.length.feet = "7";  // half the second reading
    told.tell(news::SavesReturned{1, 0, Problem{Text("The disk is full."), Text("Make room.")},
                                  job_of(1)});
    REQUIRE(told.session.drafts.reading.length.feet == "31");
    told.tell(Wish{Keep{reading}});
    told.tell(news::HandedOver{1, {event_of(10, reading)}});
    CHECK(told.session.drafts.reading.length.feet == "7");
}

TEST_CASE("What was kept after a fact that is not saved is not saved either, and is named") {
    Told told = keeping_a_reading();
    told.tell(news::HandedOver{1, {event_of(9, reading)}});
    told.tell(Wish{Keep{PitchTaken{"A", rise_in_12(6)}}});
    told.tell(news::HandedOver{1, {event_of(10, PitchTaken{"A", rise_in_12(6)})}});
    told.tell(news::SavesReturned{1, 0, Problem{Text("The disk is full."), Text("Make room.")},
                                  job_of(1)});
    CHECK(told.session.state.notice.english().find("Not saved either: ") != std::string::npos);
    CHECK(told.session.open->under_way.empty());
}

TEST_CASE("A save that returns after another job was opened changes nothing") {
    for (const bool is_saved : {true, false}) {
        CAPTURE(is_saved);
        Told told = keeping_a_reading();
        told.tell(news::HandedOver{1, {event_of(9, reading)}});
        told.open(2, job_of(3));
        told.tell(Wish{Keep{PitchTaken{"B", rise_in_12(4)}}});
        told.tell(news::HandedOver{2, {event_of(10, PitchTaken{"B", rise_in_12(4)})}});
        const State before = told.session.state;
        news::SavesReturned late{1, 1};
        if (!is_saved) {
            late = {1, 0, Problem{Text("The disk is full."), Text("Make room.")}, job_of(1)};
        }
        told.tell(late);
        CHECK(told.deeds.empty());
        CHECK(told.session.state.events == before.events);
        CHECK(told.session.state.where == before.where);
        CHECK(told.session.state.saving == Saving::under_way);
        CHECK(told.session.state.notice == before.notice);
        CHECK(told.session.open->under_way.size() == 1);
    }
}

TEST_CASE("Plans found for a job that has changed since are not shown") {
    Told told;
    told.open(1, job_of(1));
    const int search = told.session.search;
    told.tell(news::ChoicesFound{search - 1, std::vector<PlanChoice>(2), true});
    CHECK(told.session.state.choices.empty());
    CHECK_FALSE(told.session.state.looking);
    told.tell(news::ChoicesFound{search, std::vector<PlanChoice>(2), true});
    CHECK(told.session.state.choices.size() == 2);
    CHECK(told.session.state.looking);
}

TEST_CASE("Who holds the tablet is asked before the first write, whatever it is") {
    const Wish writes[] = {Keep{reading}, UndoLast{}, PickSide{{1, 1}}, StartJob{"A roof"},
                           StartDemo{}};
    for (const Wish& wish : writes) {
        CAPTURE(wish.index());
        Told told;
        told.session = new_session("");
        told.open(1, job_of(1));
        told.tell(Wish{Go{{Screen::reading, "A"}}});
        told.session.drafts.reading.length.feet = "31";
        told.tell(wish);
        CHECK(told.session.state.where.screen == Screen::person);
        CHECK(told.wants<deed::Append>() == nullptr);
        CHECK(told.wants<deed::OpenNew>() == nullptr);
        CHECK(told.wants<deed::OpenDemo>() == nullptr);
        told.tell(Wish{HoldTablet{{"Ada", Way::cut}}});
        CHECK(told.session.state.where == Where{Screen::reading, "A"});
        CHECK(told.session.drafts.reading.length.feet == "31");
        CHECK(told.session.state.by == "Ada");
    }
}

TEST_CASE("A key undoes only where somebody holds the tablet and nothing is half keyed in") {
    Told told;
    told.session = new_session("");
    told.open(1, job_of(2));
    told.tell(news::KeyPressed{Key::undo});
    CHECK(told.session.state.where.screen == Screen::person);
    told.tell(Wish{HoldTablet{{"Ada", Way::cut}}});
    told.session.drafts.step.count = "3";
    told.tell(news::KeyPressed{Key::undo});
    CHECK(told.wants<deed::Append>() == nullptr);
    told.session.drafts = {};
    told.tell(news::KeyPressed{Key::undo});
    REQUIRE(told.wants<deed::Append>() != nullptr);
    CHECK(told.wants<deed::Append>()->supersedes == std::vector<EventId>{{1, 3}});
}

TEST_CASE("A job whose beginning is not saved is closed again, and its name stays keyed in") {
    Told told;
    told.tell(Wish{Go{{Screen::person, {}}}});
    told.session.drafts.person.name.letters = "Barn";
    told.tell(Wish{StartJob{"Barn"}});
    REQUIRE(told.wants<deed::OpenNew>() != nullptr);
    told.tell(news::Opened{1, {}, 1, {}, opened_for::NewJob{"Barn"}});
    REQUIRE(told.wants<deed::Append>() != nullptr);
    told.tell(news::HandedOver{1, {event_of(1, JobStarted{"Barn", "common practice"})}});
    CHECK(told.session.state.where.screen == Screen::add_edge);
    told.tell(
        news::SavesReturned{1, 0, Problem{Text("The disk is full."), Text("Make room.")}, {}});
    CHECK(told.wants<deed::Close>() != nullptr);
    CHECK_FALSE(told.session.open);
    CHECK(told.session.state.where.screen == Screen::person);
    CHECK(told.session.drafts.person.name.letters == "Barn");
}

TEST_CASE("Only who holds the tablet to check off checks an edge off: others hand it on") {
    Told told;
    told.open(1, job_of(1));
    const Wish tick = Keep{EdgeFinished{"A", ""}};
    told.tell(Wish{Go{{Screen::steps, "A"}}});
    for (const Way way : {Way::cut, Way::learn}) {
        told.tell(Wish{HoldTablet{{"Sam", way}}});
        told.tell(Wish{Go{{Screen::steps, "A"}}});
        told.tell(tick);
        CHECK(told.wants<deed::Append>() == nullptr);
        CHECK(told.session.state.where.screen == Screen::person);
        told.tell(Wish{Go{{Screen::tablet, {}}}});  // nothing is lost on the way
        told.tell(Wish{Go{{Screen::person, {}}}});
        CHECK(told.session.state.where.screen == Screen::person);
    }
    told.tell(Wish{HoldTablet{{"Ben", Way::tick_off}}});
    CHECK(told.session.state.where == Where{Screen::steps, "A"});
    told.tell(tick);
    CHECK(told.wants<deed::Append>() == nullptr);  // nothing is cut: he lets that stand first
    CHECK(told.session.state.where.screen == Screen::look);
    std::uint32_t number = 20;
    const EdgeWork& work = *told.session.state.job.find("A");
    for (const EdgeValue& value : not_accepted(values_on(told.session.state, work))) {
        const Fact stands = ValueAccepted{"A", value.key};
        told.tell(Wish{Keep{stands}});
        told.tell(news::HandedOver{1, {event_of(number++, stands)}});
    }
    CHECK(number > 20);
    told.tell(tick);
    REQUIRE(told.wants<deed::Append>() != nullptr);
    CHECK(told.wants<deed::Append>()->by == "Ben");
    told.tell(Wish{HoldTablet{{"Sam", Way::cut}}});
    told.tell(Wish{Go{{Screen::steps, "A"}}});
    told.tell(tick);
    CHECK(told.session.state.notice.english().find("Hand the tablet to Ben") == 0);
}
