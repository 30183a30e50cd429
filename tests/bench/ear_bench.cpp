// How much of what is said the ear hears, and how much it hears wrongly, in synthesised voices under noise.
//
//   bench_ear [--tuning] [--every N] [--folder DIR] [--list FILE]
//
// The voices that were held back while the ear was made, or with --tuning the others; with --every N only
// each Nth phrase. Each phrase is spoken by every voice. Exit 1 when a bar is missed.
#include "platform/ear/ear.h"
#include "tests/bench/ear_noise.h"
#include "tests/bench/ear_phrases.h"
#include "tests/bench/ear_voices.h"

#include <algorithm>
#include <array>
#include <atomic>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <mutex>
#include <optional>
#include <string>
#include <string_view>
#include <thread>
#include <vector>

namespace {

using namespace undercowl;

struct Condition {
    const char* name;
    bench::Noise noise;
    double decibels;
    double right; // bar
    double wrong; // bar
    bool outside; // speech outside the grammar: 'wrong' is what may be accepted of it
};

constexpr std::array conditions{
    Condition{"quiet", bench::Noise::None, 0, 0.92, 0.02, false},
    Condition{"brown noise at 10 dB", bench::Noise::Brown, 10, 0.88, 0.03, false},
    Condition{"engine at 20 dB", bench::Noise::Engine, 20, 0.65, 0.03, false},
    Condition{"engine at 10 dB", bench::Noise::Engine, 10, 0, 0.03, false},
    Condition{"outside the grammar, quiet", bench::Noise::None, 0, 0, 0.05, true},
    Condition{"outside the grammar, engine at 10 dB", bench::Noise::Engine, 10, 0, 1, true},
};

struct Task {
    std::size_t condition{};
    const bench::Voice* voice{};
    std::string words;
    std::optional<talk::Intent> meant;
    unsigned seed{};
};

struct Count {
    int said{};
    int right{};
    int wrong{};
};

struct Options {
    bool tuning{};
    std::size_t every{1};
    std::string folder{"/tmp/undercowl-voices"};
    std::string list;
};

std::vector<Task> tasksOf(const Options& options) {
    const auto inside = bench::phrases(options.tuning ? 11 : 12);
    const auto outside = bench::otherTalk(!options.tuning);
    std::vector<Task> tasks;
    for (std::size_t c = 0; c < conditions.size(); ++c)
        for (const bench::Voice& voice : bench::voices()) {
            if (voice.heldBack == options.tuning)
                continue;
            const auto add = [&](const std::string& words, const std::optional<talk::Intent>& meant) {
                tasks.push_back({c, &voice, words, meant, static_cast<unsigned>(tasks.size())});
            };
            if (conditions.at(c).outside)
                for (std::size_t i = 0; i < outside.size(); i += options.every)
                    add(outside[i], std::nullopt);
            else
                for (std::size_t i = 0; i < inside.size(); i += options.every)
                    add(inside[i].words, inside[i].meant);
        }
    return tasks;
}

class Bench {
public:
    explicit Bench(const Options& options) : options_(options), tasks_(tasksOf(options)) {
        if (!options.list.empty())
            list_.open(options.list);
        counts_.resize(conditions.size() * bench::voices().size());
    }

    bool run() {
        std::vector<std::thread> threads;
        for (unsigned i = 0; i < std::max(1U, std::thread::hardware_concurrency()); ++i)
            threads.emplace_back([this] { work(); });
        for (std::thread& thread : threads)
            thread.join();
        return !failed_;
    }

    // Whether all bars hold.
    bool report() const {
        bool held = true;
        std::printf("%-40s %8s %8s   %s\n", "condition", "right", "wrong", "bars");
        for (std::size_t c = 0; c < conditions.size(); ++c) {
            const Condition& condition = conditions.at(c);
            Count sum;
            for (std::size_t v = 0; v < bench::voices().size(); ++v) {
                const Count& count = counts_[c * bench::voices().size() + v];
                sum.said += count.said;
                sum.right += count.right;
                sum.wrong += count.wrong;
            }
            line(condition.name, sum);
            const double said = std::max(1, sum.said);
            const bool kept = sum.right / said >= condition.right && sum.wrong / said <= condition.wrong;
            std::printf("   %.2f %.2f %s\n", condition.right, condition.wrong, kept ? "kept" : "MISSED");
            held = held && kept;
            for (std::size_t v = 0; v < bench::voices().size(); ++v) {
                const Count& count = counts_[c * bench::voices().size() + v];
                if (count.said > 0) {
                    line(("  " + std::string{bench::voices()[v].name}).c_str(), count);
                    std::printf("\n");
                }
            }
        }
        std::printf("from the end of the sentence to the answer, longest: %.2f s\n", longest_);
        return held;
    }

private:
    static void line(const char* name, const Count& count) {
        const double said = std::max(1, count.said);
        std::printf("%-40s %8.3f %8.3f", name, count.right / said, count.wrong / said);
    }

    void work() {
        const auto ear = platform::openEar();
        if (!ear) {
            std::fprintf(stderr, "bench_ear: %s\n", ear.error().c_str());
            failed_ = true;
            return;
        }
        for (std::size_t i = next_++; i < tasks_.size(); i = next_++)
            one(**ear, tasks_[i]);
    }

    void one(platform::Ear& ear, const Task& task) {
        const Condition& condition = conditions.at(task.condition);
        std::unique_lock lock{speaking_}; // one file at a time, since two may ask for the same
        const platform::Samples speech = bench::speak(*task.voice, task.words, options_.folder);
        lock.unlock();
        if (speech.empty()) {
            std::fprintf(stderr, "bench_ear: the voice '%s' is not installed\n",
                         std::string{task.voice->name}.c_str());
            failed_ = true;
            return;
        }
        const auto sound = bench::under(condition.noise, condition.decibels, speech, task.seed);
        const auto start = std::chrono::steady_clock::now();
        const platform::Heard heard = ear.hear(sound);
        const double took = std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
        const bool right = heard.accepted() && task.meant && *heard.intent == *task.meant;
        const std::lock_guard counting{counting_};
        Count& count = counts_[task.condition * bench::voices().size() +
                               static_cast<std::size_t>(task.voice - bench::voices().data())];
        ++count.said;
        count.right += right ? 1 : 0;
        count.wrong += heard.accepted() && !right ? 1 : 0;
        longest_ = std::max(longest_, took);
        if (list_.is_open())
            list_ << condition.name << '\t' << task.voice->name << '\t' << task.words << '\t' << heard.text
                  << '\t' << (heard.accepted() ? (right ? "right" : "WRONG") : "rejected") << '\t'
                  << heard.message << '\n';
    }

    Options options_;
    std::vector<Task> tasks_;
    std::vector<Count> counts_;
    std::ofstream list_;
    std::mutex speaking_;
    std::mutex counting_;
    std::atomic<std::size_t> next_{};
    std::atomic<bool> failed_{};
    double longest_{};
};

} // namespace

int main(int argc, char** argv) {
    Options options;
    for (int i = 1; i < argc; ++i) {
        const std::string_view name{argv[i]};
        const char* value = i + 1 < argc ? argv[i + 1] : "";
        if (name == "--tuning") {
            options.tuning = true;
            continue;
        }
        if (name == "--every")
            options.every = static_cast<std::size_t>(std::max(1, std::atoi(value))); // NOLINT(cert-err34-c)
        else if (name == "--folder")
            options.folder = value;
        else if (name == "--list")
            options.list = value;
        else {
            std::fprintf(stderr, "bench_ear: %s is not known\n", argv[i]);
            return 2;
        }
        ++i;
    }
    std::filesystem::create_directories(options.folder);
    Bench bench{options};
    if (!bench.run())
        return 2;
    return bench.report() ? 0 : 1;
}
