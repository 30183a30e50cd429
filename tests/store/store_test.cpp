#include "tests/store/shop.h"

#include "core/job/message.h"
#include "core/journal/fold.h"

#include <fstream>

using namespace undercowl;
using namespace undercowl::store;
using namespace undercowl::store::test;

TEST_CASE("what was said is there after the store was closed and opened again") {
    Folder folder;
    Id job;
    Id device;
    std::string shown;
    {
        Store store = must(Store::open(folder.path() / "new" / "shop"));
        device = store.device();
        const Id mechanic = store.newId();
        must(store.append(journal::mechanicNamed({mechanic, "Ada"})));
        must(store.chooseMechanic(mechanic));
        job = store.newId();
        journal::JobPatch patch;
        patch.number = "2026-014";
        must(store.append(journal::jobOpened(job, patch)));
        must(store.set("units", "metric"));
        must(store.keepDraft("finding", R"({"text":"chai"})"));
        shown = everything(store);
    }
    Store store = must(Store::open(folder.path() / "new" / "shop"));
    CHECK(store.device() == device);
    CHECK(must(store.mechanics()).at(0).name == "Ada");
    CHECK(store.mechanic() == must(store.mechanics()).at(0).id);
    CHECK(store.setting("units") == "metric");
    CHECK(store.setting("never set").empty());
    CHECK(store.draft("finding") == R"({"text":"chai"})");
    must(store.dropDraft("finding"));
    CHECK(store.draft("finding") == std::nullopt);
    CHECK(must(store.job(job)).number == "2026-014");
    CHECK(everything(store) == shown);
}

TEST_CASE("the job is what its entries fold to, and the lists say the same") {
    Shop shop;
    const Id id = shop.wholeJob("2026-001");
    const job::Job job = must(shop.store.job(id));
    CHECK(job == journal::foldJob(id, must(shop.store.entries(id))));
    CHECK(job.unreadable.empty());
    REQUIRE(job.steps.size() == 1);
    CHECK(job.steps[0].refitted);

    const auto lines = must(shop.store.jobs());
    REQUIRE(lines.size() == 1);
    const auto standing = job::standing(job);
    CHECK(lines[0].machine == "Marrowin Tern 125, 1987");
    CHECK(lines[0].frameNumber == "TRN125-0417");
    CHECK(lines[0].owner == "Ilse Quarmby");
    CHECK(lines[0].openUnsafe == 1);
    CHECK(lines[0].moment == standing.moment);
    CHECK(lines[0].stopped == standing.stopped);
    CHECK(lines[0].next == standing.next);
    CHECK(lines[0].lastAt == standing.lastAt);
    CHECK(must(shop.store.check()).faults == std::vector<std::string>{});
}

TEST_CASE("of the jobs that are done as many are listed as are wished, of the open ones all") {
    Shop shop;
    std::vector<Id> done;
    for (int i = 0; i < 4; ++i) {
        done.push_back(shop.smallJob("2026-00" + std::to_string(i)));
        shop.say(journal::jobHandedOver(done.back(), "runs"));
    }
    const Id open = shop.smallJob("2026-004");
    CHECK(must(shop.store.jobs()).size() == 5);
    const auto lines = must(shop.store.jobs(2));
    REQUIRE(lines.size() == 3);
    CHECK(lines[0].id == open);
    CHECK(lines[1].id == done[3]);
    CHECK(lines[2].id == done[2]);
    CHECK(must(shop.store.jobs(0)).size() == 1);

    CHECK_FALSE(lines[0].rechecks);
    job::Recheck recheck;
    recheck.id = "recheck-1";
    recheck.what = "oil level";
    recheck.afterDays = 1;
    shop.say(journal::recheckDue(done[1], recheck));
    for (const auto& line : must(shop.store.jobs()))
        CHECK(line.rechecks == (line.id == done[1]));
}

TEST_CASE("a machine or owner that is described anew shows in the lines of its jobs") {
    Shop shop;
    const Id id = shop.wholeJob("2026-001");
    const job::Job job = must(shop.store.job(id));
    auto machine = must(shop.store.machine(job.machine));
    machine.model = "Heron 50";
    shop.say(journal::machineDescribed(machine));
    auto owner = must(shop.store.owner(job.owner));
    owner.name = "Jory Vance";
    shop.say(journal::ownerDescribed(owner));

    CHECK(must(shop.store.jobs()).at(0).machine == "Marrowin Heron 50, 1987");
    CHECK(must(shop.store.jobs()).at(0).owner == "Jory Vance");
    CHECK(must(shop.store.find("tern")).empty());
    CHECK_FALSE(must(shop.store.find("heron hose")).empty());
    CHECK(must(shop.store.check()).faults == std::vector<std::string>{});
}

TEST_CASE("undo takes back, and undoing the undo brings back") {
    Shop shop;
    const Id id = shop.smallJob("1");
    job::Finding finding{shop.store.newId(), "tyre cracked", job::Severity::Unsafe, {}, false, {}, {}};
    const auto said = shop.say(journal::findingNoted(id, finding));
    CHECK(must(shop.store.jobs()).at(0).openUnsafe == 1);
    const auto undone = shop.say(journal::withdrawn(id, said.id));
    CHECK(must(shop.store.jobs()).at(0).openUnsafe == 0);
    CHECK(must(shop.store.find("tyre")).empty());
    CHECK(must(shop.store.job(id)).history.size() == 3);
    shop.say(journal::withdrawn(id, undone.id));
    CHECK(must(shop.store.find("tyre")).size() == 1);
    CHECK(must(shop.store.check()).faults == std::vector<std::string>{});
}

TEST_CASE("a job whose opening is withdrawn leaves the lists, not the journal") {
    Shop shop;
    const Id id = shop.wholeJob("1");
    const auto opening = must(shop.store.job(id)).opened.entry;
    const auto undone = shop.say(journal::withdrawn(id, opening));
    CHECK(must(shop.store.jobs()).empty());
    CHECK(must(shop.store.find("hose")).empty());
    const auto refused =
        shop.store.append(journal::memoKept(id, {shop.store.newId(), {}, "still here?", {}, {}}));
    REQUIRE_FALSE(refused);
    CHECK(refused.error().fault == Fault::Refused);
    shop.say(journal::withdrawn(id, undone.id));
    CHECK(must(shop.store.jobs()).size() == 1);
    CHECK(must(shop.store.check()).faults == std::vector<std::string>{});
}

TEST_CASE("what does not fit is refused as a whole and changes nothing") {
    Shop shop;
    const Id job = shop.smallJob("1");
    const auto before = must(shop.store.check()).entries;
    const journal::Draft good = journal::memoKept(job, {shop.store.newId(), {}, "good", {}, {}});
    const Id gone = shop.store.newId();
    journal::Draft corrects = good;
    corrects.supersedes = gone;
    const std::string noFile(64, 'a');
    const std::vector<std::pair<journal::Draft, std::string>> bad{
        {{"memo.kept", "no such id!", job, "{}", {}}, "stream"},
        {{"memo.kept", job, "", "{}", {}}, "subject"},
        {{"memo kept", job, job, "{}", {}}, "kind"},
        {{"no.such-kind", job, job, "{}", {}}, "kind"},
        {{"memo.kept", job, job, "{", {}}, "body"},
        {{"memo.kept", job, job, "[]", {}}, "body"},
        {{"memo.kept", job, job, "{} {}", {}}, "body"},
        {{"memo.kept", job, job, R"({"text":"a\u0000b"})", {}}, "NUL"},
        {{"memo.kept", job, job, "{\"text\":\"\xC3\x28\"}", {}}, "UTF-8"},
        {{"memo.kept", job, job, "{\"text\":" + std::string(100, '[') + std::string(100, ']') + "}", {}},
         "deeper"},
        {{"memo.kept", job, job, "{\"text\":\"" + std::string(300'000, 'x') + "\"}", {}}, "shorten"},
        {journal::memoKept(gone, {shop.store.newId(), {}, "no such job", {}, {}}), "stream"},
        {journal::memoKept(job, {shop.store.newId(), noFile + ".wav", {}, {}, {}}), "missing"},
        {journal::memoKept(job, {shop.store.newId(), "../../shop.db", {}, {}, {}}), "media"},
        {journal::findingSettled(job, gone, "done"), "subject"},
        {journal::stepRefitted(job, gone), "subject"},
        {journal::lineChecked(job, gone, job::MatchOutcome::Matches), "subject"},
        {journal::withdrawn(job, gone), "withdraw"},
        {corrects, "supersedes"},
    };
    for (const auto& [draft, says] : bad) {
        INFO(draft.kind << " " << draft.body.substr(0, 60) << ", to say: " << says);
        const std::vector<journal::Draft> both{good, draft};
        const auto refused = shop.store.append(both);
        REQUIRE_FALSE(refused);
        CHECK(refused.error().fault == Fault::Refused);
        CHECK_THAT(refused.error().message, Catch::Contains(says));
    }
    const auto report = must(shop.store.check());
    CHECK(report.entries == before);
    CHECK(report.faults == std::vector<std::string>{});
    shop.say(good);
}

TEST_CASE("nobody says anything before a mechanic has been chosen") {
    Folder folder;
    Store store = must(Store::open(folder.path()));
    const auto refused = store.append(journal::jobOpened(store.newId(), {}));
    REQUIRE_FALSE(refused);
    CHECK_THAT(refused.error().message, Catch::Contains("mechanic"));
    const auto unknown = store.chooseMechanic(store.newId());
    REQUIRE_FALSE(unknown);
    CHECK(unknown.error().fault == Fault::NotFound);
}

TEST_CASE("a batch may open a job and speak of it at once") {
    Shop shop;
    const Id job = shop.store.newId();
    const Id finding = shop.store.newId();
    const std::vector<journal::Draft> drafts{
        journal::jobOpened(job, {}),
        journal::findingNoted(job, {finding, "chain dry", job::Severity::Soon, {}, false, {}, {}}),
        journal::findingSettled(job, finding, "oiled")};
    const auto entries = must(shop.store.append(drafts));
    REQUIRE(entries.size() == 3);
    CHECK(entries[1].previous == entries[0].hash);
    CHECK(entries[0].clock < entries[1].clock);
    CHECK(must(shop.store.job(job)).findings.at(0).settled);
    CHECK(must(shop.store.check()).faults == std::vector<std::string>{});
}

TEST_CASE("a clock that is set back does not turn the order round") {
    Shop shop;
    const Id job = shop.smallJob("1");
    shop.time -= 86'400'000;
    journal::JobPatch patch;
    patch.reason = "said later";
    shop.say(journal::jobDescribed(job, patch));
    CHECK(must(shop.store.job(job)).reason == "said later");
    CHECK(must(shop.store.check()).faults == std::vector<std::string>{});
}

TEST_CASE("unusual text comes back as it was typed") {
    Shop shop;
    const Id job = shop.smallJob("1");
    for (const std::string text :
         {"Robert'); DROP TABLE entry;--", "\"quoted\" \\ back", "\U0001F6F5 caf\u00E9 \u0645",
          "<b>&amp;</b>", "%s%n", "line\nbreak\ttab"}) {
        const Id id = shop.store.newId();
        shop.say(journal::findingNoted(job, {id, text, job::Severity::Note, text, false, {}, {}}));
        CHECK(must(shop.store.job(job)).findings.back().text == text);
    }
    shop.say(
        journal::findingNoted(job, {shop.store.newId(), std::string(20'000, 'x'), {}, {}, false, {}, {}}));
    const auto tooLong = shop.store.append(
        journal::findingNoted(job, {shop.store.newId(), std::string(20'001, 'x'), {}, {}, false, {}, {}}));
    CHECK_FALSE(tooLong);
    CHECK(must(shop.store.check()).faults == std::vector<std::string>{});
}

TEST_CASE("a job is found by its number or id, and an ambiguous number is not guessed") {
    Shop shop;
    const Id one = shop.smallJob("2026-001");
    const Id two = shop.smallJob("2026-002");
    CHECK(must(shop.store.jobByNumberOrId("2026-002")) == two);
    CHECK(must(shop.store.jobByNumberOrId(one)) == one);
    CHECK(shop.store.jobByNumberOrId("2026-003").error().fault == Fault::NotFound);
    shop.smallJob("2026-001");
    CHECK(shop.store.jobByNumberOrId("2026-001").error().fault == Fault::Refused);
    CHECK(shop.store.job("nonsense").error().fault == Fault::NotFound);
    CHECK(shop.store.machine("nonsense").error().fault == Fault::NotFound);
    CHECK(shop.store.owner("nonsense").error().fault == Fault::NotFound);
}
