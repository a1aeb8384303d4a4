#include "engine/words/program_version.h"

#include <string>

namespace hemline {

Text words_of(const ProgramVersion& program) {
    const std::string version(program.version), commit(program.commit);
    if (commit.empty()) {
        return say("Hemline {1}, commit unknown: built without git", version);
    }
    return program.changed ? say("Hemline {1}, commit {2}, changed since", version, commit)
                           : say("Hemline {1}, commit {2}", version, commit);
}

}  // namespace hemline
