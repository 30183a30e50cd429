// A lost phone: on the new one the shop is brought back from the stick, and the app goes on with it. And back
// to what was on the phone before.
#include "core/store/backup.h"
#include "core/store/shops.h"
#include "tests/e2e/moments.h"
#include "tests/e2e/phone.h"

#include <QTest>

#include <catch2/catch.hpp>

#include <filesystem>

using namespace undercowl;
using namespace undercowl::e2e;

namespace {

constexpr job::TimeMs noon = 1'795'780'800'000; // 2026-11-27 12:00 UTC

std::size_t jobsIn(const std::filesystem::path& shop) {
    const auto opened = store::Store::open(shop);
    REQUIRE(opened);
    return opened->jobs()->size();
}

// The shop on that phone in a file on the stick.
void backUp(const Phone& phone, const std::filesystem::path& stick) {
    std::filesystem::create_directories(stick);
    const auto opened = store::Store::open(phone.shop(), [] { return noon; });
    REQUIRE(opened);
    REQUIRE(store::writeBackup(*opened, stick / "tuesday.backup"));
}

// As if it were the place of the last backup.
void putIn(const Phone& phone, const std::filesystem::path& stick) {
    auto opened = store::Store::open(phone.shop());
    REQUIRE(opened);
    REQUIRE(opened->set("backup-place", stick.string()));
}

} // namespace

TEST_CASE("a shop comes back on another phone, and the app goes on with it") {
    const Look look = GENERATE(Look{360, 640, "night"}, Look{1280, 800, "day"});
    const tests::Scratch scratch;
    const std::filesystem::path stick = scratch / "stick";
    Phone lost(look);
    lost.open(true);
    begin(lost.hand());
    takeIn(lost.hand());
    lost.close();
    putIn(lost, stick); // what comes back knows its place
    backUp(lost, stick);

    // Before anybody has named himself; what was typed is not lost by looking.
    Phone phone(look);
    putIn(phone, stick);
    phone.open(true);
    phone.hand().type(QStringLiteral("Your name"), QStringLiteral("Bo"));
    phone.hand().touch(QStringLiteral("Bring a shop back"));
    phone.hand().sees(QStringLiteral("tuesday.backup"));
    phone.hand().picture(QStringLiteral("restore"));
    phone.hand().touch(QStringLiteral("Back"));
    phone.hand().sees(QStringLiteral("Who works here?"));
    phone.hand().sees(QStringLiteral("Bo"));
    phone.hand().touch(QStringLiteral("Bring a shop back"));
    phone.hand().touch(QStringLiteral("27 Nov 2026"));
    phone.hand().picture(QStringLiteral("restore-chosen"));
    phone.hand().touch(QStringLiteral("Bring it back"));
    phone.begunAnew();
    phone.hand().sees(QStringLiteral("Marrowin Tern 125, 1987"));
    phone.hand().seesNot(QStringLiteral("Who works here?"));
    phone.hand().picture(QStringLiteral("restored"));
    const auto first = store::currentShop(phone.shop());
    CHECK(first != phone.shop());
    CHECK(jobsIn(phone.shop()) == 0);

    // What is said now is said there, also after the app was started by hand.
    phone.hand().touch(QStringLiteral("Marrowin Tern 125, 1987"));
    phone.hand().touch(QStringLiteral("Look over"));
    phone.hand().touch(QStringLiteral("Finding"));
    phone.hand().type(QStringLiteral("What was found"), QStringLiteral("fork seal leaks"));
    phone.hand().touch(QStringLiteral("Unsafe"));
    phone.hand().touch(QStringLiteral("Keep"));
    phone.hand().sees(QStringLiteral("Finding kept"));
    phone.close();
    phone.open(true);
    phone.hand().sees(QStringLiteral("Marrowin Tern 125, 1987"));

    // Once more, into a third folder, and from there back to where the finding is.
    const auto restores = [&phone] {
        phone.hand().touch(QStringLiteral("Settings"));
        phone.hand().touch(QStringLiteral("Backup"));
        phone.hand().touch(QStringLiteral("Bring a shop back"));
    };
    restores();
    phone.hand().touch(QStringLiteral("27 Nov 2026"));
    phone.hand().touch(QStringLiteral("Bring it back"));
    phone.begunAnew();
    phone.hand().sees(QStringLiteral("Marrowin Tern 125, 1987"));
    const auto second = store::currentShop(phone.shop());
    CHECK(second != first);
    restores();
    phone.hand().sees(QStringLiteral("Other shops on this device"));
    phone.hand().picture(QStringLiteral("restore-others"));
    phone.hand().touch(QStringLiteral("1 job"));
    phone.hand().picture(QStringLiteral("restore-other"));
    phone.hand().touch(QStringLiteral("Go on with this shop"));
    phone.begunAnew();
    phone.hand().touch(QStringLiteral("Marrowin Tern 125, 1987"));
    phone.hand().sees(QStringLiteral("fork seal leaks"));
    CHECK(store::currentShop(phone.shop()) == first);
    CHECK(jobsIn(second) == 1);
    phone.close();
}

TEST_CASE("a shop that cannot be opened gives way to its backup, and stays as it is") {
    const tests::Scratch scratch;
    Phone phone({360, 640, "night"});
    phone.open(true);
    begin(phone.hand());
    takeIn(phone.hand());
    phone.close();
    const QByteArray home = qgetenv("HOME");
    qputenv("HOME", QByteArray::fromStdString(scratch / "home")); // whose documents are looked through
    backUp(phone, scratch / "home" + "/Documents");
    for (const auto& entry : std::filesystem::directory_iterator(phone.shop()))
        std::filesystem::remove_all(entry);
    tests::write(phone.shop() + "/shop.db", "not even a database any more");

    phone.open(true);
    phone.hand().sees(QStringLiteral("Try again"));
    phone.hand().picture(QStringLiteral("cannot-be-opened"));
    phone.hand().touch(QStringLiteral("Bring a shop back"));
    phone.hand().touch(QStringLiteral("27 Nov 2026"));
    phone.hand().touch(QStringLiteral("Bring it back"));
    phone.begunAnew();
    phone.hand().sees(QStringLiteral("Marrowin Tern 125, 1987"));
    phone.hand().seesNot(QStringLiteral("Try again"));
    phone.close();
    qputenv("HOME", home);
    CHECK(tests::contentOf(phone.shop() + "/shop.db") == "not even a database any more");
}
