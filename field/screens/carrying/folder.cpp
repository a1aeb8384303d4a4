// Choosing a folder by touch: into it, up, or straight to a disk that is plugged in.
#include <string>

#include "engine/words/path_text.h"
#include "field/screens/page/frame.h"
#include "field/screens/screens.h"
#include "field/touch/box.h"

namespace hemline {

namespace {

namespace fs = std::filesystem;

constexpr float folder_row_mm = 14;

Text title_for(Choosing choosing) {
    switch (choosing) {
        case Choosing::crew:
            return say("The crew folder · which one does the synchronizer carry?");
        case Choosing::go_on:
            return say("Go on in another folder · which one?");
        case Choosing::hand_over:
            break;
    }
    return say("Job files · which folder?");
}

Text room_in(const FolderView& view) {
    if (!view.can_write) {
        return say("This tablet may not write here.");
    }
    if (!view.free_bytes) {
        return {};
    }
    const std::uint64_t mb = *view.free_bytes >> 20U;
    return mb >= 1024 ? say("{1} GB free", mb >> 10U) : say("{1} MB free", mb);
}

struct Row {
    std::string name;
    Text label;
    fs::path path;
};

/// First up, then the folders inside, then the other disks.
std::vector<Row> rows_of(const Outside& outside) {
    const FolderView& view = outside.view;
    std::vector<Row> all;
    if (view.folder.has_relative_path()) {
        const fs::path up = view.folder.parent_path();
        all.push_back({"up", say("↑ Up to {1}", path_text(up.string())), up});
    }
    for (const fs::path& inside : view.inside) {
        const std::string name = inside.filename().string();
        all.push_back({"into " + name, Text(name), inside});
    }
    for (const fs::path& place : outside.places) {
        if (place != view.folder && place.parent_path() != view.folder) {
            all.push_back(
                {"place " + place.string(), glued("→ ", path_text(place.string())), place});
        }
    }
    return all;
}

}  // namespace

Wished draw_folder(Ui& ui, const State& state, Drafts& /*drafts*/) {
    const Outside& outside = state.outside;
    const FolderView& view = outside.view;
    const Frame frame = open_frame(
        ui, state, title_for(outside.choosing),
        {{"leave", say("Back")},
         {"use folder", say("Use this folder"), view.can_write ? Look::primary : Look::off}});
    Wished wish = frame.wish;
    Box list = ui.begin_scroll("folder " + view.folder.string(), frame.body);
    const float top = list.y;
    take_top(list,
             ui.paragraph(list.x, list.y, list.w, path_text(view.folder.string()), Size::bold));
    if (view.problem) {
        take_top(list, draw_band(ui, said(*view.problem), list));
    }
    take_top(list,
             ui.paragraph(list.x, list.y, list.w, room_in(view), Size::small, ui.colours().soft) +
                 ui.mm(gap_mm));
    const std::vector<Row> all = rows_of(outside);
    const int wide = ui.portrait() ? 1 : 2;
    for (std::size_t i = 0; i < all.size(); i += static_cast<std::size_t>(wide)) {
        const std::vector<Box> places =
            columns(take_top(list, ui.mm(folder_row_mm)), wide, ui.mm(gap_mm));
        for (std::size_t j = 0; j < places.size() && i + j < all.size(); ++j) {
            const Row& row = all[i + j];
            if (ui.button(row.name, row.label, places[j])) {
                wish = LookInto{row.path};
            }
        }
        take_top(list, ui.mm(gap_mm));
    }
    ui.end_scroll(list.y - top);
    if (frame.tapped == "leave") {
        wish = LeaveFolder{};
    } else if (frame.tapped == "use folder") {
        wish = UseFolder{view.folder};
    }
    return wish;
}

}  // namespace hemline
