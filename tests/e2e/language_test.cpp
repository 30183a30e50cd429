// The language is chosen on the settings page, holds at once on every page that is open, and outlives the
// app.
#include "tests/e2e/moments.h"
#include "tests/e2e/phone.h"

#include <QLocale>

#include <catch2/catch.hpp>

using namespace undercowl;
using namespace undercowl::e2e;

TEST_CASE("the language changes at once, and is still there after the app was closed") {
    Phone phone(Look{412, 915, "day"});
    phone.open(true);
    Hand& first = phone.hand();
    begin(first);
    first.sees(QStringLiteral("The shop is empty"));
    first.touch(QStringLiteral("Settings"));
    CHECK_FALSE(first.shows(QStringLiteral("what is spoken to it, are English")));
    first.touch(QStringLiteral("Deutsch"));
    first.sees(QStringLiteral("Einstellungen"));
    first.sees(QStringLiteral("was man ihm sagt, sind Englisch"));
    first.seesNot(QStringLiteral("Settings"));
    CHECK(first.offers(QStringLiteral("Wie das Gerät")));
    CHECK(QLocale().decimalPoint() == QStringLiteral(","));
    first.touch(QStringLiteral("Zurück"));
    first.sees(QStringLiteral("Die Werkstatt ist leer"));
    phone.close();

    phone.open(true);
    Hand& again = phone.hand();
    again.sees(QStringLiteral("Die Werkstatt ist leer"));
    again.touch(QStringLiteral("Einstellungen"));
    again.touch(QStringLiteral("Français"));
    again.sees(QStringLiteral("Réglages"));
    again.touch(QStringLiteral("English"));
    again.sees(QStringLiteral("Settings"));
    again.seesNot(QStringLiteral("Réglages"));
    phone.close();
}
