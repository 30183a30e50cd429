// Runs every target over its corpus, and over mutations of it that are the same each time: the short form of
// fuzzing that any compiler can do. usage: fuzz_replay CORPUS MILLISECONDS
#include "tests/fuzz/targets.h"

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <random>
#include <span>
#include <string>
#include <vector>

namespace {

std::string slurp(const std::filesystem::path& file) {
    std::ifstream in(file, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), {}};
}

void mutate(std::string& input, const std::vector<std::string>& corpus, std::mt19937& random) {
    const auto at = [&] { return input.empty() ? 0 : random() % input.size(); };
    switch (random() % 5) {
    case 0:
        if (!input.empty()) {
            input[at()] = static_cast<char>(random());
        }
        break;
    case 1: input.erase(at(), random() % 16); break;
    case 2: input.insert(at(), 1 + random() % 8, static_cast<char>(random())); break;
    case 3: {
        const std::string& other = corpus[random() % corpus.size()];
        const std::size_t from = other.empty() ? 0 : random() % other.size();
        input.insert(at(), other.substr(from, random() % 64));
        break;
    }
    default: input.resize(at()); break;
    }
}

} // namespace

int main(int argc, char** argv) {
    if (argc != 3) {
        std::fprintf(stderr, "usage: fuzz_replay CORPUS MILLISECONDS\n");
        return 2;
    }
    const auto each = std::chrono::milliseconds(std::atoi(argv[2]));
    for (const auto& target : undercowl::fuzz::targets()) {
        std::vector<std::string> corpus;
        for (const auto& file :
             std::filesystem::directory_iterator(std::filesystem::path(argv[1]) / target.name)) {
            corpus.push_back(slurp(file.path()));
        }
        std::sort(corpus.begin(), corpus.end()); // a folder lists its files in no order
        if (corpus.empty()) {
            std::fprintf(stderr, "%s: its corpus is empty\n", std::string(target.name).c_str());
            return 1;
        }
        const auto begin = std::chrono::steady_clock::now();
        for (const std::string& input : corpus) {
            target.run(std::as_bytes(std::span(input)));
        }
        std::mt19937 random(1); // NOLINT(cert-msc51-cpp): the same inputs each time
        std::size_t runs = corpus.size();
        while (std::chrono::steady_clock::now() - begin < each) {
            std::string input = corpus[random() % corpus.size()];
            for (unsigned i = 1 + random() % 4; i > 0; --i) {
                mutate(input, corpus, random);
            }
            target.run(std::as_bytes(std::span(input)));
            ++runs;
        }
        std::printf("%-8s %zu files, %zu inputs\n", std::string(target.name).c_str(), corpus.size(), runs);
    }
    return 0;
}
