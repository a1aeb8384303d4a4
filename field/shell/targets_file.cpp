#include "field/shell/targets_file.h"

#include <cmath>
#include <fstream>
#include <nlohmann/json.hpp>
#include <system_error>

#include "engine/words/shown_text.h"

namespace hemline {

std::string targets_json(const std::vector<Target>& targets, float density) {
    const auto hundredths = [density](float pixels) {
        return std::round(static_cast<double>(pixels / density) * 100) / 100;
    };
    nlohmann::json list = nlohmann::json::array();
    for (const Target& target : targets) {
        list.push_back({{"name", target.name},
                        {"x", hundredths(target.box.x)},
                        {"y", hundredths(target.box.y)},
                        {"w", hundredths(target.box.w)},
                        {"h", hundredths(target.box.h)}});
    }
    return shown_lines(list.dump(-1, ' ', false, nlohmann::json::error_handler_t::replace)) + "\n";
}

bool TargetsFile::update(const std::vector<Target>& targets, float density) {
    std::string now = targets_json(targets, density);
    if (now == written_) {
        return true;
    }
    std::filesystem::path part = file_;
    part += ".part";
    std::ofstream out(part, std::ios::binary);
    out << now;
    out.close();
    std::error_code error;
    if (out) {
        std::filesystem::rename(part, file_, error);
    }
    if (!out || error) {
        return false;
    }
    written_ = std::move(now);
    return true;
}

}  // namespace hemline
