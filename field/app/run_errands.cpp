// What a touch asks the machine for: a job as a file, a piece on paper or as a drawing.
#include "engine/handover/day_page.h"
#include "engine/handover/dxf.h"
#include "engine/handover/piece_papers.h"
#include "engine/handover/svg.h"
#include "engine/words/result.h"
#include "engine/work/piece_pattern.h"
#include "field/app/app.h"
#include "field/state/edge_view.h"
#include "field/state/told.h"
#include "field/store/clock.h"
#include "field/store/file_name.h"
#include "field/store/job_carrying.h"
#include "field/store/job_folder.h"

namespace hemline {

namespace {

namespace fs = std::filesystem;

Bytes bytes_of(const std::string& text) { return Bytes(text.begin(), text.end()); }

}  // namespace

void App::run(const deed::RunErrand& deed) {
    const Platform& platform = options_.platform;
    switch (deed.errand) {
        case Errand::back_up:
            break;  // a separate deed
        case Errand::choose_file:
            if (platform.choose) {
                platform.choose();
            }
            break;
        case Errand::ask_promise:
            if (platform.ask_promise) {
                platform.ask_promise();
            }
            break;
        case Errand::print_day:
            print_day();
            break;
        case Errand::print_card:
        case Errand::print_templates:
        case Errand::give_svg:
        case Errand::give_dxf:
            put_on_paper(deed.errand);
            break;
    }
}

void App::print_day() {
    const std::optional<std::int64_t> day_ms = session_.drafts.day.ms;
    if (options_.platform.print && day_ms) {
        const DaySpan day = day_around(*day_ms);
        options_.platform.print(day_page(day_sheet(state().job, state().events, day),
                                         day_name({day.from_ms}), Paper::letter, clock_time,
                                         names_on(state()), page_words()));
    }
}

void App::give(const std::string& name, std::string_view kind, const Bytes& bytes,
               std::optional<BackupNote> backup) {
    if (!options_.platform.give) {
        return;
    }
    const std::optional<Problem> problem = options_.platform.give(name, kind, bytes);
    const bool later = options_.platform.gives_later;
    const Text words = problem ? said(*problem)
                       : later ? Text()
                               : say("Handed to the browser's downloads: {1}", name);
    tell(news::Given{words, problem ? std::nullopt : backup, later});
}

void App::put_on_paper(Errand errand) {
    const Result<Card> card = card_in_hand(state(), state().where);
    const EdgeWork* const work = edge_of(state(), state().where.edge);
    if (!card || work == nullptr) {
        tell(news::Told{card ? say("That edge is not on this job.") : said(card.problem())});
        return;
    }
    const Marks marks = state().marks;
    const Paper paper = session_.drafts.papers.a4 ? Paper::a4 : Paper::letter;
    const std::string title = title_of(*card, marks, english_on(marks));
    const PaperHead head{state().job.name, day_name({wall_ms()})};
    const Result<FlatPattern> pattern = piece_pattern(*card, work->edge, state().sections);
    if (errand == Errand::print_card && options_.platform.print) {
        options_.platform.print(card_page(*card, pattern ? std::optional(*pattern) : std::nullopt,
                                          marks, head, paper, page_words()));
        return;
    }
    if (!pattern) {
        tell(news::Told{said(pattern.problem())});
        return;
    }
    const std::string name =
        file_name_of(card->edge + " " + card->trim + " " + std::to_string(card->piece));
    if (errand == Errand::print_templates && options_.platform.print) {
        const PageWords words = page_words();
        const std::string said = title_of(*card, marks, words);
        options_.platform.print(
            template_page(end_drawings(*pattern, said, marks, words), said, head, paper, words));
    } else if (errand == Errand::give_svg) {
        give(name + ".svg", "image/svg+xml", bytes_of(svg_of(drawing_of(*pattern, title, marks))));
    } else if (errand == Errand::give_dxf) {
        give(name + ".dxf", "image/vnd.dxf", bytes_of(dxf_of(drawing_of(*pattern, title, marks))));
    }
}

void App::run(const deed::BackUp& /*deed*/) {
    if (!journal_ || !settle()) {
        return;
    }
    const fs::path job = journal_->record().folder;
    std::error_code error;
    const fs::path folder = fs::temp_directory_path(error) / "hemline-backup";
    fs::create_directories(folder, error);
    Disk scratch;  // the file here is only passing through
    const std::int64_t now = options_.wall_ms();
    const Result<FilePut> put =
        put_into_file(scratch, job, folder, state().assets->practice, now, {}, page_words());
    const Result<Bytes> bytes = put ? read_file(put->file) : Result<Bytes>(put.problem());
    fs::remove_all(folder, error);
    if (bytes) {
        give(put->file.filename().string(), "application/zip", *bytes,
             BackupNote{now, put->events});
    } else {
        tell(news::Told{said(bytes.problem())});
    }
}

void App::run(const deed::NoteBackup& deed) {
    const auto problem =
        journal_ ? write_backup_note(*options_.disk, journal_->record().folder, deed.note)
                 : std::nullopt;
    if (problem) {
        tell(news::Added{say("That it was made could not be noted. {1}", said(*problem))});
    }
}

}  // namespace hemline
