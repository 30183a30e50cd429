#include "tests/e2e/moments.h"

#include "tests/e2e/demowires.h"

#include <array>

namespace undercowl::e2e {

namespace {

void shoot(Hand& hand, const char* page) {
    hand.sees(QStringLiteral("Shoot"));
    hand.picture(QString::fromLatin1(page));
    hand.touch(QStringLiteral("Shoot"));
    hand.touch(QStringLiteral("Done, 1 kept"));
}

void bag(Hand& hand, const char* number) {
    hand.touch(QStringLiteral("Bag"));
    hand.touch(QString::fromLatin1(number));
    hand.picture(QStringLiteral("bag"));
    hand.touch(QStringLiteral("Keep the bag"));
    hand.sees(QStringLiteral("Bag %1").arg(QLatin1String(number)));
}

// The first two checks of a round; the rest is left for later.
void beginRound(Hand& hand) {
    hand.touch(QStringLiteral("Rounds"));
    hand.touch(QStringLiteral("Begin the round"));
    hand.sees(QStringLiteral("frame number: readable"));
    hand.picture(QStringLiteral("round"));
    hand.touch(QStringLiteral("Fine"));
    hand.sees(QStringLiteral("frame: no cracks"));
    hand.touch(QStringLiteral("Not done"));
    hand.sees(QStringLiteral("stand: springs back"));
    hand.touch(QStringLiteral("Back"));
    hand.touch(QStringLiteral("Back"));
}

// Where the bolt sits on the photo, and where the cable beside it runs.
void placeBolt(Hand& hand) {
    hand.touch(QStringLiteral("bolt M6\u00a0×\u00a025\u00a0mm"));
    hand.sees(QStringLiteral("0 of 1 on the photo"));
    const std::array hole{QPointF(photoSize.width() * 0.4, photoSize.height() * 0.3)};
    hand.stroke(QStringLiteral("Photo to tap on: where it sits"), photoSize, hole);
    hand.sees(QStringLiteral("1 of 1 on the photo"));
    hand.picture(QStringLiteral("strip-places"));
    hand.touch(QStringLiteral("Keep"));
    hand.touch(QStringLiteral("Routing, fluids, adjustment"));
    hand.type(QStringLiteral("Where it runs, what it passes"), QStringLiteral("over the clutch cable"));
    hand.picture(QStringLiteral("strip-details"));
    hand.touch(QStringLiteral("Keep"));
    hand.sees(QStringLiteral("Routing: over the clutch cable"));
}

void describeConnector(Hand& hand) {
    hand.touch(QStringLiteral("Wires"));
    hand.sees(QStringLiteral("No wires mapped yet"));
    hand.picture(QStringLiteral("wiring-empty"));
    hand.touch(QStringLiteral("New connector"));
    hand.type(QStringLiteral("What it is called"), QStringLiteral("right switch cluster"));
    hand.type(QStringLiteral("Number of places"), QStringLiteral("9"));
    hand.type(QStringLiteral("Latch or key"), QStringLiteral("top"));
    hand.picture(QStringLiteral("connector"));
    hand.touch(QStringLiteral("Keep"));
    hand.sees(QStringLiteral("place 9"));
    hand.touch(QStringLiteral("Photo"));
    shoot(hand, "camera-wiring");
    hand.picture(QStringLiteral("map-empty"));
}

// The first wire is taken wrongly and taken back, the last one is picked whatever was proposed; of the others
// the proposal or the runner-up is touched when it is right.
void readWires(Hand& hand) {
    hand.touch(QStringLiteral("Read the wires"));
    hand.sees(QStringLiteral("Stroke across the wires"));
    hand.seesNot(QStringLiteral("Opening the photo"));
    hand.seesNot(QStringLiteral("Loading photo"));
    hand.picture(QStringLiteral("stroke-empty"));
    hand.stroke(QStringLiteral("Photo of the wires"), photoSize, strokeOf("before"));
    hand.sees(QStringLiteral("9 open"));
    const auto pick = [&](const char* base, const char* tracer) {
        hand.touch(QStringLiteral("Other colour"));
        hand.picture(QStringLiteral("picker-base"));
        hand.touch(QString::fromLatin1(base));
        hand.picture(QStringLiteral("picker-tracer"));
        hand.touch(QString::fromLatin1(tracer));
    };
    for (std::size_t i = 0; i < truth.size(); ++i) {
        hand.sees(QStringLiteral("place %1:").arg(i + 1));
        hand.picture(QStringLiteral("stroke"));
        const auto open = [&](std::size_t many) { hand.sees(QStringLiteral("%1 open").arg(many)); };
        if (i == 0) {
            pick("violet", "yellow");
            open(truth.size() - 1);
            hand.touch(QStringLiteral("Undo"));
            open(truth.size());
            hand.touch(QStringLiteral("place 1"));
            hand.sees(QStringLiteral("place 1:"));
        }
        const QString right = words(truth[i]);
        const QString choice = QStringLiteral("It is %1").arg(right);
        const bool last = i + 1 == truth.size();
        if (!last && hand.offers(QStringLiteral("Confirm")) && hand.reads(right))
            hand.touch(QStringLiteral("Confirm"));
        else if (!last && hand.offers(choice))
            hand.touch(choice);
        else
            pick(truth[i].base, truth[i].tracer);
        open(truth.size() - 1 - i);
    }
    hand.picture(QStringLiteral("stroke-done"));
    hand.touch(QStringLiteral("Back"));
    for (const Wire& wire : truth)
        hand.sees(words(wire));
    hand.touch(QStringLiteral("place 4"));
    hand.type(QStringLiteral("What it is for"), QStringLiteral("stop lamp"));
    hand.picture(QStringLiteral("place"));
    hand.touch(QStringLiteral("Back"));
    hand.sees(QStringLiteral("stop lamp"));
    hand.picture(QStringLiteral("map"));
}

} // namespace

void begin(Hand& hand) {
    hand.sees(QStringLiteral("Who works here?"));
    hand.picture(QStringLiteral("first-start"));
    hand.type(QStringLiteral("Your name"), QStringLiteral("Ada"));
    hand.touch(QStringLiteral("Begin"));
    hand.seesNot(QStringLiteral("Who works here?"));
    hand.sees(QStringLiteral("The shop is empty"));
    hand.picture(QStringLiteral("home-empty"));
}

void takeIn(Hand& hand) {
    hand.touch(QStringLiteral("Take in"));
    hand.picture(QStringLiteral("take-in"));
    hand.type(QStringLiteral("Why it is here"), QStringLiteral("stop lamp dead"));
    hand.type(QStringLiteral("What works"), QStringLiteral("engine, horn"));
    hand.type(QStringLiteral("Make"), QStringLiteral("Marrowin"));
    hand.type(QStringLiteral("Model"), QStringLiteral("Tern 125"));
    hand.type(QStringLiteral("Year"), QStringLiteral("1987"));
    hand.type(QStringLiteral("Frame number"), QStringLiteral("MT125-004711"));
    hand.type(QStringLiteral("Odometer"), QStringLiteral("18423"));
    hand.type(QStringLiteral("Owner's name"), QStringLiteral("Ilse Quandt"));
    hand.picture(QStringLiteral("take-in-filled"));
    hand.touch(QStringLiteral("Open the job"));
    hand.sees(QStringLiteral("Marrowin Tern 125, 1987"));
    hand.sees(QStringLiteral("taken in, nothing done yet"));
    hand.picture(QStringLiteral("job-new"));
}

void lookOver(Hand& hand) {
    hand.touch(QStringLiteral("Look over"));
    hand.picture(QStringLiteral("look-over-empty"));
    hand.touch(QStringLiteral("Photo as found"));
    shoot(hand, "camera");
    hand.touch(QStringLiteral("Finding"));
    hand.type(QStringLiteral("What was found"), QStringLiteral("loom sheath brittle"));
    hand.touch(QStringLiteral("Soon"));
    hand.type(QStringLiteral("What to do about it"), QStringLiteral("new sheath"));
    hand.picture(QStringLiteral("finding"));
    hand.touch(QStringLiteral("Keep"));
    hand.sees(QStringLiteral("loom sheath brittle"));
    hand.touch(QStringLiteral("Photo"));
    shoot(hand, "camera-finding");
    hand.picture(QStringLiteral("look-over"));
    hand.touch(QStringLiteral("Back"));
    beginRound(hand);
}

void stripLever(Hand& hand) {
    hand.touch(QStringLiteral("Strip"));
    hand.sees(QStringLiteral("step 1"));
    hand.picture(QStringLiteral("strip-empty"));
    hand.type(QStringLiteral("What comes off"), QStringLiteral("brake lever"));
    hand.touch(QStringLiteral("No task"));
    hand.sees(QStringLiteral("Which task does this step belong to?"));
    hand.picture(QStringLiteral("task-sheet"));
    hand.touch(QStringLiteral("New task"));
    hand.seesNot(
        QStringLiteral("Which task does this step belong to?")); // the field is called as the choice was
    hand.type(QStringLiteral("New task"), QStringLiteral("switch cluster"));
    hand.press(Qt::Key_Return);
    hand.sees(QStringLiteral("task of this step"));
    hand.touch(QStringLiteral("Held by"));
    hand.touch(QStringLiteral("bolt"));
    hand.touch(QStringLiteral("M6"));
    hand.touch(QStringLiteral("25"));
    hand.type(QStringLiteral("Torque on refit"), QStringLiteral("9.3"));
    hand.picture(QStringLiteral("hardware"));
    hand.touch(QStringLiteral("Add"));
    hand.sees(QStringLiteral("bolt M6"));
    bag(hand, "7");
    hand.touch(QStringLiteral("Photo"));
    shoot(hand, "camera-lever");
    hand.sees(QStringLiteral("Bag 7"));
    placeBolt(hand);
    hand.picture(QStringLiteral("strip"));
    hand.touch(QStringLiteral("Next step"));
    hand.sees(QStringLiteral("step 2"));
}

void stripConnector(Hand& hand) {
    hand.type(QStringLiteral("What comes off"), QStringLiteral("unplug switch cluster"));
    hand.touch(QStringLiteral("Photo"));
    shoot(hand, "camera-plug");
    hand.touch(QStringLiteral("Held by"));
    hand.touch(QStringLiteral("2"));
    hand.touch(QStringLiteral("screw"));
    hand.touch(QStringLiteral("M5"));
    hand.touch(QStringLiteral("16"));
    hand.touch(QStringLiteral("Add"));
    hand.sees(QStringLiteral("screw M5"));
    bag(hand, "8");
    describeConnector(hand);
    readWires(hand);
    hand.touch(QStringLiteral("Back"));
    hand.sees(QStringLiteral("right switch cluster"));
    hand.picture(QStringLiteral("wiring"));
    hand.touch(QStringLiteral("Back"));
    hand.touch(QStringLiteral("Next step"));
    hand.sees(QStringLiteral("step 3"));
    hand.touch(QStringLiteral("Back"));
    hand.sees(QStringLiteral("stopped after: unplug switch cluster"));
    hand.picture(QStringLiteral("job-stripped"));
}

} // namespace undercowl::e2e
