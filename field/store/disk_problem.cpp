#include "field/store/disk_problem.h"

#include <cerrno>
#include <system_error>

#include "engine/words/path_text.h"
#include "engine/words/result.h"

namespace hemline {
namespace {

Text mend_for(int error) {
    switch (error) {
        case ENOSPC:
        case EDQUOT:
            return say(
                "Free some room on this device (pictures, films, downloads), then do it again.");
        case EACCES:
        case EPERM:
            return say("Allow this user to read and write there, or choose another folder.");
        case EROFS:
            return say("The disk is read-only: copy the job's folder to one that can be written.");
        case ENOENT:
            return say("Check the path for a slip of the pen.");
        case ENOTDIR:
            return say("Part of the path is a file, not a folder: check the path.");
        case ENAMETOOLONG:
            return say("Choose a shorter name.");
        case ELOOP:
            return say("Put the file or folder itself in its place.");
        case EMFILE:
        case ENFILE:
            return say("Close other programs on this device, then do it again.");
        case EBUSY:
        case ENOTEMPTY:
            return say("Name a new folder, one that is not there yet.");
        default:
            return say("Copy the job's folder to another disk now, then do it again there.");
    }
}

/// In our words, which are translated; rare errors in the words of the system.
Text why(int error) {
    switch (error) {
        case ENOSPC:
        case EDQUOT:
            return say("no room is left on the disk");
        case EFBIG:
            return say("the disk takes no file as large");
        case EACCES:
        case EPERM:
            return say("this user may not");
        case EROFS:
            return say("the disk is read-only");
        case EIO:
            return say("the disk does not answer as it should");
        case ENOENT:
            return say("it is not there");
        case ENOTDIR:
        case EISDIR:
        case EEXIST:
            return say("something else of that name is there");
        case ENAMETOOLONG:
            return say("the name is too long");
        case ELOOP:
            return say("it is a link to somewhere else, and those are not followed");
        case EMFILE:
        case ENFILE:
            return say("too many files are open on this device");
        case EBUSY:
            return say("it is a disk of its own, or in use");
        case ENOTEMPTY:
            return say("it is not empty");
        default:
            return Text(std::generic_category().message(error));
    }
}

}  // namespace

Text shown(const std::filesystem::path& path) {
    return glued("\"", path_text(path.string()), "\"");
}

Problem disk_problem(const std::string& deed, const std::filesystem::path& file, int error) {
    return {say("{1} cannot be {2}: {3}.", shown(file), say(deed), why(error)), mend_for(error)};
}

}  // namespace hemline
