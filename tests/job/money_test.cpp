// Exact decimals and spreadsheet text. Places of currencies: ISO 4217, the examples from memory.
#include "core/job/csv.h"
#include "core/job/money.h"

#include <catch2/catch.hpp>

#include <random>

using namespace undercowl::job;

TEST_CASE("Decimals are read as typed and nothing else is") {
    CHECK(decimal("120.50") == Decimal{1'205'000});
    CHECK(decimal("120,5") == Decimal{1'205'000});
    CHECK(decimal("-0.0001") == Decimal{-1});
    CHECK(decimal("99999999999.9999"));
    for (const char* wrong :
         {"", "-", ".5", "1.", "1e3", "1.234,5", "1 000", "0x10", "1.23456", "999999999999"})
        CHECK_FALSE(decimal(wrong));
}

TEST_CASE("A bill is rounded half away from zero, to the places of its currency") {
    CHECK(written({1'005'000}, 2) == "100.50");
    CHECK(written({10'050}, 2) == "1.01"); // 1.005
    CHECK(written({-10'050}, 2) == "-1.01");
    CHECK(written({10'049}, 2) == "1.00");
    CHECK(written({5'000}, 0) == "1");
    CHECK(written({-4'999}, 0) == "0");
    CHECK(currencyPlaces("jpy") == 0);
    CHECK(currencyPlaces("KWD") == 3);
    CHECK(currencyPlaces("EUR") == 2);
    // 19 % of 0.50 is 0.095; a binary fraction would say 0.09.
    CHECK(written(*scaled(*decimal("0.50"), *decimal("19"), 100, 2), 2) == "0.10");
    // 70 minutes at 58.00 an hour
    CHECK(written(*scaled(*decimal("58"), *decimal("70"), 60, 2), 2) == "67.67");
    CHECK_FALSE(scaled(*decimal("99999999999"), *decimal("99999999999"), 1, 2));
}

TEST_CASE("Sums are kept apart by currency and exact over ten thousand cents") {
    std::vector<TypedValue> prices(10'000, {"0.01", "EUR"});
    prices.push_back({"5", "DKK"});
    prices.push_back({"about 3", "EUR"});
    int unreadable = 0;
    CHECK(sums(prices, &unreadable) == std::vector<TypedValue>{{"5.00", "DKK"}, {"100.00", "EUR"}});
    CHECK(unreadable == 1);
}

TEST_CASE("Any rows come back from a spreadsheet file as they were") {
    std::mt19937 random(7); // NOLINT(cert-msc51-cpp): the same rows in every run
    const std::string letters = "ab,;\t\"\r\n '=\xC3\xBC";
    for (int run = 0; run < 500; ++run) {
        std::vector<CsvRow> rows(1 + random() % 4, CsvRow(1 + random() % 4));
        for (CsvRow& row : rows)
            for (std::string& cell : row)
                for (std::size_t i = random() % 6; i > 0; --i)
                    cell += letters[random() % letters.size()];
        const std::string text = writeCsv(rows);
        INFO(text);
        const auto back = readCsv(text);
        REQUIRE(back);
        // A first row of one cell names no separator, which only matters where cells hold one: they are
        // quoted.
        CHECK(*back == rows);
    }
}

TEST_CASE("What other spreadsheets write is read, and what is broken is named by its line") {
    CHECK(*readCsv("\xEF\xBB\xBFmake;model\nMarrowin;\"Tern; 125\"\n\n") ==
          std::vector<CsvRow>{{"make", "model"}, {"Marrowin", "Tern; 125"}});
    CHECK(*readCsv("a\tb\r\nc\t") == std::vector<CsvRow>{{"a", "b"}, {"c", ""}});
    CHECK(readCsv("a,b\n\"c").error().find("line 2") == 0);
    CHECK(readCsv("a\n\"b\"c\n").error().find("line 2") == 0);
    CHECK(readCsv("")->empty());
}
