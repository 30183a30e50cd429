// A shop of any size, to look at and to measure. usage: make_shop FOLDER JOBS
#include "tests/bench/shopmaker.h"

#include <cstdio>
#include <cstdlib>

int main(int argc, char** argv) {
    const int jobs = argc == 3 ? std::atoi(argv[2]) : 0;
    if (jobs < 1 || std::filesystem::exists(argv[1])) {
        std::fprintf(stderr, "usage: make_shop FOLDER JOBS; the folder must not exist\n");
        return 2;
    }
    const auto made = undercowl::bench::makeShop(argv[1], static_cast<std::size_t>(jobs));
    std::printf("%zu jobs, %zu entries\n", made.jobs, made.entries);
    return 0;
}
