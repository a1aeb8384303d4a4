/* Preloaded into one program: its clock is wrong, and some of its calls to the disk fail.
   HEMLINE_AHEAD_S: seconds its clock is ahead. HEMLINE_FAILING: which calls fail, "FIRST-LAST", counted
   from 1 over write (to files), fdatasync, ftruncate, rename and unlink. A write that fails has put half of
   its bytes down. */
#define _GNU_SOURCE
#include <dlfcn.h>
#include <errno.h>
#include <pthread.h>
#include <stdio.h>
#include <stdlib.h>
#include <sys/stat.h>
#include <sys/time.h>
#include <time.h>
#include <unistd.h>

static long ahead_s, first = 1, last, calls;
static pthread_mutex_t lock = PTHREAD_MUTEX_INITIALIZER;

__attribute__((constructor)) static void begin(void) {
    const char *ahead = getenv("HEMLINE_AHEAD_S"), *failing = getenv("HEMLINE_FAILING");
    ahead_s = ahead ? atol(ahead) : 0;
    if (failing && sscanf(failing, "%ld-%ld", &first, &last) != 2) {
        last = 0;
    }
}

static int fails(void) {
    pthread_mutex_lock(&lock);
    const long call = ++calls;
    pthread_mutex_unlock(&lock);
    if (call < first || call > last) {
        return 0;
    }
    errno = EIO;
    return 1;
}

#define REAL(name) ((__typeof__(&name))dlsym(RTLD_NEXT, #name))

int clock_gettime(clockid_t clock, struct timespec* now) {
    const int result = REAL(clock_gettime)(clock, now);
    if (clock == CLOCK_REALTIME) {
        now->tv_sec += ahead_s;
    }
    return result;
}

time_t time(time_t* now) {
    struct timespec real;
    clock_gettime(CLOCK_REALTIME, &real);
    if (now) {
        *now = real.tv_sec;
    }
    return real.tv_sec;
}

ssize_t write(int file, const void* bytes, size_t size) {
    struct stat about;
    if (fstat(file, &about) == 0 && S_ISREG(about.st_mode) && fails()) {
        (void)!REAL(write)(file, bytes, size / 2);
        errno = EIO;
        return -1;
    }
    return REAL(write)(file, bytes, size);
}

int fdatasync(int file) { return fails() ? -1 : REAL(fdatasync)(file); }
int ftruncate(int file, off_t size) { return fails() ? -1 : REAL(ftruncate)(file, size); }
int rename(const char* from, const char* to) { return fails() ? -1 : REAL(rename)(from, to); }
int unlink(const char* file) { return fails() ? -1 : REAL(unlink)(file); }
