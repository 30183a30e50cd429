// The main job from the command line: nothing in it is canned, so another photo must give another answer.
#include "tests/platform/tool.h"

#include <catch2/catch.hpp>

#include <filesystem>
#include <fstream>
#include <regex>

using namespace undercowl::tests;
using Catch::Contains;
using nlohmann::json;

namespace {

json demo(const Scratch& scratch, const std::string& arguments = {}) {
    const Ran ran = ctl("demo --json --store '" + (scratch / "shop") + "' --out '" + (scratch / "out") +
                        "' " + arguments);
    INFO(ran.err);
    REQUIRE(ran.exit == 0);
    return ran.json();
}

std::string codeOf(const json& wire) {
    std::string code = wire.at("base").get<std::string>();
    if (wire.at("tracer").is_string())
        code += "/" + wire.at("tracer").get<std::string>();
    return code;
}

std::vector<std::string> codes(const json& said) {
    std::vector<std::string> all;
    for (const json& wire : said.at("wires"))
        all.push_back(wire.at("wire").is_null() ? "" : codeOf(wire.at("wire")));
    return all;
}

// A row of the wiring table: columns stand apart by more than the space between words.
bool tellsAt(const std::string& text, int place, const std::string& code) {
    return std::regex_search(text, std::regex{"\\n *" + std::to_string(place) + "  +" + code + "  "});
}

json entriesOf(const Scratch& scratch) {
    return ctl("job show 2026-031 --json --store '" + (scratch / "shop") + "'").json();
}

} // namespace

TEST_CASE("the demo does the main job and its papers hold the wires that it read") {
    const Scratch scratch;
    const json said = demo(scratch);
    REQUIRE(said.at("wires").size() >= 4);
    const std::string pdf = textOfPdf(said.at("record").get<std::string>());
    const std::string page = contentOf(said.at("page").get<std::string>());
    for (const json& wire : said.at("wires")) {
        const std::string code = codeOf(wire.at("wire"));
        const int place = wire.at("place").get<int>();
        INFO("place " << place << " " << code);
        CHECK_THAT(page, Contains(code));
        // Sure wires stand in the table; the others must not, and are told with their choices instead.
        CHECK(tellsAt(pdf, place, code) == wire.at("sure").get<bool>());
        if (!wire.at("sure").get<bool>())
            CHECK_THAT(page, Contains("place " + std::to_string(place) + " " + code));
    }
    CHECK(said.at("read_back").size() == said.at("wires").size());
    CHECK(ctl("archive verify '" + said.at("archive").get<std::string>() + "'").exit == 0);
}

TEST_CASE("the demo finds the pair that was swapped and the record says so") {
    const Scratch scratch;
    const json said = demo(scratch);
    CHECK(said.at("comparison").at("verdict") == "changed");
    REQUIRE(said.at("comparison").at("changes").size() == 1);
    const json& change = said.at("comparison").at("changes").at(0);
    CHECK(change.at("kind") == "swapped");
    CHECK(change.at("places") == json({5, 7})); // what was exchanged between the two pictures
    const std::string places = std::to_string(change.at("places").at(0).get<int>()) + " and " +
                               std::to_string(change.at("places").at(1).get<int>());
    CHECK_THAT(contentOf(said.at("page").get<std::string>()), Contains("swapped: place " + places));
    // Exactly the places that changed are told not to match.
    const json entries = entriesOf(scratch);
    for (const json& check : entries.at("wire_checks")) {
        const bool changed =
            check.at("place") == change.at("places").at(0) || check.at("place") == change.at("places").at(1);
        CHECK(check.at("outcome") == (changed ? "does not match" : "matches"));
    }
}

TEST_CASE("a second demo in the same folder finds everything said") {
    const Scratch scratch;
    const json first = demo(scratch);
    const json before = entriesOf(scratch);
    const std::string pdf = contentOf(first.at("record").get<std::string>());
    const json second = demo(scratch);
    CHECK(second.at("wires") == first.at("wires"));
    CHECK(entriesOf(scratch) == before);
    CHECK(ctl("store check --store '" + (scratch / "shop") + "'").exit == 0);
    const bool sameBytes = contentOf(second.at("record").get<std::string>()) == pdf;
    CHECK(sameBytes);
}

TEST_CASE("another photo changes map, comparison and record") {
    const Scratch scratch;
    const json first = demo(scratch);
    const std::string photo = std::string{UNDERCOWL_DEMO} + "/rear-terminals.jpg";
    const std::string stroke = "460,150 470,700";
    const json other = demo(scratch, "--before '" + photo + "' --along-before " + stroke);
    CHECK(codes(other) != codes(first));
    CHECK(other.at("comparison").at("before") != first.at("comparison").at("before"));
    const std::string pdf = textOfPdf(other.at("record").get<std::string>());
    for (const json& wire : other.at("wires"))
        if (wire.at("sure").get<bool>())
            CHECK(tellsAt(pdf, wire.at("place").get<int>(), codeOf(wire.at("wire"))));
    // What only the first photo showed is gone from the table.
    for (const json& wire : first.at("wires"))
        if (wire.at("sure").get<bool>() && codes(other) != codes(first)) {
            const auto index = static_cast<std::size_t>(wire.at("place").get<int>() - 1);
            const auto now = codes(other);
            if (index >= now.size() || now.at(index) != codeOf(wire.at("wire")))
                CHECK_FALSE(tellsAt(pdf, wire.at("place").get<int>(), codeOf(wire.at("wire"))));
        }
}

TEST_CASE("the same photo twice has no change in it") {
    const Scratch scratch;
    const std::string photo = std::string{UNDERCOWL_DEMO} + "/switch-before.jpg";
    std::ifstream in{std::string{UNDERCOWL_DEMO} + "/wiring.json"};
    std::string stroke;
    const json plan = json::parse(in);
    for (const json& point : plan.at("before").at("along"))
        stroke += " " + std::to_string(point.at(0).get<int>()) + "," + std::to_string(point.at(1).get<int>());
    const json said = demo(scratch, "--after '" + photo + "' --along-after" + stroke);
    CHECK(said.at("comparison").at("verdict") != "changed");
    CHECK_THAT(contentOf(said.at("page").get<std::string>()), !Contains("swapped"));
}

TEST_CASE("what is no photo, or no demo's folder, is refused and named") {
    const Scratch scratch;
    write(scratch / "note.jpg", "not a photo");
    const Ran bad =
        ctl("demo --store '" + (scratch / "shop") + "' --before '" + (scratch / "note.jpg") + "'");
    CHECK(bad.exit == 2);
    CHECK_THAT(bad.err, Contains("note.jpg"));
    const Ran missing =
        ctl("demo --store '" + (scratch / "shop2") + "' --after '" + (scratch / "lost.jpg") + "'");
    CHECK(missing.exit == 2);
    CHECK_THAT(missing.err, Contains("lost.jpg"));
}

TEST_CASE("a shop whose making was killed is gone on with and says nothing twice") {
    const Scratch whole;
    REQUIRE(ctl("demo --only-shop --store '" + (whole / "shop") + "'").exit == 0);
    const json wanted = entriesOf(whole);
    for (const char* seconds : {"0.03", "0.08", "0.2", "0.4"}) {
        INFO("killed after " << seconds << " s");
        const Scratch scratch;
        const std::string arguments = " demo --only-shop --store '" + (scratch / "shop") + "'";
        const Ran killed =
            run("timeout", std::string{"-s KILL "} + seconds + " '" + UNDERCOWLCTL + "'" + arguments);
        CHECK((killed.exit == 137 || killed.exit == 0)); // 0: it was quicker
        CHECK(ctl(arguments).exit == 0);
        const json job = entriesOf(scratch);
        for (const char* list : {"findings", "tasks", "wiring", "readings", "parts", "rechecks", "photos"})
            CHECK(job.at(list) == wanted.at(list));
        CHECK(job.at("steps").size() == wanted.at("steps").size());
        CHECK(ctl("store check --store '" + (scratch / "shop") + "'").exit == 0);
    }
}

TEST_CASE("a demo that is given no store makes a fresh one") {
    const Ran ran = ctl("demo --only-shop --json");
    REQUIRE(ran.exit == 0);
    const std::filesystem::path folder = ran.json().at("store").get<std::string>();
    CHECK(std::filesystem::exists(folder / "shop.db"));
    CHECK_THAT(folder.string(), Contains("undercowl-demo-"));
    std::filesystem::remove_all(folder.parent_path());
}
