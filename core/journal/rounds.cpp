#include "core/journal/rounds.h"

#include "core/journal/force.h"
#include "core/journal/saying.h"

#include <algorithm>
#include <array>

namespace undercowl::journal {

std::span<const std::string_view> builtInRoundFiles(); // made by CMake of assets/rounds

namespace {

constexpr std::array<std::string_view, 10> traitCodes{
    "two-stroke",     "four-stroke", "gears",      "automatic", "kick",
    "electric-start", "front-drum",  "front-disc", "rear-drum", "rear-disc"};
constexpr std::array<std::string_view, 3> useCodes{"round", "functions", "views"};
constexpr std::int64_t newestFile = 1;
constexpr std::size_t longestKey = 40;

bool plainKey(std::string_view key) {
    return !key.empty() && key.size() <= longestKey && std::ranges::all_of(key, [](char c) {
        return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '-';
    });
}

RoundGroup readGroup(const Json& json) {
    const Fields fields(json, "group");
    RoundGroup group{fields.text("name"), {}};
    for (const Json& check : fields.list("checks")) {
        if (!check.is_string() || check.get_ref<const std::string&>().empty())
            throw ShapeError("checks: must be a list of texts that are not empty");
        group.checks.push_back(check.get<std::string>());
    }
    return group;
}

Json toJson(const RoundList& list) {
    Json json{{"key", list.key}, {"title", list.title}, {"use", code(list.use)}, {"when", list.when}};
    json["groups"] = Json::array();
    for (const RoundGroup& group : list.groups)
        json["groups"].push_back({{"name", group.name}, {"checks", group.checks}});
    return json;
}

std::vector<RoundList> readBuiltIn() {
    std::vector<RoundList> lists;
    for (const std::string_view file : builtInRoundFiles())
        if (auto list = readRoundFile(file)) // a file that cannot be read fails the tests
            lists.push_back(std::move(*list));
    std::ranges::sort(lists, {}, &RoundList::key);
    return lists;
}

void put(std::vector<RoundList>& lists, RoundList list) {
    const auto old = std::ranges::find(lists, list.key, &RoundList::key);
    if (old != lists.end())
        *old = std::move(list);
    else
        lists.push_back(std::move(list));
}

void addChecks(std::vector<job::RoundCheck>& checks, const RoundList& list) {
    for (const RoundGroup& group : list.groups)
        for (const std::string& text : group.checks) {
            job::RoundCheck check;
            check.group = group.name;
            check.text = text;
            // Answers name the check by its text, so that it must be one of a kind.
            if (std::ranges::find(checks, check.text, &job::RoundCheck::text) != checks.end())
                check.text += " (" + group.name + ")";
            if (std::ranges::find(checks, check.text, &job::RoundCheck::text) == checks.end())
                checks.push_back(std::move(check));
        }
}

} // namespace

std::span<const std::string_view> traits() {
    return traitCodes;
}

std::string_view code(RoundUse use) {
    return useCodes.at(static_cast<std::size_t>(use));
}

std::optional<RoundUse> roundUseFromCode(std::string_view text) {
    const auto* found = std::ranges::find(useCodes, text);
    if (found == useCodes.end())
        return std::nullopt;
    return static_cast<RoundUse>(found - useCodes.begin());
}

RoundList readRoundList(const Fields& body) {
    RoundList list;
    list.key = body.text("key");
    if (!plainKey(list.key))
        throw ShapeError("key: small letters, digits and hyphens, at most 40, such as \"two-stroke\"");
    list.title = body.text("title");
    list.use = body.has("use") ? body.word("use", roundUseFromCode) : RoundUse::Round;
    if (body.has("when"))
        for (const Json& trait : body.list("when")) {
            if (!trait.is_string() ||
                std::ranges::find(traitCodes, trait.get_ref<const std::string&>()) == traitCodes.end())
                throw ShapeError("when: " + trait.dump() + " is no trait; docs/rounds.md lists them");
            list.when.push_back(trait.get<std::string>());
        }
    for (const Json& group : body.list("groups"))
        list.groups.push_back(readGroup(group));
    return list;
}

tl::expected<RoundList, std::string> readRoundFile(std::string_view json) {
    try {
        const Json parsed = Json::parse(json);
        const Fields file(parsed, "file");
        if (file.text("undercowl") != "round")
            throw ShapeError("undercowl: must be \"round\"");
        if (file.whole("version", 1, 1'000'000) > newestFile)
            throw ShapeError("version: is newer than this program; take a newer program");
        return readRoundList(file);
    } catch (const ShapeError& error) {
        return tl::unexpected(std::string(error.what()));
    } catch (const Json::exception& error) {
        return tl::unexpected(std::string("no JSON: ") + error.what());
    }
}

std::string roundFile(const RoundList& list) {
    Json json = toJson(list);
    json["undercowl"] = "round";
    json["version"] = newestFile;
    return json.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

const std::vector<RoundList>& builtInRounds() {
    static const std::vector<RoundList> lists = readBuiltIn();
    return lists;
}

Draft roundKept(const RoundList& list) {
    return draft("round.kept", std::string(shopStream), list.key, toJson(list));
}

std::vector<RoundList> roundLists(std::span<const Entry> shop) {
    std::vector<RoundList> lists = builtInRounds();
    for (const InForce& entry : inForce(shopStream, shop).effects) {
        if (entry.last->kind != "round.kept" || entry.last->redacted)
            continue;
        const Json body = Json::parse(entry.last->body, nullptr, false);
        if (body.is_discarded())
            continue;
        try {
            put(lists, readRoundList(Fields(body)));
        } catch (const ShapeError&) {
            continue; // unreadable: said nothing
        }
    }
    std::ranges::sort(lists, {}, &RoundList::key);
    return lists;
}

job::Round composed(std::span<const RoundList> lists, std::span<const std::string> has) {
    std::vector<const RoundList*> fitting;
    for (const RoundList& list : lists)
        if (list.use == RoundUse::Round && !list.groups.empty() &&
            std::ranges::all_of(list.when, [&](const std::string& trait) {
                return std::ranges::find(has, trait) != has.end();
            }))
            fitting.push_back(&list);
    std::ranges::stable_sort(fitting, {}, [](const RoundList* list) { return list->when.size(); });
    job::Round round;
    for (const RoundList* list : fitting) {
        round.key += (round.key.empty() ? "" : "+") + list->key;
        round.title += (round.title.empty() ? "" : ", ") + list->title;
        addChecks(round.checks, *list);
    }
    return round;
}

std::vector<job::RoundCheck> checksOf(std::span<const RoundList> lists, RoundUse use) {
    std::vector<job::RoundCheck> checks;
    for (const RoundList& list : lists)
        if (list.use == use)
            addChecks(checks, list);
    return checks;
}

} // namespace undercowl::journal
