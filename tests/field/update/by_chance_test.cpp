// Ten thousand random things happen, in any order and too late: what is saved is shown, what is
// refused never is, and nothing is signed by nobody.
#include <doctest/doctest.h>

#include <algorithm>
#include <random>

#include "tests/field/update/made_up.h"

using namespace hemline;

namespace {

/// A disk that saves or refuses as chance has it, and answers when it likes.
class World {
  public:
    explicit World(unsigned seed) : chance_(seed) { told_.session = new_session(""); }

    void happen() {
        const int what = below(10);
        if (what == 0) {
            answer_late();
        } else if (what <= 3) {
            saves_return();
        } else {
            tell(what <= 8 ? News(any_wish()) : any_news());
        }
    }

    void check() const {
        const Session& session = told_.session;
        const State& state = session.state;
        REQUIRE(state.events == (session.open ? stands_ : state.events));
        for (const EventId id : saved_) {
            REQUIRE(std::any_of(state.events.begin(), state.events.end(),
                                [id](const Event& event) { return event.id == id; }));
        }
        for (const Event& event : state.events) {
            REQUIRE(std::find(refused_.begin(), refused_.end(), event.id) == refused_.end());
        }
        const bool under_way = session.open && !session.open->under_way.empty();
        REQUIRE((under_way ? state.saving == Saving::under_way : true));
        REQUIRE((session.open ? session.open->under_way.size() : 0) == under_way_.size());
        REQUIRE((state.saving != Saving::saved || !under_way));
        REQUIRE_FALSE(session.handing);
        REQUIRE(state.job.edges.size() <= 6);
    }

    int kept = 0, not_kept = 0, asked = 0;  ///< that it happened at all

  private:
    int below(int n) { return std::uniform_int_distribution<int>(0, n - 1)(chance_); }
    bool one_in(int n) { return below(n) == 0; }
    std::string any_edge() { return std::string(1, static_cast<char>('A' + below(7))); }
    Screen any_screen() { return static_cast<Screen>(below(32)); }

    Fact any_fact() {
        switch (below(6)) {
            case 0:
                return EdgeAdded{eave(std::string(1, static_cast<char>('A' + below(6))))};
            case 1:
                return ReadingTaken{any_edge(), ReadingOf::edge, feet(1 + below(60))};
            case 2:
                return PitchTaken{any_edge(), rise_in_12(1 + below(12))};
            case 3:
                return EdgeTakenOff{any_edge()};
            case 4:
                return StruckFor{{1, static_cast<std::uint32_t>(below(40))}, StrikeReason::by_hand};
            default:
                return LapChosen{any_edge(), inches(2 + below(4))};
        }
    }

    Wish any_wish() {
        switch (below(14)) {
            case 0:
                return UndoLast{};
            case 1:
                return PickSide{{1, static_cast<std::uint32_t>(below(20))}};
            case 2:
                return one_in(4) ? Wish(OpenJob{"/jobs/b"}) : Wish(StartJob{"Barn"});
            case 3:
                return one_in(4)
                           ? Wish(HoldTablet{{"Ada", ways[static_cast<std::size_t>(below(3))]}})
                           : Wish(LeaveFolder{});
            case 4:
                return static_cast<Toggle>(below(4));
            case 5:
                return ChooseFolder{static_cast<Choosing>(below(3))};
            case 6:
                return one_in(2) ? Wish(UseFolder{"/stick"}) : Wish(ForgetCrew{});
            case 7:
                return one_in(2) ? Wish(ScaleScreen{0.9F}) : Wish(PutOffScale{});
            case 8:
            case 9:
                return Go{{any_screen(), any_edge()}};
            default:
                return one_in(2) ? Keep{any_fact()} : Keep{any_fact(), Where{any_screen(), "A"}};
        }
    }

    News any_news() {
        switch (below(8)) {
            case 0:
                return news::KeyPressed{below(2) == 0 ? Key::next_edge : Key::undo};
            case 1:
                return news::Tilted{{1.0, 2.0}};
            case 2:
                return news::ChoicesFound{told_.session.search - below(2), {}, one_in(2)};
            case 3:
                return news::KeptWhole{};
            case 4:
                return news::Taken{Problem{Text("It was put away."), Text("Do it again.")}};
            case 5:
                return news::JobsListed{{"/jobs/a", "/jobs/b"}, {}};
            case 6:
                return news::LeftThere{std::make_shared<const LeftOff>(
                    LeftOff{{one_in(4) ? "" : "/jobs/b", {any_screen(), any_edge()}, {}}, {}})};
            default:
                return news::TimeIs{1'760'000'000'000};
        }
    }

    void tell(const News& what) {
        told_.tell(what);
        const std::vector<Deed> deeds = told_.deeds;
        for (const Deed& deed : deeds) {
            std::visit([this](const auto& one) { run(one); }, deed);
        }
    }

    template <class Other>
    void run(const Other& /*deed*/) {}

    void run(const deed::Append& append) {
        REQUIRE_FALSE(append.by.empty());
        if (one_in(12)) {  // the journal cannot hold it
            saves_return_all();
            if (told_.session.handing) {
                tell(news::NotHandedOver{job_, problem(), stands_});
            }
            return;
        }
        const Event event = event_of(++sequence_, append.fact);
        stands_.push_back(event);
        under_way_.push_back(event.id);
        ++kept;
        tell(news::HandedOver{job_, {event}});
    }
    void run(const deed::Open& deed) {
        open(deed.left ? OpenedFor(opened_for::GoingBack{deed.left})
                       : OpenedFor(opened_for::Touch{}),
             job_of(below(4)));
    }
    void run(const deed::OpenNew& deed) { open(opened_for::NewJob{deed.name}, {}); }
    void run(const deed::Close& /*deed*/) {
        stands_.clear();
        under_way_.clear();
        saved_.clear();
    }

    void open(const OpenedFor& what_for, std::vector<Event> events) {
        if (one_in(5)) {
            tell(news::NotOpened{problem(), false, {}, what_for});
            return;
        }
        ++job_;
        stands_ = std::move(events);
        sequence_ = 100;
        under_way_.clear();
        refused_.clear();
        saved_.clear();
        for (const Event& event : stands_) {
            saved_.push_back(event.id);
        }
        JobRecord record;
        record.folder = "/jobs/b";
        record.events = stands_;
        tell(news::Opened{job_, record, 1, {}, what_for});
    }

    static Problem problem() { return {Text("The disk is full."), Text("Make room.")}; }

    void saves_return_all() {
        if (!under_way_.empty()) {
            saved_.insert(saved_.end(), under_way_.begin(), under_way_.end());
            const std::size_t all = under_way_.size();
            under_way_.clear();
            tell(news::SavesReturned{job_, all});
        }
    }

    void saves_return() {
        if (under_way_.empty()) {
            return;
        }
        const auto saved = static_cast<std::size_t>(below(static_cast<int>(under_way_.size()) + 1));
        const auto first = under_way_.begin() + static_cast<std::ptrdiff_t>(saved);
        saved_.insert(saved_.end(), under_way_.begin(), first);
        under_way_.erase(under_way_.begin(), first);
        news::SavesReturned returned{job_, saved};
        if (!under_way_.empty() && one_in(3)) {
            ++not_kept;
            refused_.insert(refused_.end(), under_way_.begin(), under_way_.end());
            stands_.erase(stands_.end() - static_cast<std::ptrdiff_t>(under_way_.size()),
                          stands_.end());
            under_way_.clear();
            returned.problem = problem();
            returned.events = stands_;
        }
        tell(returned);
    }

    /// Of a job that was open before, or of none at all.
    void answer_late() {
        ++asked;
        switch (below(4)) {
            case 0:
                return tell(news::SavesReturned{job_ - 1, 1});
            case 1:
                return tell(news::SavesReturned{job_ - 1, 0, problem(), job_of(2)});
            case 2:
                return tell(news::HandedOver{job_ - 1, {event_of(7, any_fact())}});
            default:
                return tell(news::CrewCarried{job_ - 1, 1, 0, {}, true, 0, job_of(3)});
        }
    }

    std::mt19937 chance_;
    Told told_;
    int job_ = 0;
    std::uint32_t sequence_ = 100;
    std::vector<Event> stands_;       ///< in the journal, saved or under way
    std::vector<EventId> under_way_;  ///< of them
    std::vector<EventId> saved_, refused_;
};

}  // namespace

TEST_CASE("Ten thousand things by chance: what is saved is shown, what is refused never is") {
    int kept = 0, not_kept = 0;
    for (unsigned seed = 0; seed < 20; ++seed) {
        CAPTURE(seed);
        World world(seed);
        for (int i = 0; i < 500; ++i) {
            CAPTURE(i);
            world.happen();
            world.check();
        }
        kept += world.kept;
        not_kept += world.not_kept;
    }
    CHECK(kept > 500);
    CHECK(not_kept > 50);
}
