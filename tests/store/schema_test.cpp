// docs/archive.schema.json against what is written: the part of JSON Schema that the file uses.
#include "tests/store/shop.h"

#include "core/store/entryjson.h"

#include <nlohmann/json.hpp>

#include <fstream>
#include <regex>

using namespace undercowl;
using namespace undercowl::store;
using namespace undercowl::store::test;
using Json = nlohmann::json;

namespace {

bool hasType(const Json& value, const std::string& type) {
    return (type == "object" && value.is_object()) || (type == "array" && value.is_array()) ||
           (type == "string" && value.is_string()) || (type == "boolean" && value.is_boolean()) ||
           (type == "integer" && value.is_number_integer());
}

// Adds where the value does not fit to 'problems'.
void judge(const Json& root, const Json& rule, const Json& value, const std::string& where,
           std::vector<std::string>& problems) {
    for (const auto& [word, wanted] : rule.items()) {
        bool fits = true;
        if (word == "$ref") {
            judge(root, root.at(Json::json_pointer(wanted.get<std::string>().substr(1))), value, where,
                  problems);
        } else if (word == "type") {
            fits = hasType(value, wanted);
        } else if (word == "const") {
            fits = value == wanted;
        } else if (word == "pattern") {
            fits = value.is_string() &&
                   std::regex_search(value.get<std::string>(), std::regex(wanted.get<std::string>()));
        } else if (word == "minimum") {
            fits = value >= wanted;
        } else if (word == "maximum") {
            fits = value <= wanted;
        } else if (word == "minItems") {
            fits = value.size() >= wanted.get<std::size_t>();
        } else if (word == "maxItems") {
            fits = value.size() <= wanted.get<std::size_t>();
        } else if (word == "maxLength") {
            fits = value.is_string() && value.get<std::string>().size() <= wanted.get<std::size_t>();
        } else if (word == "required") {
            for (const auto& name : wanted) {
                fits = fits && value.contains(name.get<std::string>());
            }
        } else if (word == "properties") {
            for (const auto& [name, content] : value.items()) {
                if (!wanted.contains(name)) {
                    problems.push_back(where + "/" + name + ": not in the schema");
                    continue;
                }
                judge(root, wanted.at(name), content, where + "/" + name, problems);
            }
        } else if (word == "items") {
            for (const auto& item : value) {
                judge(root, wanted, item, where + "/-", problems);
            }
        } else if (word != "$schema" && word != "title" && word != "description" && word != "$defs") {
            problems.push_back("the schema uses '" + word + "', which this test does not know");
        }
        if (!fits) {
            problems.push_back(where + ": " + word + " " + wanted.dump());
        }
    }
}

std::vector<std::string> problems(const Json& value) {
    std::ifstream in(std::string(UNDERCOWL_TESTS) + "/../docs/archive.schema.json");
    const Json schema = Json::parse(in);
    std::vector<std::string> found;
    judge(schema, schema, value, "", found);
    return found;
}

} // namespace

TEST_CASE("what is exported fits the published schema, and what does not fit it is told") {
    Shop shop;
    const Id job = shop.wholeJob("2026-001");
    must(shop.store.redact(must(shop.store.job(job)).owner));
    auto entries = must(shop.store.entries(job));
    const auto owner = must(shop.store.entries(must(shop.store.job(job)).owner));
    entries.insert(entries.end(), owner.begin(), owner.end());
    Json json = Json::parse(toJson({job, "2026-001", entries}));
    CHECK(problems(json) == std::vector<std::string>{});

    json["entries"][0]["kind"] = "No Such";
    json["entries"][1].erase("salt");
    json["entries"][2]["number"] = 0;
    json["version"] = 2;
    CHECK(problems(json).size() == 4);
}
