#include "core/verdict/specify.h"

#include <catch2/catch.hpp>

using namespace undercowl::units;
using namespace undercowl::verdict;

namespace {

InstrumentSheet wrench() {
    InstrumentSheet sheet;
    sheet.name = "wrench red";
    sheet.kind = "torque-wrench";
    sheet.low = "5";
    sheet.high = "25 N.m";
    sheet.resolution = "0,1";
    sheet.wrench = "II A";
    return sheet;
}

std::string fault(const InstrumentSheet& sheet) {
    const auto made = instrumentFrom(sheet);
    return made ? "none" : made.error().field;
}

} // namespace

// ISO 6789-1: an adjustable wrench above 10 N.m of tool maximum may be off by 4 %.
TEST_CASE("A torque wrench follows from its type, class and range") {
    for (const char* written : {"II A", "iia", "type II class A"}) {
        auto sheet = wrench();
        sheet.wrench = written;
        const auto made = instrumentFrom(sheet);
        REQUIRE(made);
        CHECK(made->limit.percentOfReading == 4);
        CHECK(made->rangeLow == 5);
        CHECK(made->resolution == Approx(0.1));
    }
    auto sheet = wrench();
    sheet.wrench = "III A";
    CHECK(fault(sheet) == "wrench");
    sheet.wrench = "I G";
    CHECK(fault(sheet) == "wrench");
}

// EN 837-1: the class is per cent of full scale. A plain psi on a gauge is gauge pressure.
TEST_CASE("A gauge follows from its class, and reads gauge pressure") {
    InstrumentSheet sheet;
    sheet.name = "gauge";
    sheet.kind = "pressure-gauge";
    sheet.high = "60 psi";
    sheet.resolution = "1 psi";
    sheet.gaugeClass = "1.6";
    const auto made = instrumentFrom(sheet);
    REQUIRE(made);
    CHECK(made->unit.dimension() == Dimension::GaugePressure);
    CHECK(made->limit.percentOfRange == 1.6);
    CHECK(made->resolution == Approx(1));
}

TEST_CASE("A step of a thermometer in Fahrenheit is a difference, not a temperature") {
    InstrumentSheet sheet;
    sheet.name = "thermometer";
    sheet.kind = "thermometer";
    sheet.low = "0 degF";
    sheet.high = "250 degF";
    sheet.resolution = "1 K";
    sheet.error = "2";
    const auto made = instrumentFrom(sheet);
    REQUIRE(made);
    CHECK(made->resolution == Approx(1.8));
    CHECK(made->limit.absolute == 2);
}

TEST_CASE("What is wrong with a sheet is named by its field") {
    const auto with = [](std::string InstrumentSheet::*field, const char* text) {
        auto sheet = wrench();
        sheet.*field = text;
        return fault(sheet);
    };
    CHECK(with(&InstrumentSheet::kind, "hammer") == "kind");
    CHECK(with(&InstrumentSheet::name, "") == "name");
    CHECK(with(&InstrumentSheet::high, "25") == "high");
    CHECK(with(&InstrumentSheet::high, "25 V") == "high");
    CHECK(with(&InstrumentSheet::low, "30") == "high");
    CHECK(with(&InstrumentSheet::low, "2 V") == "low");
    CHECK(with(&InstrumentSheet::resolution, "0") == "resolution");
    CHECK(with(&InstrumentSheet::resolution, "-1") == "resolution");
    CHECK(with(&InstrumentSheet::wrench, "") == "error"); // no limit of error at all
    CHECK(with(&InstrumentSheet::calibrated, "03/04/26") == "calibrated");
    auto backwards = wrench();
    backwards.calibrated = "2026-03-01";
    backwards.due = "2026-02-01";
    CHECK(fault(backwards) == "due");
}

TEST_CASE("An instrument that is to be changed comes back as it was") {
    const auto same = [](const Instrument& a, const Instrument& b) {
        INFO(a.name << " " << a.unit.symbol());
        CHECK(a.name == b.name);
        CHECK(a.kind == b.kind);
        CHECK(a.unit == b.unit);
        CHECK(a.rangeLow == b.rangeLow);
        CHECK(a.rangeHigh == b.rangeHigh);
        CHECK(a.resolution == b.resolution);
        CHECK(a.limit.percentOfReading == b.limit.percentOfReading);
        CHECK(a.limit.percentOfRange == b.limit.percentOfRange);
        CHECK(a.limit.digits == b.limit.digits);
        CHECK(a.limit.absolute == b.limit.absolute);
        CHECK(a.limitSource == b.limitSource);
        CHECK(a.feel == b.feel);
        CHECK(a.calibrated == b.calibrated);
        CHECK(a.due == b.due);
    };
    for (Instrument one : ordinaryInstruments()) {
        one.calibrated = *parseDate("2026-03-01");
        one.due = *parseDate("2027-03-01");
        const auto again = instrumentFrom(sheetOf(one));
        if (!again)
            FAIL(one.name << ": " << again.error().field << " " << again.error().message);
        same(one, *again);
    }
    auto sheet = wrench();
    sheet.wrench = "I D"; // from memory: the source carries a remark
    sheet.feel = "0.2";
    const auto made = instrumentFrom(sheet);
    REQUIRE(made);
    CHECK(made->feel == Approx(0.2));
    CHECK(sheetOf(*made).wrench == "I D");
    same(*made, *instrumentFrom(sheetOf(*made)));
}

TEST_CASE("A limit of error is told in words") {
    CHECK(errorText(*ordinaryInstrument("multimeter", Dimension::Voltage)) ==
          "0.5 % of the reading + 2 digits");
    CHECK(errorText(*ordinaryInstrument("caliper", Dimension::Length)) == "0.03 mm");
    CHECK(errorText(*ordinaryInstrument("tyre-gauge", Dimension::GaugePressure)) == "1.6 % of full scale");
}
