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
