#include "tools/cli/output_file.h"
#include "engine/words/shown_text.h"

#include <fstream>
#include <iostream>

#include "tools/cli/complaint.h"

namespace hemline {

bool write_output_file(const char* option, const std::string& path, const std::string& text) {
    if (path.empty()) {
        return true;
    }
    std::ofstream file(path, std::ios::binary | std::ios::trunc);
    file << text;
    file.close();
    if (!file) {
        complain(option, 0, 0, "The file could not be written there.",
                 "Name a file in a folder that is there and has room.");
        return false;
    }
    std::cerr << option << ' ' << shown_text(path) << " written\n";
    return true;
}

}  // namespace hemline
