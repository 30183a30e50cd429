// What the core says is spoken in the language, and what somebody typed is left as it is.
#include "core/colour/insulation.h"
#include "core/job/message.h"
#include "core/trade/registry.h"
#include "core/units/parse.h"
#include "core/wiring/terminal.h"
#include "core/wiring/words.h"
#include "qml/language/corewords.h"
#include "qml/language/sentences.h"

#include <catch2/catch.hpp>

#include <map>
#include <set>

using namespace undercowl;
using namespace undercowl::ui;

namespace {

const Catalogue& german() {
    static const Catalogue catalogue(QStringLiteral("de"));
    return catalogue;
}

QString de(std::string_view english) {
    return coreWords(english, german());
}

// Words of four letters and more, as they stand between spaces: formulas have none to speak of.
int wordsIn(const QString& text) {
    int words = 0;
    for (const QString& word : text.split(u' ')) {
        bool letters = word.size() >= 4;
        for (const QChar each : word)
            letters = letters && each.isLetter() && each.isLower();
        words += letters ? 1 : 0;
    }
    return words;
}

} // namespace

TEST_CASE("a sentence of the core is spoken in the language, its values in their places") {
    CHECK(de("unsafe and open: %1") == "unsicher und offen: %1");
    CHECK(de("a torque wrench reads torque, not V") == "ein Drehmomentschlüssel zeigt Drehmoment, nicht V");
    CHECK(de("largest reading: \"x\" is not a number: write digits with one decimal point or comma, such as "
             "2.4 or 1/2")
              .startsWith("größter Messwert: \"x\" ist keine Zahl: "));
    CHECK(de("limit of error, 1.5 % of full scale (EN 837-1 class 1.6)") ==
          "Fehlergrenze, 1,5 % vom Endwert (EN 837-1 class 1.6)");
    CHECK(coreWords("within", Catalogue(QStringLiteral("en"))) == "within");
    CHECK(coreWords("within", Catalogue(QStringLiteral("fr"))) == "dedans");
    CHECK(de("nobody ever wrote this") == "nobody ever wrote this");
    // A sentence within one, though another fits what it begins with.
    CHECK(de("spread of 3 readings over root 3, widened for few readings: 0.2 N.m, standard") ==
          "Streuung von 3 Messwerten durch Wurzel 3, geweitet wegen weniger Messwerte: 0,2 N.m, Standard");
}

TEST_CASE("a number takes the decimal mark of the language, its unit stays") {
    CHECK(localNumber("2.4 N.m", german()) == "2,4 N.m");
    CHECK(localNumber("2.4\u00a0N.m", german()) == "2,4\u00a0N.m");
    CHECK(localNumber("-0.5", german()) == "-0,5");
    CHECK(localNumber("12", german()) == "12");
    CHECK(localNumber("DOT 5.1", german()) == "DOT 5.1");
    CHECK(localNumber("2026-11-26", german()) == "2026-11-26");
    CHECK(localNumber("2.4 N.m", Catalogue(QStringLiteral("en"))) == "2.4 N.m");
}

TEST_CASE("what was typed is left as it is unless all of it is known") {
    const auto known = [](std::string_view text) { return knownWords(text, german()); };
    CHECK(known("green, white tracer") == "grün, Streifen weiß");
    CHECK(known(wiring::text({wiring::TerminalKind::Blade, 6.3})) == "Flachstecker 6,3");
    CHECK(known("front disc brake: pads, both sides") == "Scheibenbremse vorn: Beläge, beide Seiten");
    CHECK(known("sits as it did, nothing left over: seat") == "sitzt wie vorher, nichts übrig: seat");
    CHECK(known("green, pink tracer (Tove)") == "green, pink tracer (Tove)");
    CHECK(known("seat to tank") == "seat to tank");
    CHECK(known("Tove at least") == "Tove at least");
}

TEST_CASE("a search understands each wire colour by the word that the screen has for it") {
    for (const QString& code : languageCodes()) {
        if (code == u"en")
            continue;
        const Catalogue in(code);
        for (const colour::Insulation insulation : colour::allInsulations) {
            const std::string english{colour::englishWord(insulation)};
            const QString shown = coreWords(english, in);
            std::string understood;
            for (const QString& word : shown.split(u' ')) {
                const auto known = wiring::englishWireWord(word.toStdString());
                understood += understood.empty() ? "" : " ";
                understood += known.empty() ? word.toStdString() : std::string(known);
            }
            INFO(code.toStdString() << ": " << shown.toStdString());
            // "bleu clair": every word must occur, in whatever order.
            std::multiset<QString> wanted;
            std::multiset<QString> got;
            for (const QString& word : QString::fromStdString(english).split(u' '))
                wanted.insert(word);
            for (const QString& word : QString::fromStdString(understood).split(u' '))
                got.insert(word);
            CHECK(got == wanted);
        }
    }
}

TEST_CASE("every complaint about what was typed is spoken") {
    const auto refused = [](const char* typed, units::Dimension dimension) {
        const auto read = units::parseQuantity(typed, dimension);
        REQUIRE_FALSE(read);
        return std::string(read.error().message);
    };
    for (const char* typed :
         {"", "abc", "1.2.3 bar", "1,234 bar", "35/35 bar", "12", "12 furlong", "12 V", "1 000 bar"}) {
        const std::string english = refused(typed, units::Dimension::GaugePressure);
        INFO(english);
        CHECK(de(english).toStdString() != english);
    }
}

TEST_CASE("what each calculation answers is spoken in every language") {
    const units::Date today{std::chrono::year{2026}, std::chrono::November, std::chrono::day{26}};
    std::set<std::string> left;
    int seen = 0;
    for (const QString& code : languageCodes()) {
        if (code == u"en")
            continue;
        const Catalogue in(code);
        for (const trade::Calculation& calculation : trade::calculations()) {
            std::map<std::string, std::string> typed;
            for (const auto& [key, value] : calculation.declaration.example.inputs)
                typed[key] = value;
            const auto outcome = trade::run(calculation, typed, today);
            REQUIRE(outcome);
            std::vector<std::string> lines = outcome->cautions;
            lines.insert(lines.end(), outcome->working.begin(), outcome->working.end());
            for (const auto& [key, value] : outcome->values) {
                if (const auto* text = std::get_if<std::string>(&value.value))
                    lines.push_back(*text);
                else if (const auto* list = std::get_if<std::vector<std::string>>(&value.value))
                    lines.insert(lines.end(), list->begin(), list->end());
            }
            if (outcome->plot) {
                lines.push_back(outcome->plot->thing);
                for (const auto& point : outcome->plot->points)
                    lines.push_back(point.label);
            }
            for (const std::string& line : lines) {
                ++seen;
                if (line != "StVZO section 36" && // a law's name stays as it is printed
                    wordsIn(QString::fromStdString(line)) >= 1 && coreWords(line, in).toStdString() == line)
                    left.insert(calculation.declaration.name + ": " + line);
            }
        }
    }
    CHECK(seen > 300);
    for (const std::string& line : left)
        UNSCOPED_INFO(line);
    CHECK(left.empty());
}

TEST_CASE("every pattern is found again with any values, in whatever order the language has them") {
    for (const QString& code : languageCodes()) {
        const Catalogue in(code);
        for (const Sentences& part : sentences())
            for (const char* pattern : part) {
                const std::string spoken =
                    job::filled(pattern, {"7.5", "8.5", "9.5", "10.5", "11.5", "12.5"});
                const std::string wanted = job::filled(
                    in.translated("Core", pattern).toStdString(),
                    code == u"en" ? std::vector<std::string>{"7.5", "8.5", "9.5", "10.5", "11.5", "12.5"}
                                  : std::vector<std::string>{"7,5", "8,5", "9,5", "10,5", "11,5", "12,5"});
                INFO(pattern);
                CHECK(coreWords(spoken, in).toStdString() == wanted);
            }
    }
}
