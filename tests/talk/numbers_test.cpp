#include "core/talk/numbers.h"
#include "core/units/parse.h"

#include <catch2/catch.hpp>

using namespace undercowl::talk;

namespace {

std::string digits(std::string_view words) {
    return digitsFromWords(wordsOf(words)).value_or("none");
}

} // namespace

TEST_CASE("numbers are said by name, decimals one by one") {
    CHECK(spokenNumber("0") == "zero");
    CHECK(spokenNumber("7") == "seven");
    CHECK(spokenNumber("13") == "thirteen");
    CHECK(spokenNumber("25") == "twenty five");
    CHECK(spokenNumber("110") == "one hundred and ten");
    CHECK(spokenNumber("200") == "two hundred");
    CHECK(spokenNumber("1.80") == "one point eight zero");
    CHECK(spokenNumber("0,15") == "zero point one five");
    CHECK(spokenNumber("-5") == "minus five");
    CHECK(spokenNumber("12407") == "twelve thousand four hundred and seven");
    CHECK(spokenNumber("5012") == "five thousand and twelve");
    CHECK(spokenNumber("1234567") == "one two three four five six seven");
    CHECK(spokenNumber("about 3") == "about 3");
    CHECK(spokenNumber("") == "");
    CHECK(spokenNumber("4.") == "4.");
}

TEST_CASE("numbers are understood digit by digit, by name and with decimals") {
    CHECK(digits("two five") == "25");
    CHECK(digits("twenty five") == "25");
    CHECK(digits("one oh five") == "105");
    CHECK(digits("one hundred five") == "105");
    CHECK(digits("one hundred and five") == "105");
    CHECK(digits("one point eight") == "1.8");
    CHECK(digits("one point eight zero") == "1.80");
    CHECK(digits("one two point six") == "12.6");
    CHECK(digits("zero point one five") == "0.15");
    CHECK(digits("nineteen point zero five") == "19.05");
}

TEST_CASE("what two people take for two numbers is not understood") {
    for (const char* words :
         {"", "point", "point five", "twenty fifteen", "one twenty", "twenty ten", "two point",
          "two point three point", "hundred", "zero hundred", "two hundred and", "two hundred and zero",
          "twenty zero", "oh five", "zero five", "and five", "two point twenty", "two and five",
          "five hundred hundred"})
        CHECK(digits(words) == "none");
}

TEST_CASE("every number up to 999 with two decimals comes back from its words") {
    for (int whole = 0; whole < 1000; ++whole) {
        const std::string text = std::to_string(whole);
        CHECK(digits(spokenNumber(text)) == text);
        if (whole > 0)
            CHECK(digits(spokenDigits(text)) == text);
        const std::string fine = text + "." + std::to_string(whole % 10) + std::to_string((whole / 10) % 10);
        CHECK(digits(spokenNumber(fine)) == fine);
    }
}
