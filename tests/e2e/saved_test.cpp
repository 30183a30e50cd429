// That something is saved is told on the screen only after the sync has returned, and the screen does not
// wait for it.
#include "core/store/store.h"
#include "tests/e2e/heldsync.h"
#include "tests/e2e/moments.h"
#include "tests/e2e/phone.h"

#include <QTest>

#include <catch2/catch.hpp>

#include <optional>

using namespace undercowl;
using namespace undercowl::e2e;

namespace {

constexpr int aWhile = 1000;

std::size_t findingsIn(const std::string& shop) {
    const auto opened = store::Store::open(shop);
    REQUIRE(opened);
    const auto jobs = opened->jobs();
    REQUIRE(jobs);
    const auto job = opened->job(jobs->front().id);
    REQUIRE(job);
    return job->findings.size();
}

// Touches the button while no sync returns: nothing may be told as saved for as long as that lasts.
void saves(Hand& hand, const char* button, const char* told) {
    QTest::qWait(drafted);
    std::optional<HeldSync> held(std::in_place);
    hand.touch(QString::fromLatin1(button));
    REQUIRE(QTest::qWaitFor([] { return HeldSync::waits(); }, 20000));
    QTest::qWait(aWhile);
    CHECK(HeldSync::waits());
    CHECK_FALSE(hand.shows(QString::fromLatin1(told)));
    hand.picture(QStringLiteral("held"));
    held.reset();
    hand.sees(QString::fromLatin1(told));
}

} // namespace

TEST_CASE("saved is told on the screen only after the sync has returned") {
    placeSyncGate();
    Phone phone({360, 640, "night"});
    phone.open(true);
    Hand& hand = phone.hand();
    begin(hand);
    takeIn(hand);
    hand.touch(QStringLiteral("Look over"));
    hand.touch(QStringLiteral("Finding"));
    hand.type(QStringLiteral("What was found"), QStringLiteral("fork seal leaks"));
    hand.touch(QStringLiteral("Unsafe"));
    saves(hand, "Keep", "Finding kept");
    CHECK(findingsIn(phone.shop()) == 1);
    hand.touch(QStringLiteral("Photo as found"));
    hand.sees(QStringLiteral("Shoot"));
    saves(hand, "Shoot", "Photo saved");
    phone.close();
}
