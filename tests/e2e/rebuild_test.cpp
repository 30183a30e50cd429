// The journal is no decoration: every screen shows the same after the tables were emptied and made anew from
// the entries alone.
#include "core/store/rows.h"
#include "tests/e2e/moments.h"
#include "tests/e2e/phone.h"
#include "tests/platform/tool.h"
#include "tests/store/tables.h"

#include <catch2/catch.hpp>

#include <map>

using namespace undercowl;
using namespace undercowl::e2e;
using tests::ctl;

namespace {

using Screens = std::map<std::string, QStringList>; // by the name of the page: every text on it

void needPart(Hand& hand) {
    hand.touch(QStringLiteral("Parts"));
    hand.type(QStringLiteral("Part"), QStringLiteral("brake cable"));
    hand.touch(QStringLiteral("Add the part"));
    hand.sees(QStringLiteral("brake cable"));
    hand.sees(QStringLiteral("wanted"));
    hand.touch(QStringLiteral("Back"));
}

void keepMemo(Hand& hand) {
    hand.type(QStringLiteral("Memo"), QStringLiteral("owner rings on friday"));
    hand.touch(QStringLiteral("Keep the memo"));
    hand.sees(QStringLiteral("owner rings on friday"));
}

void measure(Hand& hand) {
    hand.touch(QStringLiteral("Measure"));
    hand.touch(QStringLiteral("What is measured?"));
    hand.type(QStringLiteral("What was measured"), QStringLiteral("rear axle nut, torque"));
    hand.touch(QStringLiteral("To the value"));
    for (const char* key : {"1", "1", "5"})
        hand.touch(QString::fromLatin1(key));
    hand.picture(QStringLiteral("measure"));
    hand.touch(QStringLiteral("Keep"));
    hand.touchTool(QStringLiteral("Readings so far"));
    hand.sees(QStringLiteral("rear axle nut, torque"));
    hand.touch(QStringLiteral("Back"));
    hand.touch(QStringLiteral("Back"));
}

// Goes through every page of the shop and the job, from the home page and back to it.
class Tour {
public:
    explicit Tour(Hand& hand) : hand_(hand) {
        note("home");
        open("Settings");
        note("settings");
        back();
        open("Find");
        hand_.type(QStringLiteral("Words, or their beginnings"), QStringLiteral("pink stop"));
        hand_.sees(QStringLiteral("Marrowin Tern 125"));
        note("find");
        back();
        open("Marrowin Tern 125, 1987");
        hand_.sees(QStringLiteral("stopped after"));
        note("job");
        visit("Look over", "look over");
        visit("Parts", "parts");
        visit("Machine and owner", "take in");
        strip();
        refit();
        open("Measure");
        visit("Readings so far", "readings");
        note("measure");
        back();
        visit("Hand over", "hand over");
        back();
        note("home again");
    }

    [[nodiscard]] const Screens& screens() const { return screens_; }

private:
    void open(const char* name) { hand_.touch(QString::fromLatin1(name)); }
    void back() { open("Back"); }
    void note(const char* page) {
        screens_[page] = hand_.read();
        hand_.picture(QString::fromLatin1(page).replace(u' ', u'-'));
    }
    void visit(const char* name, const char* page) {
        hand_.touchTool(QString::fromLatin1(name));
        note(page);
        back();
    }

    void strip() {
        open("Strip");
        note("strip");
        hand_.touchTool(QStringLiteral("Steps so far"));
        note("steps");
        open("unplug switch cluster");
        note("step");
        open("Wires");
        note("wiring");
        open("right switch cluster");
        note("map");
        open("place 4");
        note("place");
        for (int page = 0; page < 6; ++page)
            back();
    }

    void refit() {
        open("Refit");
        note("refit");
        visit("Steps", "refit steps");
        open("Wires");
        note("wiring on refit");
        open("right switch cluster");
        note("read-back");
        for (int page = 0; page < 3; ++page)
            back();
    }

    Hand& hand_;
    Screens screens_;
};

Screens tour(Phone& phone) {
    phone.open(false);
    const Screens screens = Tour(phone.hand()).screens();
    phone.close();
    return screens;
}

std::string lines(const QStringList& texts) {
    return texts.join(QStringLiteral("\n  ")).toStdString();
}

} // namespace

TEST_CASE("every screen shows the same when the projections are made anew") {
    Phone phone({412, 915, "night"});
    phone.open(true);
    begin(phone.hand());
    takeIn(phone.hand());
    needPart(phone.hand());
    keepMemo(phone.hand());
    lookOver(phone.hand());
    stripLever(phone.hand());
    stripConnector(phone.hand());
    measure(phone.hand());
    phone.close();
    constexpr job::TimeMs tomorrow = job::TimeMs{24} * 60 * 60 * 1000;
    phone.wait(tomorrow);

    const Screens before = tour(phone);
    CHECK(before.size() == 21);
    const std::string tables = store::test::projections(phone.shop());
    for (const store::Table& table : store::tables())
        store::test::tamper(phone.shop(), "DELETE FROM " + std::string(table.name));
    CHECK(store::test::projections(phone.shop()).empty());
    phone.open(false);
    phone.hand().sees(QStringLiteral("The shop is empty")); // what is shown comes from the tables
    phone.close();
    CHECK(ctl("store check --store '" + phone.shop() + "'").exit == 3);

    REQUIRE(ctl("store rebuild --store '" + phone.shop() + "'").exit == 0);
    CHECK(store::test::projections(phone.shop()) == tables);
    CHECK(ctl("store check --store '" + phone.shop() + "'").exit == 0);
    const Screens after = tour(phone);
    for (const auto& [page, texts] : before) {
        INFO(page << " showed:\n  " << lines(texts));
        REQUIRE(after.contains(page));
        INFO("and now shows:\n  " << lines(after.at(page)));
        CHECK((after.at(page) == texts));
    }
}
