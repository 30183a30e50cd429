#include "core/journal/knowledgefile.h"

#include "core/journal/force.h"
#include "core/journal/say.h"
#include "core/journal/saying.h"

#include <algorithm>

namespace undercowl::journal {
namespace {

constexpr std::int64_t newestFile = 1;
constexpr std::size_t factsInEntry = 200;
constexpr std::size_t mostFacts = 20'000; // of a file: more is no knowledge of one model
constexpr std::int64_t firstYear = 1880;
constexpr std::int64_t lastYear = 2200;

Json toJson(const job::Fact& fact) {
    Json json{{"kind", job::code(fact.kind)}, {"what", fact.what}, {"seen", fact.seen}};
    put(json, "says", fact.says);
    put(json, "source", fact.source);
    return json;
}

Json headOf(const job::ModelKnowledge& known) {
    Json json{{"make", known.make}, {"model", known.model}};
    if (known.firstYear)
        json["first_year"] = *known.firstYear;
    if (known.lastYear)
        json["last_year"] = *known.lastYear;
    return json;
}

job::Fact readFact(const Json& json) {
    const Fields fields(json, "fact");
    job::Fact fact;
    fact.kind = fields.word("kind", job::factKindFromCode);
    fact.what = fields.text("what");
    fact.says = fields.textOr("says");
    fact.source = fields.textOr("source");
    for (const Json& job : fields.list("seen")) {
        if (!job.is_string() || job.get_ref<const std::string&>().empty())
            throw ShapeError("seen: must be a list of the ids of jobs");
        fact.seen.insert(job.get<std::string>());
    }
    if (fact.what.empty())
        throw ShapeError("what: must not be empty");
    return fact;
}

job::ModelKnowledge readHead(const Fields& body) {
    job::ModelKnowledge known;
    known.make = body.text("make");
    known.model = body.text("model");
    if (body.has("first_year"))
        known.firstYear = static_cast<int>(body.whole("first_year", firstYear, lastYear));
    if (body.has("last_year"))
        known.lastYear = static_cast<int>(body.whole("last_year", firstYear, lastYear));
    return known;
}

// Facts in their order and each once, whatever order they were read in.
job::ModelKnowledge ordered(const job::ModelKnowledge& known) {
    job::ModelKnowledge empty = known;
    empty.facts.clear();
    return job::merged(known, empty);
}

} // namespace

std::string knowledgeFile(const job::ModelKnowledge& known) {
    Json json = headOf(known);
    json["undercowl"] = "knowledge";
    json["version"] = newestFile;
    json["facts"] = Json::array();
    for (const job::Fact& fact : known.facts)
        json["facts"].push_back(toJson(fact));
    return json.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

tl::expected<job::ModelKnowledge, std::string> readKnowledgeFile(std::string_view text) {
    try {
        const Json json = Json::parse(text);
        const Fields file(json, "file");
        if (file.text("undercowl") != "knowledge")
            throw ShapeError("undercowl: must be \"knowledge\"");
        if (file.whole("version", 1, 1'000'000) > newestFile)
            throw ShapeError("version: is newer than this program; take a newer program");
        job::ModelKnowledge known = readHead(file);
        const Json& facts = file.child("facts");
        if (!facts.is_array() || facts.size() > mostFacts)
            throw ShapeError("facts: must be a list of at most 20000");
        for (const Json& fact : facts)
            known.facts.push_back(readFact(fact));
        return ordered(known);
    } catch (const ShapeError& error) {
        return tl::unexpected(std::string(error.what()));
    } catch (const Json::exception& error) {
        return tl::unexpected(std::string("no JSON: ") + error.what());
    }
}

std::vector<Draft> knowledgeLearned(const job::ModelKnowledge& known, const std::function<Id()>& newId) {
    std::vector<Draft> drafts;
    for (std::size_t from = 0; from < known.facts.size(); from += factsInEntry) {
        Json body = headOf(known);
        body["facts"] = Json::array();
        for (std::size_t at = from; at < std::min(known.facts.size(), from + factsInEntry); ++at)
            body["facts"].push_back(toJson(known.facts[at]));
        drafts.push_back(draft("knowledge.learned", std::string(shopStream), newId(), body));
    }
    return drafts;
}

job::ModelKnowledge readKnowledge(const Fields& body) {
    job::ModelKnowledge known = readHead(body);
    for (const Json& fact : body.list("facts"))
        known.facts.push_back(readFact(fact));
    return known;
}

job::ModelKnowledge learnedOf(std::span<const Entry> shop, std::string_view make, std::string_view model) {
    job::ModelKnowledge all;
    all.make = make;
    all.model = model;
    for (const InForce& entry : inForce(shopStream, shop).effects) {
        if (entry.last->kind != "knowledge.learned" || entry.last->redacted)
            continue;
        const Json body = Json::parse(entry.last->body, nullptr, false);
        if (body.is_discarded())
            continue;
        try {
            const job::ModelKnowledge known = readKnowledge(Fields(body));
            if (job::sameModel(known.make, known.model, make, model))
                all = job::merged(all, known);
        } catch (const ShapeError&) {
            continue; // unreadable: said nothing
        }
    }
    return all;
}

} // namespace undercowl::journal
