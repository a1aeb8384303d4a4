#include "tools/cli/assets_here.h"

#include "engine/words/result.h"
#include "field/store/folders.h"
#include "tools/cli/complaint.h"

namespace hemline {

std::optional<Assets> assets_here() {
    const Result<std::filesystem::path> folder = assets_folder();
    if (!folder) {
        complain("assets", 0, 0, folder.problem());
        return {};
    }
    const Result<Assets> assets = read_assets(*folder);
    if (!assets) {
        complain(folder->string(), 0, 0, assets.problem());
        return {};
    }
    return *assets;
}

}  // namespace hemline
