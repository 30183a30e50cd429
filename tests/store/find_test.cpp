#include "core/journal/sayclosing.h"
#include "core/journal/saywork.h"
#include "tests/store/shop.h"

#include <algorithm>

using namespace undercowl;
using namespace undercowl::store;
using namespace undercowl::store::test;

namespace {

std::vector<HitKind> kinds(const Store& store, const std::string& words) {
    std::vector<HitKind> found;
    for (const Hit& hit : must(store.find(words))) {
        found.push_back(hit.kind);
    }
    return found;
}

} // namespace

TEST_CASE("everything that was typed is found by the beginnings of its words") {
    Shop shop;
    const Id job = shop.wholeJob("2026-001");
    using enum HitKind;
    const std::vector<std::pair<std::string, HitKind>> wanted{
        {"trn125-04", Machine},  {"quarm", Owner},        {"555 0100", Owner}, {"2026-001", Job},
        {"light stays", Job},    {"crack", Finding},      {"6-place", Step},   {"M5 screw", Step},
        {"gy/rd", Wire},         {"grey red stop", Wire}, {"bh-77", Part},     {"battery 12.6", Reading},
        {"old hose back", Memo}, {"RUSTY", Photo},
    };
    for (const auto& [words, kind] : wanted) {
        INFO(words);
        const auto found = kinds(shop.store, words);
        REQUIRE_FALSE(found.empty());
        CHECK(found.front() == kind);
    }
    const auto hits = must(shop.store.find("trn125"));
    REQUIRE(hits.size() == 1);
    CHECK(hits[0].job == job); // the machine's last job
    CHECK(hits[0].machine == "Marrowin Tern 125, 1987");
    CHECK_THAT(hits[0].snippet, Catch::Contains("[TRN125"));
    CHECK(must(shop.store.find("tern", 1)).size() == 1);
    CHECK(must(shop.store.find("tern")).front().kind == Machine);
}

TEST_CASE("part and frame numbers are found however they are spaced") {
    Shop shop;
    const Id job = shop.smallJob("1");
    shop.say(journal::partStated(job, {shop.store.newId(), "brake hose", "7F3-2581 0.A", {}, {}, {}, {}}));
    for (const char* written :
         {"7F3-2581 0.A", "7f325810a", "7F3 2581", "7f3.25", "7F3-25810-A", "7 F3 25 81"}) {
        INFO(written);
        const auto hits = must(shop.store.find(written));
        REQUIRE(hits.size() == 1);
        CHECK(hits[0].kind == HitKind::Part);
        CHECK(hits[0].job == job);
    }
    CHECK(kinds(shop.store, "7f325811").empty());
    CHECK(kinds(shop.store, "7f3").size() == 1); // a word, as before
    CHECK(kinds(shop.store, "2581").size() == 1);
    CHECK(must(shop.store.find("7f325810a", 0)).empty());
}

TEST_CASE("a wire is found by its colours and its end") {
    Shop shop;
    shop.wholeJob("2026-001");
    // As one asks: where did I see grey with a red tracer?
    CHECK(kinds(shop.store, "grey with red tracer").front() == HitKind::Wire);
    const Id job = shop.smallJob("2");
    wiring::Gathering connector;
    connector.id = shop.store.newId();
    connector.title = "loom behind the lamp";
    connector.places = 2;
    connector.condition = "green with verdigris";
    const auto answered = [](colour::Insulation base, colour::Insulation tracer, wiring::TerminalKind kind) {
        wiring::PlaceAnswer answer;
        answer.wire.colour = {base, tracer};
        answer.wire.terminal = {kind, 6.0};
        return answer;
    };
    using colour::Insulation;
    shop.say(journal::gatheringDescribed(job, connector));
    shop.say(journal::wireAnswered(job, connector.id, {wiring::Half::Loom, 1, 1}, wiring::Answer::AsFound,
                                   answered(Insulation::GN, Insulation::PK, wiring::TerminalKind::Ring)));
    shop.say(journal::wireAnswered(job, connector.id, {wiring::Half::Loom, 2, 1}, wiring::Answer::AsFound,
                                   answered(Insulation::GN, Insulation::PK, wiring::TerminalKind::Fork)));
    for (const char* question : {"Where did I see green with a pink tracer on a ring terminal?",
                                 "green with a pink tracer on a ring terminal", "green pink ring"}) {
        INFO(question);
        const auto hits = must(shop.store.find(question));
        REQUIRE(hits.size() == 1); // not the one on a fork
        CHECK(hits[0].kind == HitKind::Wire);
        CHECK(hits[0].subject == connector.id);
        CHECK(hits[0].connector == "loom behind the lamp");
        CHECK(hits[0].job == job);
    }
    for (const char* question : {"gr\u00fcn mit rosa Streifen", "GR\u00dcN/ROSA Ring\u00f6se", "vert rose",
                                 "verde-rosa anillo", "verde rosa occhiello", "gruenes rosa"}) {
        INFO(question);
        const auto hits = must(shop.store.find(question));
        REQUIRE_FALSE(hits.empty());
        CHECK(hits[0].kind == HitKind::Wire);
        CHECK(hits[0].job == job);
    }
    CHECK(kinds(shop.store, "grau rosa").empty());
    CHECK(kinds(shop.store, "where is the one with it").empty()); // "one" is asked for, and nowhere
    const auto itself = must(shop.store.find("verdigris"));
    CHECK(itself.front().title == "loom behind the lamp");
    CHECK(itself.front().connector.empty());
}

TEST_CASE("what was said on the way is found too: routing, other numbers, fluids, rounds, the owner's word") {
    Shop shop;
    const Id job = shop.smallJob("2026-002");
    job::StripStep step;
    step.id = shop.store.newId();
    step.title = "throttle cable off";
    step.routing = "over the fork stop";
    step.ends = "upper slot of the grip";
    step.letOut = "gear oil";
    step.asFound = "seven turns";
    shop.say(journal::stepStripped(job, step));
    job::Part part;
    part.id = shop.store.newId();
    part.name = "bearing";
    part.otherNumbers = "XQ 6201";
    part.supplier = "Quayside Bearings";
    part.fit = "bore one millimetre small";
    shop.say(journal::partStated(job, part));
    shop.say(journal::consumableUsed(
        job, {shop.store.newId(), "brake fluid", "DOT 4", {}, "lot 77", "2026-01-02", {}, {}}));
    shop.say(journal::approvalAsked(
        job, {shop.store.newId(), "rear drum", true, "Wim", "called", job::TypedValue{"80", "EUR"}, {}, {}}));
    shop.say(journal::recheckDue(job, {shop.store.newId(), "spoke nipples", {}, 7, {}}));
    shop.say(
        journal::roadTested(job, {shop.store.newId(), job::TypedValue{"12", "km"}, "pulls leftward", {}}));
    job::Task task;
    task.id = shop.store.newId();
    task.title = "rear wheel";
    shop.say(journal::taskNamed(job, task));
    shop.say(journal::taskHeld(job, task.id, "a gudgeon"));
    shop.say(journal::functionChecked(job, {"horn", job::FunctionAnswer::DoesNot, "croaks", {}}));
    job::Round round;
    round.id = shop.store.newId();
    round.key = "every";
    round.title = "Every machine";
    round.checks = {{"frame", "welds", {}, {}, {}, {}}};
    shop.say(journal::roundBegun(job, round));
    shop.say(journal::checkAnswered(job, round.id, "welds", job::CheckAnswer::NotDone, "under mud"));
    for (const char* words :
         {"fork stop", "upper slot", "gear oil", "seven turns", "xq 6201", "quayside", "millimetre small",
          "lot 77", "rear drum wim", "nipples", "leftward", "gudgeon", "croaks", "mud"}) {
        INFO(words);
        const auto hits = must(shop.store.find(words));
        REQUIRE_FALSE(hits.empty());
        CHECK(hits.front().job == job);
    }
}

TEST_CASE("case and diacritics do not matter, and every word must occur") {
    Shop shop;
    const Id job = shop.smallJob("1");
    shop.say(journal::findingNoted(
        job, {shop.store.newId(), "Dämpfer undicht, Éclairage OK", {}, {}, false, {}, {}}));
    CHECK(kinds(shop.store, "dampf").size() == 1);
    CHECK(kinds(shop.store, "ECLAIRAGE dämp").size() == 1);
    CHECK(kinds(shop.store, "dampf missing").empty());
}

TEST_CASE("nothing that is typed into the search is taken as a command") {
    Shop shop;
    shop.wholeJob("2026-001");
    for (const std::string words :
         {"", "   ", "\"", "\"\"", "a\"b", "*", "brake*", "NOT", "brake OR hose", "(", "title:x", "-",
          "^brake", "NEAR(a b)", "'; DROP TABLE entry", "{", "\\", "\U0001F6F5", "?1"}) {
        INFO(words);
        CHECK(shop.store.find(words));
    }
    CHECK(kinds(shop.store, "NOT").empty());
    CHECK_FALSE(kinds(shop.store, "brake \U0001F6F5 *").empty()); // signs that are no words are passed over
    CHECK(shop.store.find(std::string("bra\0ke", 6)));
    std::string many;
    for (int i = 0; i < 17; ++i) {
        many += "w ";
    }
    CHECK(shop.store.find(many).error().fault == Fault::Refused);
}

// In a large shop a word that stands in many lines is answered by those, newest first; what only begins with
// it comes when there are few.
TEST_CASE("words of many lines, and a single letter, are found without gathering them all") {
    Shop shop;
    const Id job = shop.smallJob("2026-001");
    std::vector<journal::Draft> drafts;
    for (int i = 0; i < 700; ++i) {
        drafts.push_back(
            journal::memoKept(job, {shop.store.newId(), {}, "gasket " + std::to_string(i), {}, {}}));
    }
    drafts.push_back(journal::memoKept(job, {shop.store.newId(), {}, "gasketless joint", {}, {}}));
    must(shop.store.append(drafts));
    const auto titles = [&](const char* words) {
        std::vector<std::string> all;
        for (const Hit& hit : must(shop.store.find(words, 5))) {
            all.push_back(hit.title);
        }
        return all;
    };
    CHECK(titles("gasket") ==
          std::vector<std::string>{"gasket 699", "gasket 698", "gasket 697", "gasket 696", "gasket 695"});
    CHECK(titles("gaske").front() == "gasketless joint"); // still being typed: a beginning, newest first
    CHECK(titles("g").front() == "gasketless joint");
    CHECK(titles("gasketl") == std::vector<std::string>{"gasketless joint"});
    CHECK(titles("gasket 69").front() == "gasket 69"); // few: ranked
    CHECK(titles("gask join") == std::vector<std::string>{"gasketless joint"});
    CHECK(titles("j g") == std::vector<std::string>{"gasketless joint"});
}
