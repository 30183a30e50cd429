// The same targets under libFuzzer: UNDERCOWL_FUZZ_TARGET=NAME fuzz CORPUS -max_total_time=600
#include "tests/fuzz/targets.h"

#include <cstdint>
#include <cstdio>
#include <cstdlib>

namespace {

const undercowl::fuzz::Target& chosen() {
    const char* name = std::getenv("UNDERCOWL_FUZZ_TARGET");
    for (const auto& target : undercowl::fuzz::targets()) {
        if (name != nullptr && target.name == name) {
            return target;
        }
    }
    std::fprintf(stderr, "fuzz: set UNDERCOWL_FUZZ_TARGET to one of the folders in tests/fuzz/corpus\n");
    std::exit(2);
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    static const auto& target = chosen();
    target.run(std::as_bytes(std::span(data, size)));
    return 0;
}
