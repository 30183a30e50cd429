// One list of everything to order, by supplier.
#include "core/handover/orders.h"

#include "core/job/csv.h"

#include <catch2/catch.hpp>

using namespace undercowl;
using namespace undercowl::handover;

namespace {

job::Part part(const char* name, const char* supplier, const char* price,
               job::PartState state = job::PartState::Wanted) {
    job::Part made;
    made.name = name;
    made.number = std::string("N-") + name;
    made.supplier = supplier;
    made.state = state;
    if (*price != '\0')
        made.price = job::TypedValue{price, "EUR"};
    return made;
}

std::vector<WantedPart> wanted() {
    job::Job one;
    one.number = "2026-001";
    job::Finding finding;
    finding.id = "f";
    finding.text = "linings worn";
    one.findings = {finding};
    one.parts = {part("shoes", "Harbour parts", "18.50"), part("tyre", "", "41"),
                 part("bulb", "Harbour parts", "", job::PartState::Asked),
                 part("hose", "Harbour parts", "9", job::PartState::Ordered)};
    one.parts[0].about = "f";
    one.parts[0].otherNumbers = "KX-12 (other maker)";
    job::Job other;
    other.number = "2026-002";
    other.parts = {part("seal", " harbour PARTS", "2.25"), part("foam", "Airbox & Co", "3.10")};
    auto all = toOrder(one, {"m", "Marrowin", "Tern 125", 1987, "", ""});
    for (WantedPart& each : toOrder(other, {"n", "Velbrook", "Gull 50", {}, "", ""}))
        all.push_back(std::move(each));
    return all;
}

} // namespace

TEST_CASE("Only what is wanted or asked for is on the list, by supplier, those without one last") {
    const auto groups = bySupplier(wanted());
    REQUIRE(groups.size() == 3);
    CHECK(groups[0].supplier == "Airbox & Co");
    CHECK(groups[1].supplier == "Harbour parts");
    CHECK(groups[1].parts.size() == 3); // the ordered hose is not among them
    CHECK(groups[1].sums == std::vector<job::TypedValue>{{"20.75", "EUR"}});
    CHECK(groups[1].withoutPrice == 1);
    CHECK(groups[1].parts[0].forWhat == "linings worn");
    CHECK(groups[2].supplier.empty());
}

TEST_CASE("The list as text names numbers, other makers' numbers, the machine and the sum") {
    const std::string text = orderText(bySupplier(wanted()), englishWords());
    CHECK(text.find("Harbour parts\n- shoes, N-shoes, also KX-12 (other maker), Marrowin Tern 125, 1987, "
                    "18.50\u00A0EUR\n") != std::string::npos);
    CHECK(text.find("20.75\u00A0EUR") != std::string::npos);
    CHECK(text.find("No supplier chosen") != std::string::npos);
    CHECK(text.find("- hose") == std::string::npos);
}

TEST_CASE("The list as spreadsheet is read back cell by cell") {
    const auto rows = job::readCsv(orderCsv(bySupplier(wanted())));
    REQUIRE(rows);
    REQUIRE(rows->size() == 6);
    CHECK((*rows)[2] == job::CsvRow{"Harbour parts", "shoes", "N-shoes", "KX-12 (other maker)", "wanted",
                                    "18.50", "EUR", "2026-001", "Marrowin Tern 125, 1987", "linings worn",
                                    ""});
}

TEST_CASE("The list as document has a table for each supplier, an empty list has none") {
    const auto document = orderDocument(bySupplier(wanted()), "2026-11-26");
    CHECK(englishWords()(document.title) == "Parts to order, 2026-11-26");
    REQUIRE(document.sections.size() == 3);
    CHECK(std::get<Table>(document.sections[1].blocks.at(0)).rows.size() == 3);
    CHECK(orderDocument(bySupplier({}), "2026-11-26").sections.empty());
    CHECK(orderText(bySupplier({}), englishWords()).empty());
}
