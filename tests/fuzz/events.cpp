// Journals made by a grammar (tests/engine/record/event_grammar.h), right in every checksum,
// through all that the program does with a job: read, put in order, folded, merged, planned, told,
// paged.
#include <cstdlib>
#include <fstream>
#include <iterator>

#include "engine/cutting/cutting.h"
#include "engine/handover/day_page.h"
#include "engine/handover/job_file.h"
#include "engine/handover/job_pages.h"
#include "engine/plan/make_plan.h"
#include "engine/plan/plan.h"
#include "engine/record/clock_doubt.h"
#include "engine/record/last_on_edges.h"
#include "engine/record/merge.h"
#include "engine/record/pick.h"
#include "engine/words/result.h"
#include "engine/work/card.h"
#include "engine/work/edge_values.h"
#include "engine/work/hook_doubt.h"
#include "engine/work/job_sections.h"
#include "engine/work/order.h"
#include "engine/work/piece_pattern.h"
#include "engine/work/roof_outline.h"
#include "tests/engine/record/event_grammar.h"

using namespace hemline;

namespace {

const CuttingEffort effort_most{20'000, {}};

void must(bool holds) {
    if (!holds) {
        std::abort();
    }
}

/// The trade as the assets have it.
struct Trade {
    Catalogue catalogue;
    Sections sections;
    Practice practice;
    Procedures procedures;
};

std::string text_of(const std::string& file) {
    std::ifstream in(HEMLINE_ASSETS "/" + file, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), {}};
}

Trade read_trade() {
    const auto catalogue = Catalogue::read(text_of("catalogue/trims.csv"));
    const auto sections = Sections::read(text_of("catalogue/sections.csv"));
    const auto rules = read_practice_rules(text_of("practice.csv"));
    must(catalogue.ok() && sections.ok() && rules.ok() && practice_of(*rules).ok());
    Trade trade{*catalogue, *sections, *practice_of(*rules), {}};
    for (const EdgeKind kind : {EdgeKind::eave, EdgeKind::gable}) {
        const auto steps =
            read_procedure(text_of("procedures/" + std::string(word_of(kind)) + ".csv"));
        must(steps.ok());
        trade.procedures.emplace(kind, *steps);
    }
    return trade;
}

Bytes journal_of(const std::vector<Event>& events) {
    Bytes journal;
    for (const Event& event : events) {
        const Bytes frame = frame_of(event);
        const JournalRead back = read_journal(frame);
        must(back.events.size() == 1 && frame_of(back.events[0]) == frame);
        journal.insert(journal.end(), frame.begin(), frame.end());
    }
    return journal;
}

bool same(const std::vector<Event>& a, const std::vector<Event>& b) {
    return std::equal(a.begin(), a.end(), b.begin(), b.end(),
                      [](const Event& x, const Event& y) { return frame_of(x) == frame_of(y); });
}

/// The same events whatever the order they come in and however often, and one more comes last.
void put_in_order(const std::vector<Event>& events, const Bytes& journal) {
    std::vector<Event> turned(events.rbegin(), events.rend());
    turned.insert(turned.end(), events.begin(), events.end());
    must(same(in_order(turned), events));
    std::vector<Event> with_next = events;
    Event next{{3, 0xFFFF'FFFFU}, {}, "", {}, EdgeFinished{"A", ""}};
    stamp(next, events, 1'780'000'000'000);
    with_next.push_back(next);
    must(same(in_order(with_next), with_next));
    must(read_journal(frame_of(next)).events.size() == 1);
    Merge once, twice;
    once.add(0, journal);
    twice.add(0, journal);
    const Journals merged = once.journals();
    for (const auto& [device, bytes] : merged.of_device) {
        twice.add(device, bytes);
    }
    must(merged == twice.journals() && merged.damage.empty());
    const Result<Bytes> packed = pack_job(merged, pages_of(events, {}));
    must(!packed || *unpack_job(*packed) == merged);
}

void look_at_edge(const Trade& trade, const Catalogue& catalogue, const Job& job, const Plan& plan,
                  std::span<const Event> events, const EdgeWork& work) {
    const auto procedure = trade.procedures.find(work.edge.kind);
    const std::vector<Step> steps =
        procedure == trade.procedures.end()
            ? std::vector<Step>{}
            : steps_of(work, plan, job.practice, procedure->second, catalogue);
    spoken(status_of(work, steps, job.practice));
    edge_values({job, plan, catalogue, events}, work, steps);
    for (const Run& run : plan.runs) {
        for (std::size_t i = 0; run.edge == work.edge.id && i < run.pieces.size() && i < 3; ++i) {
            const Result<Card> card =
                make_card(job, plan, catalogue, run.edge, run.role, run.pieces[i].number);
            must(card.ok());
            piece_pattern(*card, work.edge, sections_on(trade.sections, job)).ok();
        }
    }
}

void tell(const Job& job, const std::vector<Event>& events) {
    Names names;
    names.event = [&](EventId id) -> const Fact* {
        const auto found = std::find_if(events.begin(), events.end(),
                                        [&](const Event& event) { return event.id == id; });
        return found == events.end() ? nullptr : &found->fact;
    };
    for (const Event& event : events) {
        must(!describe(event.fact, names).english().empty());
    }
    for (const Conflict& conflict : job.conflicts) {
        must(!conflict.what().english().empty() && !conflict.sides.empty());
        pick(job, events, conflict.sides.front().id).ok();
    }
    for (const ClockDoubt& doubt : clock_doubts(events)) {
        must(!words_on(doubt).english().empty() && doubt.off_ms > clock_doubt_ms);
    }
    last_on_edges(events, job);
    undo_target(events, job.struck, 1);
    const DaySheet sheet = day_sheet(job, events, {0, wall_ms_most + 1});
    must(!day_page(
              sheet, Text("today"), Paper::a4, [](WallTime) { return std::string("9:41"); }, names)
              .empty());
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* bytes, std::size_t size) {
    static const Trade trade = read_trade();  // kept from run to run
    const std::vector<Event> written = EventGrammar({bytes, size}).events();
    if (written.empty()) {
        return 0;  // a job file of no journal is none
    }
    const Bytes journal = journal_of(written);
    const JournalRead read = read_journal(journal);
    must(read.set_aside.empty() && read.events.size() == written.size());
    const std::vector<Event> events = in_order(read.events);
    put_in_order(events, journal);
    const Job job = replay(events, trade.practice);
    const Catalogue catalogue = catalogue_on(trade.catalogue, trade.sections, job);
    const Plan plan = make_plan(job, catalogue, {true, true, effort_most});
    find_choices(job, catalogue, effort_most);
    whats_next(job, plan, trade.procedures, catalogue);
    next_cut(job, plan);
    outline_of(job);
    hook_doubt(job);
    for (const EdgeWork& work : job.edges) {
        look_at_edge(trade, catalogue, job, plan, events, work);
    }
    tell(job, events);
    return 0;
}
