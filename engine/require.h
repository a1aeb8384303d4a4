// Release-time asserts: a stop is better than a silent wrong number on a roof.
#pragma once

namespace hemline {

/// Prints the claim and aborts.
[[noreturn]] void stop(const char* claim);

/// Stops the program, in release builds too, when the program is wrong (never for bad input).
inline void require(bool holds, const char* claim) {
    if (!holds) {
        stop(claim);
    }
}

}  // namespace hemline
