// hemline in a browser: the page calls in with touches, keys and frames, and keeps what is written.
#include <emscripten.h>
#include <imgui.h>

#include <cmath>
#include <memory>
#include <nlohmann/json.hpp>

#include "engine/shown_text.h"
#include "field/app/app.h"
#include "field/shell/stage.h"
#include "field/shell/web/choices_text.h"
#include "field/shell/web/page_disk.h"
#include "field/shell/web/page_screen.h"
#include "field/store/assets.h"
#include "field/store/clock.h"
#include "field/store/folders.h"
#include "field/store/saver.h"

namespace {

using namespace hemline;

// clang-format off
EM_JS(void, page_started, (void* program), { Module.hemline.started(program); })
EM_JS(void, page_failed, (const char* words), { Module.hemline.failed(UTF8ToString(words)); })
EM_JS(void, page_reflect, (const char* json), { Module.hemline.reflect(JSON.parse(UTF8ToString(json))); })
EM_JS(void, page_give, (const char* name, const char* kind, const std::uint8_t* bytes, std::size_t size), {
    Module.hemline.give(UTF8ToString(name), UTF8ToString(kind), HEAPU8.slice(bytes, bytes + size));
})
EM_JS(void, page_choose, (), { Module.hemline.choose(); })
EM_JS(void, page_print, (const char* page), { Module.hemline.print(UTF8ToString(page)); })
EM_JS(void, page_ask_promise, (), { Module.hemline.ask_promise(); })
EM_JS(double, page_px_per_mm, (), { return Module.hemline.screen().px_per_mm; })
EM_JS(int, page_left_hand, (), { return Module.hemline.screen().left_hand ? 1 : 0; })
EM_JS(void, page_keep_screen, (double px_per_mm, int left_hand), { Module.hemline.keep_screen(px_per_mm, left_hand === 1); })
// clang-format on

Platform page_platform() {
    Platform page;
    page.give = [](const std::string& name, std::string_view kind,
                   const Bytes& bytes) -> std::optional<Problem> {
        page_give(name.c_str(), std::string(kind).c_str(), bytes.data(), bytes.size());
        return {};
    };
    page.choose = page_choose;
    page.print = [](const std::string& html) { page_print(html.c_str()); };
    page.ask_promise = page_ask_promise;
    page.keeps_later = true;
    return page;
}

/// CSS pixels, to a hundredth.
double css(float pixels, float density) {
    return std::round(static_cast<double>(pixels / density) * 100) / 100;
}

nlohmann::json box_json(Box box, float density) {
    return {{"x", css(box.x, density)},
            {"y", css(box.y, density)},
            {"w", css(box.w, density)},
            {"h", css(box.h, density)}};
}

}  // namespace

/// The program, at an address that the page holds.
class Page {
  public:
    Page(Assets assets, AppOptions options, std::shared_ptr<PageDisk> disk)
        : disk_(std::move(disk)),
          app_(std::move(assets), std::move(options)),
          stage_({.draw = [this](Ui& ui) { app_.draw(ui); },
                  .palette = [this]() -> const Palette& { return app_.palette(); }},
                 "/fonts") {}

    std::optional<Problem> open() { return screen_.open(); }

    void fit(int w, int h, float density) {
        screen_.set_size(w, h);
        stage_.touches().cancel();
        stage_.want_frames();
        density_ = density;
        fit_letters();
    }

    void restore_context() {
        if (const std::optional<Problem> problem = screen_.open_again()) {
            page_failed(said(*problem).english().c_str());
            return;
        }
        load_letters();
    }

    void touch(Touch touch) {
        stage_.touches().push(touch);
        stage_.want_frames();
    }

    void type(const char* text) {
        stage_.type(text);
        stage_.want_frames();
    }

    /// True when a frame is wanted.
    bool tilt(TiltSample sample) {
        const bool first = !app_.state().tilt_there;
        const bool reading = app_.reads_tilt();
        app_.tilt(sample);
        const bool changed = first || (reading && !app_.reads_tilt());
        if (changed) {
            stage_.want_frames();
        }
        return changed;
    }

    [[nodiscard]] bool reads_tilt() const { return app_.reads_tilt(); }

    /// The page's answer about the bytes it was given last; empty when they are kept.
    void answer(Saver& saver, std::uint32_t sequence, const std::string& why_not) {
        if (!why_not.empty()) {
            disk_->take_back();
        }
        saver.answered(sequence, why_not);
        stage_.want_frames();
    }

    void kept_whole(std::size_t changes, const std::string& why_not) {
        if (why_not.empty()) {
            disk_->kept_whole(changes);
            app_.kept_whole({});
        } else {
            disk_->take_back_whole(changes);
            app_.kept_whole(Problem{why_not, say("Make room on this tablet, then try again.")});
        }
        stage_.want_frames();
    }

    void take_file(const char* file) {
        app_.take_file(file);
        stage_.want_frames();
    }

    void found(PlanSearch& search, const char* choices, bool is_last) {
        search.answered(choices_in(choices), is_last);
        stage_.want_frames();
    }

    void promised(Promised answer) {
        app_.promised(answer);
        stage_.want_frames();
    }

    /// Draws when something is to be drawn. Seconds until the next frame is wanted, −1: rest.
    double frame(double now_ms) {
        if (!stage_.at_rest()) {
            stage_.draw(frame_at_ > 0 ? (now_ms - frame_at_) / 1000 : 0);
            frame_at_ = now_ms;
            screen_.present(stage_.ground());
            reflect();
            fit_letters();  // the crew may have measured the screen
        }
        if (!stage_.at_rest()) {
            return 0;
        }
        const double left = stage_.refusal_left();
        if (left > 0) {
            stage_.want_frame();
        }
        return left > 0 ? left : -1;
    }

  private:
    void fit_letters() {
        const float scale = density_ * app_.px_per_mm();
        if (scale != scale_) {
            scale_ = scale;
            load_letters();
            stage_.want_frames();
        }
    }

    void load_letters() {
        const std::string wrong = stage_.set_scale(scale_);
        if (wrong.empty()) {
            screen_.take_letters();
        } else {
            page_failed(wrong.c_str());
        }
    }

    /// Tells the page what can be tapped and read, when that has changed.
    void reflect() {
        nlohmann::json targets = nlohmann::json::array();
        for (const Target& target : stage_.targets()) {
            nlohmann::json entry = box_json(target.box, density_);
            entry["name"] = shown_text(target.name);  // read out where there is no label
            entry["label"] = target.label;
            targets.push_back(std::move(entry));
        }
        nlohmann::json texts = nlohmann::json::array();
        for (const Words& words : stage_.words()) {
            nlohmann::json entry = box_json(words.box, density_);
            entry["words"] = words.words;
            texts.push_back(std::move(entry));
        }
        std::string now = nlohmann::json{{"targets", targets}, {"texts", texts}}.dump(
            -1, ' ', false, nlohmann::json::error_handler_t::replace);
        if (now != reflected_) {
            page_reflect(now.c_str());
            reflected_ = std::move(now);
        }
    }

    std::shared_ptr<PageDisk> disk_;
    App app_;
    Stage stage_;
    PageScreen screen_;
    float density_ = 1, scale_ = 0;
    double frame_at_ = 0;
    std::string reflected_;
};

extern "C" {
EMSCRIPTEN_KEEPALIVE void hemline_fit(Page* page, int w, int h, float density) {
    page->fit(w, h, density);
}
EMSCRIPTEN_KEEPALIVE void hemline_touch(Page* page, int kind, int finger, float x, float y) {
    page->touch({static_cast<TouchKind>(kind), finger, x, y});
}
EMSCRIPTEN_KEEPALIVE void hemline_wheel(Page* page, float x, float y, float notches) {
    page->touch({TouchKind::wheel, 0, x, y, notches});
}
EMSCRIPTEN_KEEPALIVE void hemline_type(Page* page, const char* text) { page->type(text); }
EMSCRIPTEN_KEEPALIVE double hemline_frame(Page* page, double now_ms) { return page->frame(now_ms); }
EMSCRIPTEN_KEEPALIVE void hemline_kept(Page* page, Saver* saver, std::uint32_t sequence,
                                       const char* why_not) {
    page->answer(*saver, sequence, why_not);
}
EMSCRIPTEN_KEEPALIVE int hemline_reads_tilt(Page* page) { return page->reads_tilt() ? 1 : 0; }
EMSCRIPTEN_KEEPALIVE int hemline_tilt(Page* page, double beta, double gamma) {
    return page->tilt({beta, gamma}) ? 1 : 0;
}
EMSCRIPTEN_KEEPALIVE void hemline_kept_whole(Page* page, std::size_t changes, const char* why_not) {
    page->kept_whole(changes, why_not);
}
EMSCRIPTEN_KEEPALIVE void hemline_take_file(Page* page, const char* file) { page->take_file(file); }
EMSCRIPTEN_KEEPALIVE void hemline_found(Page* page, PlanSearch* search, const char* choices,
                                        int is_last) {
    page->found(*search, choices, is_last != 0);
}
EMSCRIPTEN_KEEPALIVE void hemline_promised(Page* page, int given) {
    page->promised(given == 1 ? Promised::given : Promised::refused);
}
EMSCRIPTEN_KEEPALIVE void hemline_context_restored(Page* page) { page->restore_context(); }
}

int main() {
    const Result<Assets> assets = read_assets("/assets");
    const Result<std::filesystem::path> jobs = jobs_folder();
    const Result<std::uint64_t> device = device_id();
    for (const Problem* problem :
         {assets.ok() ? nullptr : &assets.problem(), jobs.ok() ? nullptr : &jobs.problem(),
          device.ok() ? nullptr : &device.problem()}) {
        if (problem != nullptr) {
            page_failed(said(*problem).english().c_str());
            return 1;
        }
    }
    AppOptions options;
    options.jobs_folder = *jobs;
    options.device = *device;
    options.wall_ms = wall_ms;
    options.wake = [] {};  // the page asks for a frame when it has answered
    options.platform = page_platform();
    options.promised = Promised::not_asked;
    const double px_per_mm = page_px_per_mm();  // 0: nobody measured it, below 0: not now
    options.ask_scale = px_per_mm == 0;
    options.screen = {{}, px_per_mm < 0, page_left_hand() != 0};
    if (px_per_mm > 0) {
        options.px_per_mm = static_cast<float>(px_per_mm);
        options.screen.px_per_mm = options.px_per_mm;
    }
    options.keep_scale = [](const ScreenScale& screen) -> std::optional<Problem> {
        page_keep_screen(screen.px_per_mm.value_or(screen.put_off ? -1 : 0),
                         screen.left_hand ? 1 : 0);
        return {};
    };
    const auto disk = std::make_shared<PageDisk>();
    options.disk = disk;
    auto page = std::make_unique<Page>(*assets, std::move(options), disk);
    if (const std::optional<Problem> problem = page->open()) {
        page_failed(said(*problem).english().c_str());
        return 1;
    }
    page_started(page.release());  // it lives as long as the page does
    return 0;
}
