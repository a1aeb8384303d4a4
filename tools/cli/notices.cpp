// `notices`: what the program is made of, each part with its license and its notice.
#include <iostream>

#include "tools/cli/assets_here.h"
#include "tools/cli/commands.h"
#include "tools/cli/print.h"

namespace hemline {

Exit print_notices() {
    const std::optional<Assets> assets = assets_here();
    if (!assets) {
        return Exit::problem_in_input;
    }
    std::cout << "Hemline's own license is its owner's to choose; none is given yet.\n"
                 "Parts of others, inside the programs or loaded by them (beside):\n\n";
    for (const Notice& notice : assets->notices) {
        std::cout << padded(notice.part + ' ' + notice.version, 40) << padded(notice.license, 34)
                  << (notice.inside.empty() ? "" : "inside " + notice.inside)
                  << (notice.inside.empty() || notice.beside.empty() ? "" : "; ")
                  << (notice.beside.empty() ? "" : "beside " + notice.beside) << '\n';
    }
    for (const Notice& notice : assets->notices) {
        std::cout << "\n==== " << notice.part << ' ' << notice.version << " (" << notice.license
                  << ")\n\n"
                  << (notice.note.empty() ? "" : notice.note + "\n\n") << notice.text;
    }
    return Exit::fine;
}

}  // namespace hemline
