#include "core/talk/readback.h"
#include "core/talk/speak.h"

#include <catch2/catch.hpp>

#include <set>

using namespace undercowl;
using namespace undercowl::talk;
using colour::Insulation;
using wiring::Answer;
using wiring::Half;

namespace {

wiring::Wire wire(Insulation base, std::optional<Insulation> tracer, wiring::Terminal terminal = {},
                  std::string function = {}) {
    wiring::Wire made;
    made.colour = {base, tracer};
    made.terminal = terminal;
    made.function = std::move(function);
    return made;
}

void put(wiring::Gathering& gathering, int number, Answer which, const wiring::Wire& what) {
    wiring::PlaceAnswer answer;
    answer.wire = what;
    gathering.at({Half::Loom, number, 1}).answer(which) = answer;
}

job::Job sampleJob() {
    job::Job job;
    wiring::Gathering gathering;
    gathering.id = "g";
    gathering.title = "rear loom, 4-place";
    gathering.places = 4;
    gathering.latch = "top";
    const wiring::Terminal blade{wiring::TerminalKind::Blade, 6.3};
    put(gathering, 1, Answer::AsFound, wire(Insulation::GN, Insulation::WH, blade, "stop lamp"));
    put(gathering, 2, Answer::AsFound, wire(Insulation::BN, {}));
    put(gathering, 2, Answer::AsItShouldBe, wire(Insulation::BK, {}));
    put(gathering, 3, Answer::AsFound, wire(Insulation::GN, Insulation::WH, blade));
    job.gatherings.push_back(gathering);
    job.tasks.push_back({"t", "rear wheel", false, {}, 1});
    job::StripStep off{"s1", "t", "take the rear wheel off", {}, "7", {}, {}, 1, {}, {}};
    off.hardware.push_back({1, "flange nut", "M14", "", job::TypedValue{"104", "N.m"}});
    job::StripStep plate{"s2", "t", "", {}, {}, "shim of 0.5mm behind it", {}, 2, {}, {}};
    plate.hardware.push_back({2, "screw", "M5", "16 mm", {}});
    job.steps = {off, plate};
    return job;
}

} // namespace

TEST_CASE("the read-back says places, contradictions, twins, steps and torques") {
    std::vector<std::string> said;
    for (const Sentence& sentence : readBackSentences(sampleJob(), Answer::AsFound))
        said.push_back(english(sentence));
    CHECK(said ==
          std::vector<std::string>{
              "rear loom, four place, four places, loom half, latch top, one place was not read, look at the "
              "machine",
              "place one, green with white tracer, blade six point three, stop lamp, careful, it looks like "
              "place three",
              "place two, brown, stop, it should be black",
              "place three, green with white tracer, blade six point three, careful, it looks like place one",
              "step one, two times screw, M five, sixteen millimetres, note, shim of zero point five "
              "millimetres "
              "behind it",
              "step two, refit take the rear wheel off, bag seven, one flange nut, M fourteen",
              "flange nut, torque one hundred and four newton metres",
              "that was the last one",
          });
}

TEST_CASE("the wire alone can be repeated") {
    const auto sentences = readBackSentences(sampleJob(), Answer::AsItShouldBe);
    REQUIRE(sentences.size() > 2);
    CHECK(english(sentences[2]) == "place two, black, stop, it was found with brown");
    CHECK(english(wireOnly(sentences[2])) == "black");
    CHECK(wireOnly(sentences[0]).phrases.empty());
}

TEST_CASE("a place without a wire is said to be empty, and so when it is asked for again") {
    wiring::ReadBackItem item;
    item.key = {wiring::Half::Loom, 3, 1};
    item.empty = true;
    const Sentence sentence = wireSentence(item, "conn");
    CHECK(english(sentence) == "place three, empty, no wire");
    CHECK(english(wireOnly(sentence)) == "empty, no wire");
    item.reads = Answer::AsItShouldBe;
    item.contradicts = wire(Insulation::BK, {});
    CHECK(english(wireSentence(item, "conn")) ==
          "place three, empty, no wire, stop, it was found with black");
    item.reads = Answer::AsFound;
    CHECK(english(wireSentence(item, "conn")) == "place three, empty, no wire, stop, it should be black");
    wiring::ReadBackItem other;
    other.key = item.key;
    other.answer.wire = wire(Insulation::BK, {});
    other.otherEmpty = true;
    other.reads = Answer::AsFound;
    CHECK(english(wireSentence(other, "conn")) ==
          "place three, black, stop, it should be empty, without a wire");
    other.reads = Answer::AsItShouldBe;
    CHECK(english(wireSentence(other, "conn")) ==
          "place three, black, stop, it was found empty, without a wire");
}

TEST_CASE("a job without anything to read back says so") {
    const auto sentences = readBackSentences({}, Answer::AsFound);
    REQUIRE(sentences.size() == 1);
    CHECK(english(sentences.front()) == "nothing to read back");
}

TEST_CASE("a step that is refitted is not read again, one that waits says what for") {
    job::Job job = sampleJob();
    job.gatherings.clear();
    job.steps[1].refitted = job::Refitted{};
    job.tasks[0].waiting = true;
    job.tasks[0].waitingFor = "2 bearings";
    const auto sentences = readBackSentences(job, Answer::AsFound);
    REQUIRE(sentences.size() == 3);
    CHECK(english(sentences[0]) ==
          "step one, refit take the rear wheel off, wait, this task waits for two bearings, bag "
          "seven, one flange nut, M fourteen");
}

TEST_CASE("a step says its cautions before what to take") {
    job::Job job = sampleJob();
    job.steps[0].cautions = {"brake-dust", "no-such-key"};
    const auto sentences = stepSentences(job, job.steps[0], 2);
    REQUIRE(sentences.size() == 2);
    CHECK(english(sentences[0]) ==
          "step two, refit take the rear wheel off, careful, no compressed air on old brake dust; mask, wipe "
          "wet, bag seven, one flange nut, M fourteen");
}

TEST_CASE("a hose or cable is read back by where it runs and ends") {
    job::StripStep cable{"s3", "t", "throttle cable off", {}, {}, "greased", {}, 3, {}, {}};
    cable.routing = "left of the headstock, over the clutch cable";
    cable.ends = "grip, upper slot; carburettor, right";
    cable.asFound = "adjuster 7 turns out";
    job::Job job;
    const Sentence sentence = lineSentence(job, cable);
    CHECK(sentence.kind == Sentence::Kind::Line);
    CHECK(sentence.about == "s3");
    CHECK(english(sentence) == "throttle cable off, it runs left of the headstock, over the clutch cable, "
                               "its ends, grip, upper slot; "
                               "carburettor, right, as found, adjuster seven turns out, note, greased");
    CHECK(english(endsOnly(sentence)) == "its ends, grip, upper slot; carburettor, right");
    cable.ends.clear();
    cable.routing.clear();
    CHECK(english(lineSentence(job, cable)) ==
          "throttle cable off, as found, adjuster seven turns out, how it runs was not written down and "
          "there is no photo, look it up in the machine's manual, note, greased");
    CHECK(endsOnly(lineSentence(job, cable)).phrases.empty());
    job::Photo photo;
    photo.about = "s3";
    photo.purpose = job::PhotoPurpose::Refit; // shows what is to be proved
    job.photos = {photo};
    CHECK(english(lineSentence(job, cable)).find("no photo") != std::string::npos);
    job.photos[0].purpose = job::PhotoPurpose::Strip;
    CHECK(english(lineSentence(job, cable)) ==
          "throttle cable off, as found, adjuster seven turns out, how it "
          "runs was not written down, look at its photo, note, greased");
}

TEST_CASE("a refit step says where its hose runs, and what was let out of it") {
    job::Job job = sampleJob();
    job.steps[1].title = "brake hose off";
    job.steps[1].routing = "in front of the fork leg";
    job.steps[1].letOut = "brake fluid, 40 ml";
    CHECK(english(stepSentences(job, job.steps[1], 1)[0]) ==
          "step one, refit brake hose off, two times screw, M five, sixteen millimetres, it runs in front of "
          "the "
          "fork leg, let out, brake fluid, forty millilitres, note, shim of zero point five millimetres "
          "behind it");
}

TEST_CASE("the torques of a step can be said alone, and so that none is known") {
    const job::Job job = sampleJob();
    const auto known = torqueSentences(job.steps[0]);
    REQUIRE(known.size() == 1);
    CHECK(known[0].kind == Sentence::Kind::Torque);
    CHECK(english(known[0]) == "flange nut, torque one hundred and four newton metres");
    const auto none = torqueSentences(job.steps[1]);
    REQUIRE(none.size() == 1);
    CHECK(english(none[0]) == "no torque was written down, look it up");
}

TEST_CASE("numbers and units are said as a mechanic says them") {
    CHECK(spoken(job::TypedValue{"9.3", "N.m"}) == "nine point three newton metres");
    CHECK(spoken(job::TypedValue{"1", "N.m"}) == "one newton metre");
    CHECK(spoken(job::TypedValue{"32", "psi"}) == "thirty two p s i");
    CHECK(spoken(job::TypedValue{"2.3", "mm"}) == "two point three millimetres");
    CHECK(spoken(job::TypedValue{"3", "thumbs"}) == "three thumbs");
    CHECK(spokenText("M5 x 16 mm") == "M five by sixteen millimetres");
    CHECK(spokenText("1 mm too much, 2mm") == "one millimetre too much, two millimetres");
    CHECK(spokenText("in the bag") == "in the bag");
    CHECK(spokenText("") == "");
}

TEST_CASE("every key has one pattern") {
    std::set<std::string_view> keys;
    for (const Pattern& pattern : patterns())
        CHECK(keys.insert(pattern.key).second);
    for (const Sentence& sentence : readBackSentences(sampleJob(), Answer::AsFound))
        for (const Phrase& phrase : sentence.phrases)
            CHECK(keys.count(phrase.key) == 1);
}

TEST_CASE("the end of a read-back tells what does not match and what was left out") {
    CHECK(english(endSentence(0, 0)) == "that was the last one, all match");
    CHECK(english(endSentence(1, 0)) == "that was the last one, one does not match");
    CHECK(english(endSentence(2, 1)) == "that was the last one, two do not match, one was not read back");
    CHECK(english(endSentence(0, 3)) == "that was the last one, three were not read back");
}
