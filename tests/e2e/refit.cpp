#include "tests/e2e/moments.h"

#include "tests/e2e/demowires.h"

#include <catch2/catch.hpp>

#include <QTest>

#include <array>

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

// Where it stopped three weeks ago.
void goOnWithRound(Hand& hand) {
    hand.touch(QStringLiteral("Rounds"));
    hand.touch(QStringLiteral("Every machine"));
    hand.sees(QStringLiteral("stand: springs back"));
    const QString done = QStringLiteral("Every check of this round has its answer.");
    for (int most = 60; most > 0 && !hand.shows(done); --most) {
        hand.touch(QStringLiteral("Fine"));
        QTest::qWait(100); // the next one comes with the sync
    }
    hand.sees(done);
    hand.picture(QStringLiteral("round-done"));
    hand.touch(QStringLiteral("Back"));
    hand.touch(QStringLiteral("Back"));
}

// Two by a touch each, the third in its own place.
void proveAll(Hand& hand) {
    hand.sees(QStringLiteral("To be proved"));
    hand.sees(QStringLiteral("proved wire by wire, or said"));
    hand.touch(QStringLiteral("try the brake: it holds, and it lets go (brake lever)"));
    hand.touch(
        QStringLiteral("every fastener in and tight: unplug switch cluster (2 x screw M5 x 16\u00a0mm)"));
    hand.picture(QStringLiteral("proofs"));
    hand.touch(QStringLiteral("Keep 2 proved"));
    hand.sees(QStringLiteral("Touch what works"));
    hand.touch(QStringLiteral("One by one, or leave out"));
    hand.sees(QStringLiteral("tightened to the torque and read"));
    hand.picture(QStringLiteral("prove"));
    hand.touch(QStringLiteral("Proved"));
    hand.sees(QStringLiteral("No reading shows the torque"));
    hand.type(QStringLiteral("How, or why it is left out"), QStringLiteral("wrench set to 9.3, it clicked"));
    hand.touch(QStringLiteral("Proved"));
    hand.sees(QStringLiteral("Everything that was disturbed is proved, or left out for a reason."));
    hand.picture(QStringLiteral("proved"));
    hand.touch(QStringLiteral("Back"));
    hand.touch(QStringLiteral("Back"));
}

void reckon(Hand& hand) {
    hand.touch(QStringLiteral("Cost"));
    hand.type(QStringLiteral("One hour's work without tax"), QStringLiteral("54"));
    hand.type(QStringLiteral("Currency"), QStringLiteral("EUR"));
    hand.type(QStringLiteral("Tax, per cent"), QStringLiteral("19"));
    hand.touch(QStringLiteral("Reckon"));
    hand.type(QStringLiteral("What for"), QStringLiteral("new sheath"));
    hand.type(QStringLiteral("Sum without tax"), QStringLiteral("10"));
    hand.touch(QStringLiteral("Add the line"));
    hand.sees(QStringLiteral("11.90\u00a0EUR"));
    hand.picture(QStringLiteral("cost"));
    hand.touch(QStringLiteral("Back"));
}

void sign(Hand& hand) {
    hand.touch(QStringLiteral("Signature"));
    const QSize field(300, 100);
    const std::array stroke{QPointF(30, 60), QPointF(90, 30), QPointF(150, 70), QPointF(260, 40)};
    hand.stroke(QStringLiteral("Field to sign in"), field, stroke);
    hand.picture(QStringLiteral("signature"));
    hand.touch(QStringLiteral("Keep the signature"));
    hand.sees(QStringLiteral("What the owner will read"));
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
        hand.touch(QStringLiteral("Matches"));
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
    goOnWithRound(hand);
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
    hand.sees(QStringLiteral("1  bolt M6")); // the ring on the photo
    hand.sees(QStringLiteral("Routing: over the clutch cable"));
    hand.picture(QStringLiteral("refit-placed"));
    hand.touchTool(QStringLiteral("Steps"));
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
    hand.sees(QStringLiteral("3 not done or not proved"));
    hand.sees(QStringLiteral("do not ride yet"));
    hand.picture(QStringLiteral("hand-over-stopped"));
    hand.touch(QStringLiteral("See to it"));
    proveAll(hand);
    hand.seesNot(QStringLiteral("not proved: "));
    hand.seesNot(QStringLiteral("do not ride yet"));
    hand.sees(QStringLiteral("what the owner said has no answer: stop lamp dead"));
    hand.touch(QStringLiteral("See to it"));
    hand.sees(QStringLiteral("the owner said, when it came in"));
    hand.touch(QStringLiteral("Works"));
    hand.touch(QStringLiteral("Back"));
    hand.seesNot(QStringLiteral("has no answer"));
    reckon(hand);
    sign(hand);
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
