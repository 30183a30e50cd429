// A note to a photo: typed beside it, not lost when the phone dies, its caption from then on. And the photo
// as large as the window.
#include "core/store/store.h"
#include "tests/e2e/demowires.h"
#include "tests/e2e/moments.h"
#include "tests/e2e/phone.h"

#include <QTest>

#include <catch2/catch.hpp>

#include <array>

using namespace undercowl;
using namespace undercowl::e2e;

namespace {

job::Job stored(const std::string& shop) {
    const auto opened = store::Store::open(shop);
    REQUIRE(opened);
    const auto jobs = opened->jobs();
    REQUIRE(jobs);
    const auto job = opened->job(jobs->front().id);
    REQUIRE(job);
    return *job;
}

} // namespace

TEST_CASE("a photo is noted, the note outlives the app, and the photo is looked at closely") {
    const Look look = GENERATE(Look{412, 915, "day"}, Look{1280, 800, "night"});
    Phone phone(look);
    phone.open(true);
    Hand& first = phone.hand();
    begin(first);
    takeIn(first);
    first.touch(QStringLiteral("Photos as found"));
    first.touch(QStringLiteral("Shoot"));
    first.touch(QStringLiteral("Note to this photo"));
    first.type(QStringLiteral("Note to this photo"), QStringLiteral("hose chafed"));
    first.picture(QStringLiteral("note"));
    QTest::qWait(drafted);
    phone.close(); // before it was kept
    CHECK(stored(phone.shop()).memos.empty());

    phone.open(true);
    Hand& hand = phone.hand();
    hand.picture(QStringLiteral("note-waits"));
    hand.touch(QStringLiteral("Continue"));
    hand.sees(QStringLiteral("hose chafed"));
    hand.touch(QStringLiteral("Keep"));
    hand.touch(QStringLiteral("Back"));
    hand.sees(QStringLiteral("In the shop"));
    const auto job = stored(phone.shop());
    REQUIRE(job.memos.size() == 1);
    REQUIRE(job.photos.size() == 1);
    CHECK(job.memos[0].text == "hose chafed");
    CHECK(job.memos[0].about == job.photos[0].id);

    hand.touch(QStringLiteral("Marrowin Tern 125, 1987"));
    hand.sees(QStringLiteral("hose chafed"));
    hand.picture(QStringLiteral("noted"));
    const std::array middle{QPointF(photoSize.width() / 2.0, photoSize.height() / 2.0)};
    hand.stroke(QStringLiteral("hose chafed"), photoSize, middle);
    hand.picture(QStringLiteral("large"));
    hand.touch(QStringLiteral("Closer"));
    hand.picture(QStringLiteral("closer"));
    hand.touch(QStringLiteral("Whole"));
    hand.touch(QStringLiteral("Close"));
    hand.sees(QStringLiteral("Measure"));
    phone.close();
}
