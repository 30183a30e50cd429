// The bookkeeping behind the stroke and strip screens, without a screen.
#include "qml/shell/linemodel.h"
#include "qml/strip/stripdraft.h"
#include "qml/wiring/wirerows.h"
#include "qml/wiring/words.h"

#include <catch2/catch.hpp>

using namespace undercowl;
using namespace undercowl::ui;
using colour::Insulation;

namespace {

WireRow proposed(Insulation base) {
    WireRow row;
    row.candidates = {{{base, std::nullopt}, 0.9}};
    row.sure = true;
    row.at = QPointF(0.25, 0.5);
    return row;
}

std::vector<WireRow> threeInTwoPlaces() {
    std::vector<WireRow> rows{proposed(Insulation::RD), proposed(Insulation::GN), proposed(Insulation::BU)};
    rows[1].sharesPlace = true;
    return rows;
}

} // namespace

TEST_CASE("two wires may share a place", "[lift]") {
    const auto keys = placesOf(threeInTwoPlaces(), wiring::Half::Loom);
    REQUIRE(keys.size() == 3);
    CHECK(keys[0] == wiring::PlaceKey{wiring::Half::Loom, 1, 1});
    CHECK(keys[1] == wiring::PlaceKey{wiring::Half::Loom, 1, 2});
    CHECK(keys[2] == wiring::PlaceKey{wiring::Half::Loom, 2, 1});
}

TEST_CASE("the first row cannot be the second wire of a place", "[lift]") {
    auto rows = threeInTwoPlaces();
    rows[0].sharesPlace = true;
    CHECK(placesOf(rows, wiring::Half::Unit)[0] == wiring::PlaceKey{wiring::Half::Unit, 1, 1});
    rows[0].empty = true;
    CHECK(placesOf(rows, wiring::Half::Unit)[1].number == 2);
}

TEST_CASE("reversing keeps a pair in one place", "[lift]") {
    WireRows model;
    model.reset(threeInTwoPlaces());
    model.reverse();
    CHECK(model.keys()[0] == wiring::PlaceKey{wiring::Half::Loom, 1, 1});
    CHECK(model.keys()[1] == wiring::PlaceKey{wiring::Half::Loom, 2, 1});
    CHECK(model.keys()[2] == wiring::PlaceKey{wiring::Half::Loom, 2, 2});
    CHECK(model.rows()[1].candidates[0].wire.base == Insulation::GN);
}

TEST_CASE("what was proposed is not confirmed", "[lift]") {
    WireRows model;
    model.reset(threeInTwoPlaces());
    CHECK(model.sureCount() == 3);
    CHECK(model.openCount() == 3);
    CHECK_FALSE(model.data(model.index(0), WireRows::ConfirmedRole).toBool());
    WireRow empty = model.rows()[0];
    empty.empty = true;
    model.replace(0, empty);
    CHECK(model.openCount() == 2);
    CHECK(model.nextOpen(0) == 1);
    CHECK(model.nextOpen(2) == 2);
}

TEST_CASE("rows come back from a draft", "[lift]") {
    auto rows = threeInTwoPlaces();
    rows[2].sure = false;
    rows[2].doubts = {sight::Doubt::Glare};
    rows[0].said = wiring::PlaceKey{wiring::Half::Unit, 4, 2};
    const auto back = rowsFromJson(toJson(rows));
    REQUIRE(back.size() == 3);
    CHECK(back[0].said == rows[0].said);
    CHECK(back[0].at == rows[0].at);
    CHECK(back[1].sharesPlace);
    CHECK_FALSE(back[2].sure);
    CHECK(back[2].doubts == rows[2].doubts);
    CHECK(rowsFromJson("nonsense").empty());
}

TEST_CASE("an unsure reading names both colours", "[lift]") {
    const std::vector<sight::Candidate> two{{{Insulation::BN, std::nullopt}, 0.5},
                                            {{Insulation::RD, std::nullopt}, 0.4}};
    CHECK(sureness(two, false) == "not sure: brown or red");
    CHECK(sureness(two, true) == "sure");
    CHECK(sureness({}, false) == "no wire found");
}

TEST_CASE("a strip step comes back from a draft", "[lift]") {
    StripDraft draft;
    draft.step.id = "step";
    draft.step.title = "unplug connector";
    draft.step.hardware = {{2, "screw", "M5", "16 mm", job::TypedValue{"9.3", "N.m"}}};
    draft.step.bag = "7";
    draft.addedCautions = {"acid"};
    CHECK(stripDraftFromJson(toJson(draft)) == draft);
    CHECK(stripDraftFromJson("{").step.id.empty());
    CHECK(hardwareText(draft.step) == QString::fromUtf8("2 × screw M5\u00a0×\u00a016\u00a0mm in bag 7"));
    CHECK(cautionsOf(draft) == std::vector<std::string>{"battery-negative-off", "acid"});
}

TEST_CASE("a list keeps the rows whose lines stay, whatever comes, goes or moves", "[lift]") {
    const auto lines = [](const char* ids) {
        std::vector<Line> all;
        for (; *ids != 0; ++ids)
            all.push_back({.id = QString(QLatin1Char(*ids))});
        return all;
    };
    const auto ids = [](const LineModel& model) {
        std::string all;
        for (const Line& line : model.lines())
            all += line.id.toStdString();
        return all;
    };
    const auto [from, to, told] = GENERATE(table<const char*, const char*, const char*>({
        {"", "abc", "insert 0-2"},
        {"abc", "abc", ""},
        {"abc", "abcde", "insert 3-4"},
        {"abc", "xabc", "insert 0-0"},
        {"abcd", "abd", "remove 2-2"},
        {"abcd", "ab", "remove 2-3"},
        {"abcd", "acbd", "move 1 to 3"},
        {"abcde", "acdbe", "move 1 to 4"},
        {"abcde", "adbce", "move 3 to 1"},
        {"ab", "ba", "move 0 to 2"},
        {"abcd", "axyd", "remove 1-2, insert 1-2"},
        {"abcdef", "aedcbf", "remove 1-4, insert 1-4"},
        {"aaa", "aa", "remove 2-2"},
        {"abc", "xyz", "reset"},
        {"abc", "", "remove 0-2"},
    }));
    LineModel model;
    model.setLines(lines(from));
    std::vector<std::string> heard;
    const auto range = [&](const char* what) {
        return [&heard, what](const QModelIndex& /*parent*/, int first, int last) {
            heard.push_back(what + std::to_string(first) + "-" + std::to_string(last));
        };
    };
    QObject::connect(&model, &LineModel::rowsInserted, &model, range("insert "));
    QObject::connect(&model, &LineModel::rowsRemoved, &model, range("remove "));
    QObject::connect(&model, &LineModel::rowsMoved, &model,
                     [&](const QModelIndex&, int first, int, const QModelIndex&, int before) {
                         heard.push_back("move " + std::to_string(first) + " to " + std::to_string(before));
                     });
    QObject::connect(&model, &LineModel::modelReset, &model, [&] { heard.emplace_back("reset"); });
    model.setLines(lines(to));
    CHECK(ids(model) == to);
    std::string all;
    for (const std::string& one : heard)
        all += (all.empty() ? "" : ", ") + one;
    INFO(from << " to " << to);
    CHECK(all == told);
}

TEST_CASE("a line that moved is changed as well", "[lift]") {
    LineModel model;
    model.setLines({{.id = "a", .title = "one"}, {.id = "b", .title = "two"}});
    int changes = 0;
    QObject::connect(&model, &LineModel::dataChanged, &model, [&] { ++changes; });
    model.setLines({{.id = "b", .title = "two"}, {.id = "a", .title = "first"}});
    CHECK(changes == 1);
    CHECK(model.lines()[1].title == "first");
}
