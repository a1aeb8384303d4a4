#include "engine/require.h"

#include <cstdio>
#include <cstdlib>

namespace hemline {

void stop(const char* claim) {
    std::fprintf(stderr, "hemline stopped, because this does not hold: %s\n", claim);
    std::abort();
}

}  // namespace hemline
