// Hands-free: how often the wake phrase is missed, and how often something else is taken for it, in
// synthesised voices, through the same cutting into utterances as in the app.
//
//   bench_wake [--tuning] [--minutes N] [--folder DIR]
//
// The voices that were held back while the thresholds were set, or with --tuning the others. N minutes of
// each noise and of talk in each condition; 40 for the figures in docs/speech.md. Exit 1 when there
// is more than one false call an hour.
#include "core/talk/grammar.h"
#include "platform/ear/ear.h"
#include "platform/listener/utterances.h"
#include "tests/bench/ear_noise.h"
#include "tests/bench/ear_phrases.h"
#include "tests/bench/ear_voices.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <random>
#include <string>
#include <string_view>
#include <vector>

namespace {

using namespace undercowl;
using platform::Samples;

constexpr std::size_t portion = platform::earRate / 10; // as a microphone hands it over
constexpr std::size_t gap = std::size_t{platform::earRate} * 2;
constexpr int callsOfEach = 10;

struct Condition {
    const char* name;
    bench::Noise noise;
    double decibels;
};

constexpr std::array conditions{
    Condition{"quiet", bench::Noise::None, 0},
    Condition{"brown noise at 10 dB", bench::Noise::Brown, 10},
    Condition{"engine at 20 dB", bench::Noise::Engine, 20},
    Condition{"engine at 10 dB", bench::Noise::Engine, 10},
};

double power(const Samples& samples) {
    double sum = 0;
    for (const float sample : samples)
        sum += static_cast<double>(sample) * sample;
    return sum / static_cast<double>(std::max<std::size_t>(samples.size(), 1));
}

// The speech with two seconds before and after it, and the noise over all of it at this ratio to the speech.
Samples within(const Condition& condition, const Samples& speech, unsigned seed) {
    Samples all(gap, 0.F);
    all.insert(all.end(), speech.begin(), speech.end());
    all.insert(all.end(), gap, 0.F);
    const double longer = 10 * std::log10(power(speech) / power(all)); // the silence counts in under()
    return bench::under(condition.noise, condition.decibels - longer, all, seed);
}

// How often something in it is taken for the wake phrase.
int calls(platform::Ear& ear, platform::Utterances& place, const Samples& sound, int& utterances) {
    int count = 0;
    for (std::size_t at = 0; at < sound.size(); at += portion)
        for (const Samples& one :
             place.take(std::span(sound).subspan(at, std::min(portion, sound.size() - at)))) {
            ++utterances;
            count += ear.called(one) ? 1 : 0;
        }
    return count;
}

struct Wanted {
    bool heldBack{true};
    double minutes{60};
    std::filesystem::path folder{std::filesystem::temp_directory_path() / "undercowl-voices"};
};

std::vector<const bench::Voice*> voicesOf(const Wanted& wanted) {
    std::vector<const bench::Voice*> all;
    for (const bench::Voice& voice : bench::voices())
        if (voice.heldBack == wanted.heldBack)
            all.push_back(&voice);
    return all;
}

void missed(platform::Ear& ear, const Wanted& wanted, const Condition& condition) {
    const std::string phrase{talk::wakePhrase()};
    int said = 0;
    int woken = 0;
    int utterances = 0;
    unsigned seed = 1;
    for (const bench::Voice* voice : voicesOf(wanted)) {
        const Samples speech = bench::speak(*voice, phrase, wanted.folder);
        for (int i = 0; i < callsOfEach && !speech.empty(); ++i) {
            platform::Utterances place;
            ++said;
            woken += calls(ear, place, within(condition, speech, ++seed), utterances) > 0 ? 1 : 0;
        }
    }
    std::printf("%-28s missed %d of %d\n", condition.name, said - woken, said);
}

// Talk that is none of the grammar, and sentences that are, in all voices, with pauses, until the time is
// over.
int falselyWoken(platform::Ear& ear, const Wanted& wanted, const Condition& condition) {
    std::vector<std::string> sentences = bench::otherTalk(wanted.heldBack);
    for (const bench::SpokenPhrase& phrase : bench::phrases(wanted.heldBack ? 7 : 11))
        sentences.push_back(phrase.words);
    // What is most like it.
    for (const char* words :
         {"turquoise battery positive", "turquoise", "battery twelve point six volts", "the battery",
          "turquoise blade six point three", "charge the battery", "torque the battery clamp"})
        sentences.emplace_back(words);
    std::minstd_rand random{wanted.heldBack ? 3U : 5U};
    std::shuffle(sentences.begin(), sentences.end(), random);
    const auto all = voicesOf(wanted);
    platform::Utterances place;
    int woken = 0;
    int utterances = 0;
    double seconds = 0;
    for (unsigned i = 0; seconds < wanted.minutes * 60; ++i) {
        const bench::Voice& voice = *all[i % all.size()];
        const Samples speech =
            bench::speak(voice, sentences[i / all.size() % sentences.size()], wanted.folder);
        if (speech.empty())
            return -1;
        const Samples sound = within(condition, speech, i);
        seconds += static_cast<double>(sound.size()) / platform::earRate;
        const int now = calls(ear, place, sound, utterances);
        if (now > 0)
            std::printf("  woken by \"%s\" (%s)\n", sentences[i / all.size() % sentences.size()].c_str(),
                        std::string(voice.name).c_str());
        woken += now;
    }
    std::printf("%-28s false %d in %.0f minutes of talk, %d utterances\n", condition.name, woken,
                seconds / 60, utterances);
    return woken;
}

// Noise alone, that comes and goes as a compressor does.
int wokenByNoise(platform::Ear& ear, const Wanted& wanted, const Condition& condition) {
    platform::Utterances place;
    int woken = 0;
    int utterances = 0;
    double seconds = 0;
    for (unsigned i = 0; seconds < wanted.minutes * 60; ++i) {
        // A stretch of the level that speech has: under() wants something to be noise to.
        Samples reference(std::size_t{platform::earRate} * (3 + i % 11), 0.F);
        for (std::size_t k = 0; k < reference.size(); ++k)
            reference[k] = 1e-4F * (k % 2 == 0 ? 1.F : -1.F);
        Samples sound = bench::under(condition.noise, i % 2 == 0 ? -55 : -40, reference, i + 1);
        seconds += static_cast<double>(sound.size()) / platform::earRate;
        woken += calls(ear, place, sound, utterances);
    }
    std::printf("%-28s false %d in %.0f minutes of noise alone, %d utterances\n", condition.name, woken,
                seconds / 60, utterances);
    return woken;
}

} // namespace

int main(int argc, char** argv) {
    Wanted wanted;
    for (int i = 1; i < argc; ++i) {
        const std::string_view word = argv[i];
        if (word == "--tuning")
            wanted.heldBack = false;
        else if (word == "--minutes" && i + 1 < argc)
            wanted.minutes = std::atof(argv[++i]);
        else if (word == "--folder" && i + 1 < argc)
            wanted.folder = argv[++i];
        else
            return std::fputs("bench_wake [--tuning] [--minutes N] [--folder DIR]\n", stderr), 2;
    }
    std::filesystem::create_directories(wanted.folder);
    const auto ear = platform::openEar();
    if (!ear)
        return std::fprintf(stderr, "%s\n", ear.error().c_str()), 2;
    bool good = true;
    int woken = 0;
    double hours = 0;
    for (const Condition& condition : conditions) {
        missed(**ear, wanted, condition);
        const int byTalk = falselyWoken(**ear, wanted, condition);
        good = good && byTalk >= 0;
        woken += byTalk;
        hours += wanted.minutes / 60;
        if (condition.noise != bench::Noise::None) {
            woken += wokenByNoise(**ear, wanted, condition);
            hours += wanted.minutes / 60;
        }
    }
    std::printf("false calls an hour: %.2f\n", woken / hours);
    return good && woken <= hours ? 0 : 1;
}
