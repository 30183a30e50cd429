#include "core/job/knowledge.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <random>

using namespace undercowl;
using namespace undercowl::job;

namespace {

const Machine tern{"m", "Marrowin", "Tern 125", 1987, "MT125-004417", ""};
const Owner ilse{"o", "Ilse Quandt", "0123 4567", "ilse@harbour.example", "Pilot boat jetty 3"};

Job oneJob(const std::string& id, const std::string& low, const std::string& torque) {
    Job job;
    job.id = id;
    Reading reading;
    reading.what = "front tyre, cold";
    reading.low = TypedValue{low, "bar"};
    reading.high = TypedValue{"2.1", "bar"};
    reading.limitSource = "tyre plate on the frame";
    job.readings = {reading};
    StripStep step;
    step.title = "rear axle";
    step.hardware = {{1, "nut", "M12", "", TypedValue{torque, "N.m"}}};
    step.asFound = "third mark from the front";
    job.steps = {step};
    Part part;
    part.name = "brake shoes";
    part.number = "QX-4410";
    part.fitted = PartFit::DoesNotFit;
    part.fit = "pivot hole too small";
    job.parts = {part};
    Finding finding;
    finding.text = "sheath brittle behind the headlamp";
    job.findings = {finding};
    wiring::Gathering plug;
    plug.title = "tail plug";
    wiring::PlaceAnswer answer;
    answer.wire.colour = *colour::wireColourFromCode("GN-WH");
    answer.wire.function = "stop lamp";
    plug.at({wiring::Half::Loom, 2, 1}).answer(wiring::Answer::AsFound) = answer;
    job.gatherings = {plug};
    Task task;
    task.id = "t";
    task.title = "rear brake";
    job.tasks = {task};
    WorkSpan span;
    span.task = "t";
    span.stopped = Said{};
    span.minutes = 40;
    job.spans = {span};
    return job;
}

bool knows(const ModelKnowledge& known, FactKind kind, const std::string& what, const std::string& says) {
    return std::any_of(known.facts.begin(), known.facts.end(), [&](const Fact& fact) {
        return fact.kind == kind && fact.what == what && fact.says == says;
    });
}

// Knowledge out of a few words, so that facts meet.
ModelKnowledge anyKnowledge(std::mt19937& dice) {
    ModelKnowledge known{"Marrowin", dice() % 2 == 0 ? "Tern 125" : "tern 125", {}, {}, {}};
    if (dice() % 2 == 0)
        known.firstYear = known.lastYear = 1980 + static_cast<int>(dice() % 10);
    for (int i = 0; i < 8; ++i)
        known.facts.push_back({static_cast<FactKind>(dice() % 7),
                               "thing " + std::to_string(dice() % 3),
                               "N: says " + std::to_string(dice() % 3),
                               dice() % 2 == 0 ? "" : "manual",
                               {"job " + std::to_string(dice() % 4)}});
    return merged(known, known); // in its order, each once
}

} // namespace

TEST_CASE("A job teaches limits, torques, parts, maps, adjustments, findings and minutes of its model") {
    const ModelKnowledge known = learn(oneJob("j1", "1.8", "69"), tern, ilse, 0);
    CHECK(knows(known, FactKind::Limit, "front tyre, cold", "1.8 bar to 2.1 bar"));
    CHECK(knows(known, FactKind::Torque, "rear axle: nut M12", "69 N.m"));
    CHECK(knows(known, FactKind::Part, "brake shoes", "QX-4410: does not fit (pivot hole too small)"));
    CHECK(knows(known, FactKind::Map, "tail plug", "loom 2 GN/WH stop lamp"));
    CHECK(knows(known, FactKind::Adjustment, "rear axle", "third mark from the front"));
    CHECK(knows(known, FactKind::Finding, "sheath brittle behind the headlamp", ""));
    CHECK(knows(known, FactKind::Minutes, "rear brake", "40 min"));
    CHECK(known.firstYear == 1987);
    CHECK(known.facts.size() == 7);
}

TEST_CASE("Nothing of the owner is learned, wherever it was typed") {
    Job job = oneJob("j1", "1.8", "69");
    for (const std::string& secret : {std::string("for ilse"), ilse.phone, ilse.mail, ilse.address,
                                      std::string("see mt125-004417"), std::string("QUANDT wants it")}) {
        Finding finding;
        finding.text = "loose: " + secret;
        job.findings.push_back(finding);
        Reading reading = job.readings[0];
        reading.limitSource = secret;
        job.readings.push_back(reading);
        StripStep step;
        step.title = "tail lamp";
        step.asFound = secret;
        job.steps.push_back(step);
    }
    CHECK(learn(job, tern, ilse, 0) == learn(oneJob("j1", "1.8", "69"), tern, ilse, 0));
}

TEST_CASE("Merging is the same in any order and however often") {
    std::mt19937 dice(11);
    for (int round = 0; round < 300; ++round) {
        const auto a = anyKnowledge(dice);
        const auto b = anyKnowledge(dice);
        const auto c = anyKnowledge(dice);
        REQUIRE(merged(a, b) == merged(b, a));
        REQUIRE(merged(a, merged(b, c)) == merged(merged(a, b), c));
        REQUIRE(merged(a, a) == a);
        REQUIRE(merged(merged(a, b), b) == merged(a, b));
    }
}

TEST_CASE("How often a fact held is counted by jobs, and what contradicts stands side by side") {
    const auto first = learn(oneJob("j1", "1.8", "69"), tern, ilse, 0);
    const auto second = learn(oneJob("j2", "1.8", "69"), tern, {}, 0);
    const auto third = learn(oneJob("j3", "1.8", "55"), tern, {}, 0);
    const auto known = merged(merged(third, first), second);
    const auto groups = contradictions(known);
    REQUIRE(groups.size() == 1);
    REQUIRE(groups[0].size() == 2);
    CHECK(groups[0][0]->says == "69 N.m"); // held twice
    CHECK(groups[0][0]->seen == std::set<Id>{"j1", "j2"});
    CHECK(groups[0][1]->says == "55 N.m");
}

TEST_CASE("A part that fitted once and did not fit once contradicts itself, two numbers do not") {
    Job job = oneJob("j1", "1.8", "69");
    const auto once = learn(job, tern, {}, 0);
    job.id = "j2";
    job.parts[0].fitted = PartFit::Fits;
    CHECK(contradictions(merged(once, learn(job, tern, {}, 0))).size() == 1);
    job.parts[0].number = "QX-9";
    CHECK(contradictions(merged(once, learn(job, tern, {}, 0))).empty());
}

TEST_CASE("Models are the same whatever the capitals") {
    CHECK(sameModel("Marrowin", "Tern 125 ", "marrowin", "TERN 125"));
    CHECK_FALSE(sameModel("Marrowin", "Tern 125", "Marrowin", "Tern 150"));
}
