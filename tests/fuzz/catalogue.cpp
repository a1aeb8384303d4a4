// Any text as a catalogue of trims: read or refused with words.
#include <cstdlib>
#include <string_view>

#include "engine/trim/catalogue.h"
#include "engine/words/result.h"

using namespace hemline;

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* bytes, std::size_t size) {
    const auto read = Catalogue::read({reinterpret_cast<const char*>(bytes), size});
    if (!read && read.problem().what.empty()) {
        std::abort();
    }
    return 0;
}
