#include "core/trade/json.h"
#include "tests/trade/running.h"

#include <filesystem>
#include <fstream>
#include <set>
#include <sstream>

using namespace undercowl;
using namespace undercowl::trade;

namespace {

std::string content(const std::filesystem::path& file) {
    std::ifstream stream(file);
    std::ostringstream text;
    text << stream.rdbuf();
    return text.str();
}

const std::filesystem::path docs =
    std::filesystem::path(UNDERCOWL_TESTS).parent_path() / "docs" / "calculations";

} // namespace

TEST_CASE("All calculations are declared, in order, and completely") {
    CHECK(calculations().size() == 32);
    std::string before;
    for (const Calculation& calculation : calculations()) {
        const Declaration& d = calculation.declaration;
        INFO(d.name);
        CHECK(before < d.name);
        before = d.name;
        CHECK_FALSE(d.title.empty());
        CHECK_FALSE(d.purpose.empty());
        CHECK_FALSE(d.formula.empty());
        CHECK_FALSE(d.sources.empty());
        CHECK_FALSE(d.cautions.empty());
        CHECK_FALSE(d.outputs.empty());
        CHECK_FALSE(d.example.expected.empty());
        std::set<std::string> keys;
        for (const Input& input : d.inputs) {
            INFO(input.key);
            CHECK(keys.insert(input.key).second);
            CHECK_FALSE(input.label.empty());
            CHECK_FALSE(input.why.empty());
            CHECK(input.least <= input.most);
            if (input.kind == Kind::Quantity)
                CHECK(input.declaredUnit().dimension() == input.dimension);
            if (input.kind == Kind::Choice)
                CHECK(input.choices.size() >= 2);
        }
    }
}

TEST_CASE("Every worked example gives what it promises") {
    for (const Calculation& calculation : calculations()) {
        const Declaration& d = calculation.declaration;
        const Result result = ran(d.name, Typed(d.example.inputs.begin(), d.example.inputs.end()));
        CHECK_FALSE(result.working.empty());
        for (const auto& [key, expected] : d.example.expected) {
            INFO(d.name << " " << key);
            if (key == "verdict") {
                CHECK(verdictOf(result) == expected);
                continue;
            }
            const Value* value = result.find(key);
            REQUIRE(value != nullptr);
            if (const auto* quantity = std::get_if<units::Quantity>(&value->value))
                CHECK(quantity->value == Approx(std::stod(expected)).epsilon(2e-5).margin(1e-9));
            else
                CHECK(value->text == expected);
        }
        for (const auto& [key, value] : result.values)
            CHECK(d.output(key) != nullptr);
    }
}

TEST_CASE("The pages in docs/calculations are those of the declarations") {
    INFO("run write_calculation_pages docs/calculations and commit what it wrote");
    CHECK(content(docs / "README.md") == indexPage());
    std::size_t files = 0;
    for (const auto& entry : std::filesystem::directory_iterator(docs))
        files += entry.path().extension() == ".md" ? 1 : 0;
    CHECK(files == calculations().size() + 1);
    for (const Calculation& calculation : calculations()) {
        INFO(calculation.declaration.name);
        CHECK(content(docs / (calculation.declaration.name + ".md")) == page(calculation));
    }
}

TEST_CASE("JSON has the promised shape") {
    const Calculation& drain = *findCalculation("tread");
    const auto outcome = run(drain, {{"depth", "1.65"}, {"country", "DE"}}, exampleDay());
    REQUIRE(outcome);
    const auto json = toJson(drain.declaration, *outcome);
    CHECK(json["name"] == "tread");
    CHECK(json["results"]["limit"]["value"] == 1.6);
    CHECK(json["results"]["limit"]["unit"] == "mm");
    CHECK(json["results"]["limit"]["text"] == "1.6 mm");
    CHECK(json["verdict"] == "too close to call");
    CHECK(json["uncertainty"]["k"] == 2);
    CHECK(json["accept_from"]["value"].get<double>() == Approx(1.7));
    CHECK(json["working"].is_array());
    CHECK(json["sources"].size() == drain.declaration.sources.size());
    CHECK(json["cautions"].size() > drain.declaration.cautions.size());
    const Calculation& order = *findCalculation("tightening-order");
    const auto steps =
        toJson(order.declaration,
               *run(order, {{"bolts", "4"}, {"pattern", "cross"}, {"torque", "12 N.m"}}, exampleDay()));
    CHECK(steps["results"]["steps"]["value"].size() == 8);
    CHECK(steps["results"]["steps"]["value"][1]["bolt"] == 3);
    CHECK(steps["results"]["steps"]["value"][1]["torque"]["value"] == 6.0);
    CHECK(steps["verdict"].is_null());
    const auto form = toJson(drain.declaration);
    CHECK(form["inputs"][0]["units"].size() > 5);
    CHECK(form["inputs"][1]["choices"].size() == 5);
}
