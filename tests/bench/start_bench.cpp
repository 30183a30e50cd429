// From starting the process to its first frame, and to the list of machines: the app on the demo shop against
// an empty Qt Quick Controls window, turn and turn about. The bar of the first is a ratio of 1.5.
#include <algorithm>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <string>
#include <vector>

namespace {

double milliseconds(const std::string& command) {
    const auto begin = std::chrono::steady_clock::now();
    if (std::system(command.c_str()) != 0) {
        std::fprintf(stderr, "start_bench: this failed: %s\n", command.c_str());
        std::exit(1);
    }
    return std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - begin).count();
}

double median(std::vector<double> times) {
    std::sort(times.begin(), times.end());
    return times[times.size() / 2];
}

} // namespace

int main(int argc, char** argv) {
    const int rounds = argc > 1 ? std::max(1, std::atoi(argv[1])) : 15;
    const auto folder = std::filesystem::current_path() / "undercowl-start-bench";
    std::filesystem::remove_all(folder);
    const std::string shop = "'" + (folder / "shop").string() + "'";
    milliseconds("'" UNDERCOWLCTL "' demo --only-shop --store " + shop + " >/dev/null");
    const std::string app = "exec '" UNDERCOWL_SHOP_WINDOW "' " + shop;
    const std::string empty = "exec '" UNDERCOWL_EMPTY_WINDOW "'";
    milliseconds(app); // the first of each fills the caches: the disk's, and Qt's for compiled QML
    milliseconds(empty);
    std::vector<double> ours;
    std::vector<double> listed;
    std::vector<double> theirs;
    for (int i = 0; i < rounds; ++i) {
        theirs.push_back(milliseconds(empty));
        ours.push_back(milliseconds(app));
        listed.push_back(milliseconds(app + " list"));
    }
    std::filesystem::remove_all(folder);
    std::printf("first frame: app %.0f ms, empty window %.0f ms, ratio %.2f (medians of %d; least %.0f and "
                "%.0f ms)\n",
                median(ours), median(theirs), median(ours) / median(theirs), rounds,
                *std::min_element(ours.begin(), ours.end()), *std::min_element(theirs.begin(), theirs.end()));
    std::printf("list of machines: %.0f ms, ratio %.2f\n", median(listed), median(listed) / median(theirs));
    return 0;
}
