/* Preloaded beside libfiu's own: fails one call of one system function, the N-th, and says whether it came
   to that. HEMLINE_FIU_POINT, HEMLINE_FIU_NTH, HEMLINE_FIU_ERRNO; HEMLINE_FIU_HIT: file made when it failed. */
#define FIU_ENABLE 1
#include <fcntl.h>
#include <fiu-control.h>
#include <fiu.h>
#include <stdlib.h>
#include <sys/syscall.h>
#include <unistd.h>

static long nth, seen;

static int is_the_one(const char* name, int* failnum, void** failinfo, unsigned int* flags) {
    (void)name, (void)failnum, (void)failinfo, (void)flags;
    if (++seen != nth) {
        return 0;
    }
    /* The bare call, so that it is not counted itself. */
    long file = syscall(SYS_openat, AT_FDCWD, getenv("HEMLINE_FIU_HIT"), O_CREAT | O_WRONLY, 0600);
    if (file >= 0) {
        syscall(SYS_close, file);
    }
    return 1;
}

__attribute__((constructor)) static void begin(void) {
    const char* point = getenv("HEMLINE_FIU_POINT");
    if (point == NULL) {
        return;
    }
    nth = atol(getenv("HEMLINE_FIU_NTH"));
    fiu_init(0);
    fiu_enable_external(point, 1, (void*)atol(getenv("HEMLINE_FIU_ERRNO")), 0, is_the_one);
}
