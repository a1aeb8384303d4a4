// hemline in a browser: the page calls these functions with touches, keys and frames, and keeps
// what is written.
#include <emscripten.h>
#include <imgui.h>

#include <algorithm>
#include <memory>

#include "engine/words/result.h"
#include "field/app/app.h"
#include "field/shell/stage.h"
#include "field/shell/web/choices_text.h"
#include "field/shell/web/page_disk.h"
#include "field/shell/web/page_failure.h"
#include "field/shell/web/page_mirror.h"
#include "field/shell/web/page_screen.h"
#include "field/store/assets.h"
#include "field/store/clock.h"
#include "field/store/folders.h"
#include "field/store/saver.h"
#include "field/store/screen_scale.h"

namespace {

using namespace hemline;

// clang-format off
EM_JS(void, page_started, (void* program), { Module.hemline.started(program); })
EM_JS(void, page_failed, (const char* words), { Module.hemline.failed(UTF8ToString(words)); })
EM_JS(void, page_reflect, (const char* json), { Module.hemline.reflect(JSON.parse(UTF8ToString(json))); })
EM_JS(void, page_give, (const char* name, const char* kind, const std::uint8_t* bytes, std::size_t size), {
    Module.hemline.give(UTF8ToString(name), UTF8ToString(kind), HEAPU8.slice(bytes, bytes + size));
})
EM_JS(void, page_copy, (const char* text), { Module.hemline.copy(UTF8ToString(text)); })
EM_JS(void, page_choose, (), { Module.hemline.choose(); })
EM_JS(void, page_print, (const char* page), { Module.hemline.print(UTF8ToString(page)); })
EM_JS(void, page_ask_promise, (), { Module.hemline.ask_promise(); })
EM_JS(int, page_is_dark, (), { return Module.hemline.is_dark() ? 1 : 0; })
EM_JS(int, page_shares, (), { return Module.hemline.shares() ? 1 : 0; })
EM_JS(void, page_leave, (const char* left), { Module.hemline.leave(UTF8ToString(left)); })
// clang-format on

Platform page_platform() {
    Platform page;
    page.give = [](const std::string& name, std::string_view kind,
                   const Bytes& bytes) -> std::optional<Problem> {
        page_give(name.c_str(), std::string(kind).c_str(), bytes.data(), bytes.size());
        return {};
    };
    page.copy = [](const std::string& text) { page_copy(text.c_str()); };
    page.gives_later = page_shares() != 0;
    page.choose = page_choose;
    page.print = [](const std::string& html) { page_print(html.c_str()); };
    page.ask_promise = page_ask_promise;
    page.keeps_later = true;
    return page;
}

}  // namespace

/// The program; the page holds its address.
class Page {
  public:
    Page(Assets assets, AppOptions options, std::shared_ptr<PageDisk> disk)
        : disk_(std::move(disk)),
          app_(std::move(assets), std::move(options)),
          stage_({.draw = [this](Ui& ui) { app_.draw(ui); },
                  .palette = [this]() -> const Palette& { return app_.palette(); },
                  .press = [this](Key key) { app_.press(key); }},
                 "/fonts") {}

    std::optional<Problem> open() { return screen_.open(); }

    void fit(int w, int h, float density) {
        screen_.set_size(w, h);
        w_ = static_cast<float>(w);
        h_ = static_cast<float>(h);
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

    void paste(const char* text) {
        stage_.paste(text);
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

    /// The page's answer about the bytes it was given last.
    void answer(Saver& saver, std::uint32_t sequence, NotKept why) {
        if (why == NotKept::nothing) {
            saver.answered(sequence, {});
        } else {
            disk_->take_back();
            saver.answered(sequence, problem_of(why));
        }
        stage_.want_frames();
    }

    void kept_whole(std::size_t changes, NotKept why) {
        if (why == NotKept::nothing) {
            disk_->kept_whole(changes);
            app_.kept_whole({});
        } else {
            disk_->take_back_whole(changes);
            app_.kept_whole(problem_of(why));
        }
        stage_.want_frames();
    }

    void given(const std::optional<Problem>& problem) {
        app_.given(problem);
        stage_.want_frames();
    }

    void go_back_to(const char* text) {
        app_.go_back_to(text);
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

    /// Draws when something is to be drawn. Returns seconds until the next frame is wanted; −1:
    /// none.
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
    /// As many pixels in a millimeter as the screen has; fewer where the page would not fit: on a
    /// phone everything is smaller, and the action at the bottom stays in reach.
    void fit_letters() {
        const float fits =
            std::min(std::max(w_, h_) / Ui::page_long_mm, std::min(w_, h_) / Ui::page_short_mm);
        const float scale = std::min(density_ * app_.px_per_mm(), fits);
        if (scale != scale_ && scale > 0) {
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
        std::string now = mirror_of(stage_, app_, density_);
        if (now != reflected_) {
            page_reflect(now.c_str());
            reflected_ = std::move(now);
        }
    }

    std::shared_ptr<PageDisk> disk_;
    App app_;
    Stage stage_;
    PageScreen screen_;
    float w_ = 0, h_ = 0, density_ = 1, scale_ = 0;
    double frame_at_ = 0;
    std::string reflected_;
};

extern "C" {
EMSCRIPTEN_KEEPALIVE void hemline_fit(Page* page, int w, int h, float density) {
    page->fit(w, h, density);
}
EMSCRIPTEN_KEEPALIVE void hemline_touch(Page* page, int kind, int finger, float x, float y,
                                        double seconds) {
    page->touch({static_cast<TouchKind>(kind), finger, x, y, 0, seconds});
}
EMSCRIPTEN_KEEPALIVE void hemline_wheel(Page* page, float x, float y, float notches) {
    page->touch({TouchKind::wheel, 0, x, y, notches});
}
EMSCRIPTEN_KEEPALIVE void hemline_type(Page* page, const char* text) { page->type(text); }
EMSCRIPTEN_KEEPALIVE void hemline_paste(Page* page, const char* text) { page->paste(text); }
EMSCRIPTEN_KEEPALIVE double hemline_frame(Page* page, double now_ms) { return page->frame(now_ms); }
EMSCRIPTEN_KEEPALIVE void hemline_kept(Page* page, Saver* saver, std::uint32_t sequence, int why) {
    page->answer(*saver, sequence, static_cast<NotKept>(why));
}
EMSCRIPTEN_KEEPALIVE int hemline_reads_tilt(Page* page) { return page->reads_tilt() ? 1 : 0; }
EMSCRIPTEN_KEEPALIVE int hemline_tilt(Page* page, double beta, double gamma) {
    return page->tilt({beta, gamma}) ? 1 : 0;
}
EMSCRIPTEN_KEEPALIVE void hemline_kept_whole(Page* page, std::size_t changes, int why) {
    page->kept_whole(changes, static_cast<NotKept>(why));
}
/// 0: taken, 1: put away, 2: refused.
EMSCRIPTEN_KEEPALIVE void hemline_given(Page* page, int what) {
    const Text again = say("Hand it over again; what is saved on this tablet is not touched.");
    if (what == 0) {
        page->given({});
    } else {
        page->given(Problem{what == 1 ? say("The file was not handed over: it was put away.")
                                      : say("This tablet refused to hand the file over."),
                            again});
    }
}
EMSCRIPTEN_KEEPALIVE void hemline_go_back_to(Page* page, const char* left) {
    page->go_back_to(left);
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
    const Result<ScreenScale> screen = read_screen_scale();  // a torn file counts as none
    options.screen = screen ? *screen : ScreenScale{};
    options.ask_scale = !options.screen.px_per_mm && !options.screen.put_off;
    options.px_per_mm = options.screen.px_per_mm.value_or(px_per_mm_unknown);
    const bool dark = options.screen.night.value_or(page_is_dark() != 0);
    options.light = dark ? Light::night : Light::day;
    const auto disk = std::make_shared<PageDisk>();
    options.keep_scale = [disk](const ScreenScale& kept) { return keep_screen_scale(*disk, kept); };
    options.keep_left_off = [](const std::string& text) -> std::optional<Problem> {
        page_leave(text.c_str());
        return {};
    };
    options.disk = disk;
    auto page = std::make_unique<Page>(*assets, std::move(options), disk);
    if (const std::optional<Problem> problem = page->open()) {
        page_failed(said(*problem).english().c_str());
        return 1;
    }
    page_started(page.release());  // it lives as long as the page does
    return 0;
}
