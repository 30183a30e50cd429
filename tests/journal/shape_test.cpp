#include "core/journal/fold.h"
#include "tests/journal/ledger.h"

#include <catch2/catch.hpp>

using namespace undercowl;
using namespace undercowl::journal;

namespace {

std::optional<std::string> problem(const char* kind, const std::string& body) {
    Ledger ledger;
    return shapeProblem(ledger.add({kind, "j", "s", body, {}}));
}

} // namespace

TEST_CASE("A body that does not fit its kind is refused with the field's name") {
    CHECK_THAT(*problem("step.stripped", R"({"note":"x"})"), Catch::Contains("title: missing"));
    CHECK_THAT(*problem("step.stripped", R"({"title":3})"), Catch::Contains("title: must be text"));
    CHECK_THAT(*problem("step.stripped", R"({"title":"x","hardware":[{"count":0}]})"),
               Catch::Contains("count"));
    CHECK_THAT(*problem("finding.noted", R"({"text":"x","severity":"awful"})"),
               Catch::Contains("unknown word 'awful'"));
    CHECK_THAT(
        *problem("photo.taken", R"({"media":"a","purpose":"strip","width":1e9,"height":1,"taken_at":1})"),
        Catch::Contains("width"));
    CHECK_THAT(
        *problem("photo.taken", R"({"media":"a","purpose":"strip","width":18446744073709551615,"height":1,
               "taken_at":1})"),
        Catch::Contains("width"));
    CHECK_THAT(*problem("wire.answered", R"({"place":{"half":"loom","number":61},"answer":"as found"})"),
               Catch::Contains("number"));
    CHECK_THAT(*problem("step.stripped", "{"), Catch::Contains("not JSON"));
    CHECK_THAT(*problem("step.stripped", "[]"), Catch::Contains("object"));
    CHECK_THAT(*problem("step.stripped", R"({"title":")" + std::string(20'001, 'x') + "\"}"),
               Catch::Contains("longer"));
    CHECK_THAT(*problem("step.stripped", R"({"title":"a\u0000b"})"), Catch::Contains("NUL"));
    CHECK_THAT(*problem("job.exploded", "{}"), Catch::Contains("not known"));
    CHECK_FALSE(problem("step.stripped", R"({"title":"mirror off","something_newer":1})"));
}

TEST_CASE("An unreadable entry is listed, has no effect and hurts no other") {
    Ledger ledger;
    ledger.add(stepStripped("j", stripStep("s1", "mirror off")));
    const Id bad = ledger.add({"step.stripped", "j", "s2", R"({"title":7})", {}}).id;
    ledger.add(stepStripped("j", stripStep("s3", "clamp off")));
    const job::Job job = foldJob("j", ledger.entries);
    CHECK(job.steps.size() == 2);
    CHECK(job.unreadable == std::vector{bad});
}

TEST_CASE("Media named by an entry is found in photos and memos only") {
    Ledger ledger;
    job::Memo memo;
    memo.id = "m";
    memo.media = "ab.wav";
    memo.marks = {1500, 4200};
    CHECK(mediaNamed(ledger.add(memoKept("j", memo))) == "ab.wav");
    CHECK(mediaNamed(ledger.add(stepStripped("j", stripStep("s", "x")))).empty());
    CHECK(mediaNamed(ledger.add({"photo.taken", "j", "s", "nonsense", {}})).empty());
}

TEST_CASE("Text that is no UTF-8 is kept as far as it can be read") {
    job::Finding finding;
    finding.id = "f";
    finding.text = "crack \xff here";
    Ledger ledger;
    ledger.add(findingNoted("j", finding));
    CHECK_THAT(foldJob("j", ledger.entries).findings.at(0).text, Catch::StartsWith("crack "));
}
