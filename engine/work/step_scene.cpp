#include "engine/work/step_scene.h"

#include "engine/work/scene_shots.h"

namespace hemline {

std::optional<Shots> scene_of(std::string_view step, const Scenery& stage) {
    if (stage.piece.empty()) {
        if (auto shots = (stage.is_plane ? panel_scene : pipe_scene)(step, stage)) {
            return shots;
        }
    }
    for (const auto scene : {setting_scene, closing_scene, looking_scene, water_scene}) {
        if (auto shots = scene(step, stage)) {
            return shots;
        }
    }
    return {};
}

}  // namespace hemline
