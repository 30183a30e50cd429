// What is known of a model as a file and as entries; what a job takes over of it.
#include "core/journal/knowledgefile.h"

#include "core/journal/fold.h"
#include "tests/journal/ledger.h"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace undercowl;
using namespace undercowl::journal;

namespace {

job::ModelKnowledge ofTern() {
    job::ModelKnowledge known{"Marrowin", "Tern 125", 1987, 1989, {}};
    known.facts = {
        {job::FactKind::Limit, "front tyre, cold", "1.8 bar to 2.1 bar", "tyre plate", {"a", "b"}},
        {job::FactKind::Part, "brake shoes", "QX-4410: does not fit (pivot)", "", {"a"}},
        {job::FactKind::Map, "tail plug", "loom 1 GN/WH stop lamp; loom 2b BK; unit 3 RD", "", {"a"}},
        {job::FactKind::Finding, "loom brittle", "new sheath", "", {"a", "c"}},
        {job::FactKind::Minutes, "rear brake", "70 min", "", {"a"}}};
    return known;
}

std::function<Id()> counter() {
    return [n = 0]() mutable { return "id-" + std::to_string(++n); };
}

job::Job jobOf(const std::vector<Draft>& drafts) {
    Ledger ledger;
    ledger.add(jobOpened("j", {}));
    for (const Draft& draft : drafts) {
        INFO(draft.body);
        CHECK_FALSE(shapeProblem(ledger.add(draft)));
    }
    return foldJob("j", ledger.entries);
}

TakenWords english(const job::Fact& fact) {
    return {std::string(job::code(fact.kind)), "held in jobs: " + std::to_string(fact.seen.size()),
            "typical of this model, look whether it is so here", "this shop's record"};
}

job::Job taken(const job::Fact& fact) {
    job::Job job;
    job.id = "j";
    return jobOf(takenOver(job, fact, english(fact), counter()));
}

} // namespace

TEST_CASE("A model's knowledge comes back from its file as it was written") {
    const auto read = readKnowledgeFile(knowledgeFile(ofTern()));
    REQUIRE(read);
    auto facts = ofTern().facts;
    CHECK(read->facts.size() == facts.size());
    CHECK(std::is_permutation(facts.begin(), facts.end(), read->facts.begin()));
    CHECK(read->firstYear == 1987);
    const auto refusal = [](const char* text) { return readKnowledgeFile(text).error(); };
    CHECK(refusal("[").find("no JSON") == 0);
    CHECK(refusal(R"({"undercowl":"round"})").find("undercowl") == 0);
    CHECK(refusal(R"({"undercowl":"knowledge","version":9})").find("version") == 0);
    CHECK(
        refusal(R"({"undercowl":"knowledge","version":1,"make":"a","model":"b","facts":[{"kind":"magic"}]})")
            .find("kind") != std::string::npos);
}

TEST_CASE("Learning a file twice, or with another shop's in either order, gives the same") {
    auto other = ofTern();
    other.facts[0].seen = {"z"};
    other.facts[4].says = "95 min";
    const auto learned = [&](const std::vector<job::ModelKnowledge>& files) {
        Ledger ledger;
        const auto ids = counter();
        for (const auto& file : files)
            for (const Draft& draft : knowledgeLearned(file, ids))
                CHECK_FALSE(shapeProblem(ledger.add(draft)));
        return learnedOf(ledger.entries, "marrowin", " TERN 125");
    };
    const auto once = learned({ofTern(), other});
    CHECK(learned({other, ofTern(), other}).facts == once.facts);
    CHECK(once.facts.size() == 6);
    CHECK(once.facts.front().seen.size() == 3);
    CHECK(learnedOf({}, "Marrowin", "Tern 125").facts.empty());
    Ledger ledger;
    for (const Draft& draft : knowledgeLearned(ofTern(), counter()))
        ledger.add(draft);
    CHECK(learnedOf(ledger.entries, "Velbrook", "Gull 50").facts.empty());
}

TEST_CASE("Many facts are kept in entries that each stay small") {
    auto many = ofTern();
    for (int i = 0; i < 950; ++i)
        many.facts.push_back({job::FactKind::Torque, "bolt " + std::to_string(i), "9 N.m", "", {"a"}});
    const auto drafts = knowledgeLearned(many, counter());
    CHECK(drafts.size() == 5);
    Ledger ledger;
    for (const Draft& draft : drafts)
        CHECK_FALSE(shapeProblem(ledger.add(draft)));
    CHECK(learnedOf(ledger.entries, "Marrowin", "Tern 125").facts.size() == many.facts.size());
}

TEST_CASE("What a job takes over says where it came from and how often it held") {
    const auto facts = ofTern().facts;
    const auto limit = taken(facts[0]);
    REQUIRE(limit.memos.size() == 1);
    CHECK(limit.memos[0].text == "limit: front tyre, cold: 1.8 bar to 2.1 bar (tyre plate, held in jobs: 2)");
    const auto part = taken(facts[1]);
    CHECK(part.parts.at(0).number == "QX-4410");
    CHECK(part.parts.at(0).note.find("does not fit (pivot) (held in jobs: 1)") != std::string::npos);
    CHECK(taken(facts[3]).findings.at(0).toDo == "new sheath");
    CHECK(taken(facts[3]).findings.at(0).text.find("look whether it is so here; held in jobs: ") !=
          std::string::npos);
    CHECK(taken(facts[4]).tasks.at(0).minutes == 70);
}

TEST_CASE("A wiring map is taken over as it should be, beside what was found") {
    const auto fact = ofTern().facts[2];
    const auto job = taken(fact);
    REQUIRE(job.gatherings.size() == 1);
    CHECK(job.gatherings[0].places == 3);
    const auto* place = job.gatherings[0].find({wiring::Half::Loom, 1, 1});
    REQUIRE(place != nullptr);
    const auto& should = place->answer(wiring::Answer::AsItShouldBe);
    REQUIRE(should);
    CHECK(should->wire.function == "stop lamp");
    CHECK(colour::code(should->wire.colour) == "GN/WH");
    CHECK(should->source.find("held in jobs: 1") != std::string::npos);
    CHECK_FALSE(place->answer(wiring::Answer::AsFound));
    CHECK(job.gatherings[0].find({wiring::Half::Loom, 2, 2}) != nullptr);
    // The connector that is there already gets the answers; no second one is made.
    const auto again = takenOver(job, fact, english(fact), counter());
    CHECK(std::none_of(again.begin(), again.end(),
                       [](const Draft& draft) { return draft.kind == "gathering.described"; }));
    // A map in words that cannot be read is no map: it is told and not guessed at.
    auto broken = fact;
    broken.says = "loom 1 XX stop lamp";
    CHECK(taken(broken).gatherings.empty());
    CHECK(taken(broken).memos.size() == 1);
}
