#include "field/screens/roof/host_pages.h"

#include <algorithm>

#include "field/screens/page/keypad.h"
#include "field/screens/page/readback.h"
#include "field/screens/roof/draw_roof_plan.h"
#include "field/screens/roof/walk_closing.h"
#include "field/state/edge_view.h"

namespace hemline {

namespace {

constexpr float host_row_mm = 12, host_drawn_mm_least = 40, above_host_mm = 52;
constexpr int hosts_a_row = 3;

/// The side that the edge lies along.
std::string side_with(const Job& job, const std::string& edge) {
    for (const WalkedBody& body : job.bodies) {
        for (const SideWalked& side : body.sides) {
            if (std::find(side.edges.begin(), side.edges.end(), edge) != side.edges.end()) {
                return side.id;
            }
        }
    }
    return {};
}

/// The roof from above, where a touch on an eave names it.
std::string draw_roofs(Ui& ui, const State& state, Box box) {
    std::string touched;
    const RoofSheet sheet = roof_sheet(ui, state, inset(box, ui.mm(7)));
    for (const LetterTouch& letter : letters_touched(ui, draw_sheet(ui, sheet, box))) {
        const Edge& edge = letter.line->work->edge;
        if (ui.area("roof " + edge.id, letter.box, title_of(edge))) {
            touched = edge.id;
        }
    }
    return touched.empty() ? touched : side_with(state.job, touched);
}

std::string draw_host_rows(Ui& ui, const std::vector<std::string>& hosts, Box body) {
    std::string chosen;
    Box list = ui.begin_scroll("hosts", body);
    const float top = list.y;
    for (std::size_t i = 0; i < hosts.size(); i += hosts_a_row) {
        const auto places = columns(take_top(list, ui.mm(host_row_mm)), hosts_a_row, ui.mm(gap_mm));
        take_top(list, ui.mm(gap_mm));
        for (std::size_t k = i; k < std::min(hosts.size(), i + hosts_a_row); ++k) {
            if (ui.button("host " + hosts[k], say("Over {1}", hosts[k]), places[k - i])) {
                chosen = hosts[k];
            }
        }
    }
    ui.end_scroll(list.y - top);
    return chosen;
}

/// A question for a length, and which way it goes.
struct HostAsks {
    Text question, none;  ///< `none`: what it says where nothing is keyed in
    const char *this_way = nullptr, *other_way = nullptr;
    LengthDraft* length = nullptr;
    bool* goes_other_way = nullptr;
    WalkAsks before = WalkAsks::host, next = WalkAsks::pitch;
};

HostAsks asks_of(WalkDraft& draft) {
    HostDraft& host = draft.host;
    switch (draft.asks) {
        case WalkAsks::along:
            return {say("Along {1}: from its left end to this roof's left end", host.eave),
                    say("Their ends lie together"),
                    nullptr,
                    nullptr,
                    &host.along,
                    nullptr,
                    WalkAsks::host,
                    host.lies_under ? WalkAsks::pitch : WalkAsks::up};
        case WalkAsks::up:
            return {say("From {1} to this roof's front, level", host.eave),
                    say("It stands on the eave"),
                    phrase("up the roof"),
                    phrase("out past the eave"),
                    &host.up,
                    &host.is_outside,
                    WalkAsks::along,
                    WalkAsks::rise};
        default:
            return {say("This roof's eaves over {1}", host.eave),
                    say("They are as high"),
                    phrase("higher"),
                    phrase("lower"),
                    &host.rise,
                    &host.is_lower,
                    WalkAsks::up,
                    WalkAsks::pitch};
    }
}

void draw_ways_to_go(Ui& ui, const HostAsks& asks, Box row) {
    const auto places = columns(row, 2, ui.mm(gap_mm));
    for (const bool other : {false, true}) {
        if (ui.button(other ? "other way" : "this way", say(other ? asks.other_way : asks.this_way),
                      places[other ? 1 : 0],
                      *asks.goes_other_way == other ? Look::chosen : Look::plain)) {
            *asks.goes_other_way = other;
        }
    }
}

}  // namespace

bool is_metric(const State& state) { return state.marks == Marks::millimetre; }

Wished draw_host(Ui& ui, const State& state, WalkDraft& draft) {
    std::vector<Action> actions = {{"leave", say("Back to the walk")}};
    if (!draft.host.runs_in) {
        actions.push_back({"by itself", say("It stands by itself"), Look::primary});
    }
    const Text title = draft.host.runs_in      ? say("Which roof does it run into?")
                       : draft.host.lies_under ? say("Under which eave does it lie?")
                                               : say("Does it stand on another roof?");
    const Frame frame = open_frame(ui, state, title, actions);
    WalkedBody own;  // under way, and so no host yet
    const std::vector<std::string> hosts = hosts_for(state.job, own);
    Box body = frame.body;
    std::string chosen;
    if (body.h > ui.mm(2 * host_drawn_mm_least)) {
        chosen = draw_roofs(ui, state, take_top(body, body.h * 0.6F));
        take_top(body, ui.mm(gap_mm));
    }
    const std::string row = draw_host_rows(ui, hosts, body);
    chosen = row.empty() ? chosen : row;
    if (std::find(hosts.begin(), hosts.end(), chosen) != hosts.end()) {
        draft.host.eave = chosen;
        draft.asks = WalkAsks::along;
    } else if (frame.tapped == "by itself") {
        draft.host.eave.clear();
        draft.asks = WalkAsks::pitch;
    } else if (frame.tapped == "leave") {
        draft.asks = WalkAsks::length;
    }
    return frame.wish;
}

Wished draw_host_length(Ui& ui, const State& state, WalkDraft& draft) {
    const bool metric = is_metric(state);
    const HostAsks asks = asks_of(draft);
    take_typed(ui, *asks.length, metric);
    const Frame frame =
        open_frame(ui, state, say("Where it lies on the roof over {1}", draft.host.eave),
                   {{"leave", say("Back")},
                    {"next", is_empty(*asks.length) ? asks.none : say("Go on"), Look::primary}},
                   {metric ? digit_keys : sixteenth_keys, above_host_mm});
    draw_length_keys(ui, *asks.length, frame.keys, metric);
    Box body = ui.begin_scroll("host words", frame.body);
    const float top = body.y;
    take_top(body, ui.paragraph(body.x, body.y, body.w, asks.question, Size::bold) + ui.mm(2));
    take_top(body, draw_length_fields(ui, *asks.length,
                                      {body.x, body.y, body.w, length_fields_height(ui)},
                                      tapes_of(state)) +
                       ui.mm(gap_mm));
    take_top(body, draw_band(ui, asks.length->refused, body));
    if (asks.goes_other_way != nullptr) {
        draw_ways_to_go(ui, asks, take_top(body, ui.mm(host_row_mm)));
    }
    ui.end_scroll(body.y - top);
    if (frame.tapped == "next") {
        draft.asks = asks.next;
    } else if (frame.tapped == "leave") {
        draft.asks = asks.before;
    }
    return frame.wish;
}

WalkedBody on_host(WalkedBody walk, const HostDraft& draft, bool metric) {
    if (draft.eave.empty()) {
        return walk;
    }
    const Length up = shown_length(draft.up, metric), rise = shown_length(draft.rise, metric);
    walk.host = HostSaid{draft.eave, shown_length(draft.along, metric), draft.is_outside ? -up : up,
                         draft.is_lower ? -rise : rise};
    for (SideWalked& side : walk.sides) {
        if (draft.lies_under && side.kind == SideKind::transition) {
            side.meets = draft.eave;
        }
    }
    return walk;
}

WalkAsks last_asked(const HostDraft& draft) {
    return draft.lies_under ? WalkAsks::along : WalkAsks::rise;
}

bool has_transition(const WalkedBody& walk) {
    return std::any_of(walk.sides.begin(), walk.sides.end(),
                       [](const SideWalked& side) { return side.kind == SideKind::transition; });
}

}  // namespace hemline
