// How thorough the tests of losing nothing are: all of it with UNDERCOWL_LONG=1 (sh tests/run.sh --long),
// else a part that takes a few seconds.
#pragma once

#include <cstdlib>

namespace undercowl::store::test {

[[nodiscard]] inline bool isLong() {
    const char* set = std::getenv("UNDERCOWL_LONG");
    return set != nullptr && *set == '1';
}

} // namespace undercowl::store::test
