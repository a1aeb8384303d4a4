// Any bytes as a job file: refused with words, or a job that packs and unpacks the same.
#include <cstdlib>

#include "engine/handover/job_file.h"
#include "engine/words/result.h"

using namespace hemline;

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* bytes, std::size_t size) {
    const Result<Journals> read = unpack_job({bytes, size});
    if (!read) {
        return read.problem().what.empty() ? (std::abort(), 0) : 0;
    }
    const Result<Bytes> packed = pack_job(*read, {});
    if (packed) {
        const Result<Journals> again = unpack_job(*packed);
        if (!again || !(*again == *read)) {
            std::abort();
        }
    }
    return 0;
}
