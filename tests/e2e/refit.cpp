#include "tests/e2e/moments.h"

#include "tests/e2e/demowires.h"

#include <catch2/catch.hpp>

#include <QTest>

namespace undercowl::e2e {

namespace {

void comparePhotos(Hand& hand) {
    hand.touch(QStringLiteral("Compare photos"));
    hand.touch(QStringLiteral("Photo as it is now"));
    hand.picture(QStringLiteral("pictures"));
    hand.touch(QStringLiteral("switch-after.jpg"));
    hand.touch(QStringLiteral("Done, 1 kept"));
    hand.sees(QStringLiteral("Stroke across the wires from place 1 on"));
    hand.seesNot(QStringLiteral("Opening the photo"));
    hand.seesNot(QStringLiteral("Loading photo"));
    hand.picture(QStringLiteral("compare-empty"));
    hand.stroke(QStringLiteral("Photo as it is now"), photoSize, strokeOf("after"));
    // Two wires are exchanged in it; the reader may say that, or that it cannot tell, but not 'same'.
    hand.sees(QStringLiteral("Stroke again"));
    hand.picture(QStringLiteral("compare"));
    CHECK_FALSE(hand.shows(QStringLiteral("The same")));
    hand.touch(QStringLiteral("Back"));
}

void readBack(Hand& hand) {
    hand.touch(QStringLiteral("Wires"));
    hand.sees(QStringLiteral("Read wires back"));
    hand.picture(QStringLiteral("wiring-refit"));
    hand.touch(QStringLiteral("right switch cluster"));
    for (std::size_t i = 0; i < truth.size(); ++i) {
        hand.sees(QStringLiteral("%1 / 9").arg(i + 1));
        hand.sees(QStringLiteral("place %1").arg(i + 1));
        hand.sees(words(truth[i]));
        CHECK(hand.reads(QString::fromLatin1(truth[i].code)));
        hand.picture(QStringLiteral("read-back"));
        if (i == 2) {
            hand.touch(QStringLiteral("Does not match"));
            hand.sees(QStringLiteral("Written down: place 3 does not match."));
            hand.picture(QStringLiteral("read-back-mismatch"));
            hand.touch(QStringLiteral("Look again"));
        }
        hand.touch(QStringLiteral("Done"));
    }
    hand.sees(QStringLiteral("9 of 9 wires match"));
    hand.picture(QStringLiteral("read-back-end"));
    comparePhotos(hand);
    hand.touch(QStringLiteral("Finish"));
    hand.touch(QStringLiteral("Back"));
}

} // namespace

void comeBack(Hand& hand) {
    hand.sees(QStringLiteral("Marrowin Tern 125, 1987"));
    hand.sees(QStringLiteral("stopped after: unplug switch cluster"));
    hand.sees(QStringLiteral("3 weeks ago"));
    hand.picture(QStringLiteral("home"));
    hand.touch(QStringLiteral("Marrowin Tern 125, 1987"));
    hand.sees(QStringLiteral("stopped after: unplug switch cluster"));
    hand.sees(QStringLiteral("next: go on stripping, or refit: unplug switch cluster"));
    hand.sees(QStringLiteral("3 weeks ago"));
    hand.picture(QStringLiteral("job"));
}

void refit(Hand& hand) {
    hand.touch(QStringLiteral("Refit"));
    hand.sees(QStringLiteral("unplug switch cluster"));
    hand.sees(QStringLiteral("1 / 2"));
    hand.sees(QStringLiteral("bag 8"));
    CHECK_FALSE(hand.shows(QStringLiteral("9.3"))); // the torque of another step's bolt
    hand.picture(QStringLiteral("refit"));
    readBack(hand);
    hand.touch(QStringLiteral("Refitted"));
    hand.sees(QStringLiteral("2 / 2"));
    hand.picture(QStringLiteral("refit-undo"));
    hand.touch(QStringLiteral("Undo"));
    hand.sees(QStringLiteral("1 / 2"));
    hand.touch(QStringLiteral("Refitted"));
    hand.sees(QStringLiteral("2 / 2"));
    hand.sees(QStringLiteral("bag 7"));
    hand.sees(QStringLiteral("9.3"));
    hand.touch(QStringLiteral("Steps"));
    hand.picture(QStringLiteral("refit-steps"));
    hand.touch(QStringLiteral("Back"));
    hand.touch(QStringLiteral("Refitted"));
    hand.sees(QStringLiteral("All refitted"));
    hand.picture(QStringLiteral("refit-done"));
    hand.touch(QStringLiteral("Back"));
}

void handOver(Hand& hand) {
    hand.touch(QStringLiteral("Look over"));
    hand.touch(QStringLiteral("Settle"));
    hand.sees(QStringLiteral("Settled"));
    hand.touch(QStringLiteral("Back"));
    hand.touch(QStringLiteral("Hand over"));
    hand.sees(QStringLiteral("What the owner will read"));
    hand.sees(QStringLiteral("do not ride yet"));
    hand.picture(QStringLiteral("hand-over-stopped"));
    hand.touch(QStringLiteral("See to it"));
    hand.touch(QStringLiteral("try the brake: it holds, and it lets go"));
    hand.picture(QStringLiteral("afterwards"));
    hand.touch(QStringLiteral("It is done"));
    hand.sees(QStringLiteral("Nothing open"));
    hand.touch(QStringLiteral("Back"));
    hand.seesNot(QStringLiteral("do not ride yet"));
    hand.sees(QStringLiteral("not proved: "));
    hand.touch(QStringLiteral("Prove"));
    hand.picture(QStringLiteral("prove"));
    const QString proved =
        QStringLiteral("Everything that was disturbed is proved, or left out for a reason.");
    for (int most = 12; most > 0 && !hand.shows(proved); --most) {
        hand.touch(QStringLiteral("Proved"));
        QTest::qWait(200); // the next one comes with the sync
    }
    hand.sees(proved);
    hand.picture(QStringLiteral("proved"));
    hand.touch(QStringLiteral("Back"));
    hand.seesNot(QStringLiteral("not proved: "));
    hand.picture(QStringLiteral("hand-over"));
    hand.touch(QStringLiteral("Make the record"));
    hand.sees(QStringLiteral(".pdf"));
    hand.picture(QStringLiteral("hand-over-made"));
    hand.touch(QStringLiteral("Hand it over"));
    hand.sees(QStringLiteral("Handed over"));
    hand.touch(QStringLiteral("Back"));
    hand.sees(QStringLiteral("nothing open"));
    hand.picture(QStringLiteral("job-done"));
    hand.touch(QStringLiteral("Back"));
    hand.touch(QStringLiteral("Find"));
    hand.type(QStringLiteral("Words, or their beginnings"), QStringLiteral("pink stop"));
    hand.sees(QStringLiteral("Marrowin Tern 125"));
    hand.picture(QStringLiteral("find"));
    hand.touch(QStringLiteral("Back"));
    hand.picture(QStringLiteral("home-done"));
}

} // namespace undercowl::e2e
