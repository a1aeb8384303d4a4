#include "field/store/job_lock.h"

#include <cerrno>

#include <fcntl.h>
#include <sys/file.h>
#include <unistd.h>

#include "engine/words/result.h"
#include "field/store/disk_problem.h"
#include "field/store/open_file.h"

namespace hemline {

Result<int> lock_job(const std::filesystem::path& folder) {
    const std::filesystem::path file = folder / ".lock";
    const int opened = ::open(file.c_str(), O_RDWR | O_CREAT | O_NOFOLLOW | O_CLOEXEC, 0666);
    if (opened < 0) {
        return disk_problem(phrase("opened for writing"), file, errno);
    }
    if (::flock(opened, LOCK_EX | LOCK_NB) != 0) {
        const int error = errno;
        ::close(opened);
        if (error == EWOULDBLOCK) {
            return Problem{
                say("The job in {1} is open in another copy of the program.", shown(folder)),
                say("Close it there, then open it here.")};
        }
        return disk_problem(phrase("locked"), file, error);
    }
    return opened;
}

bool is_free(const std::filesystem::path& folder) {
    const Result<int> lock = lock_job(folder);
    const OpenFile held(lock ? *lock : -1);
    return lock.ok();
}

}  // namespace hemline
