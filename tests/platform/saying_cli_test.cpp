// What the command line says of a job: proofs, checks of rounds, cost. Each on a shop of its own, and read
// back by another command.
#include "tests/platform/tool.h"

#include <catch2/catch.hpp>

using namespace undercowl::tests;
using Catch::Contains;
using nlohmann::json;

namespace {

class Shop {
public:
    Shop() { REQUIRE(ctl("demo --only-shop" + in()).exit == 0); }

    [[nodiscard]] std::string in() const { return " --store '" + (scratch_ / "shop") + "' "; }
    [[nodiscard]] Ran say(const std::string& arguments) const { return ctl(arguments + in()); }
    // The first of the job's proofs in that state.
    [[nodiscard]] json proof(const std::string& job, const std::string& state,
                             const std::string& kind = {}) const {
        const json all = say("job proofs " + job + " --json").json();
        for (const json& each : all.at("proofs"))
            if (each.at("state") == state && (kind.empty() || each.at("kind") == kind))
                return each;
        return nullptr;
    }
    [[nodiscard]] json numbered(const std::string& job, int number) const {
        return say("job proofs " + job + " --json")
            .json()
            .at("proofs")
            .at(static_cast<std::size_t>(number) - 1);
    }

private:
    Scratch scratch_;
};

} // namespace

TEST_CASE("a proof is said to be done, with how, and to be left out, with why") {
    const Shop shop;
    const json open = shop.proof("2026-030", "open");
    REQUIRE(open.is_object());
    const std::string number = std::to_string(open.at("number").get<int>());
    const Ran proved = shop.say("job prove 2026-030 " + number + " --how 'turned and listened'");
    INFO(proved.err);
    CHECK(proved.exit == 0);
    CHECK_THAT(proved.out, Contains("proved: " + open.at("what").get<std::string>()));
    CHECK(shop.numbered("2026-030", open.at("number")).at("state") == "proved");
    CHECK(shop.numbered("2026-030", open.at("number")).at("note") == "turned and listened");
    const json next = shop.proof("2026-030", "open");
    REQUIRE(next.is_object());
    const Ran left = shop.say("job prove 2026-030 '" + next.at("what").get<std::string>() +
                              "' --left-out 'rain, tomorrow' --json");
    CHECK(left.exit == 0);
    CHECK(left.json().at("state") == "left out");
    CHECK(shop.numbered("2026-030", next.at("number")).at("note") == "rain, tomorrow");
    CHECK(shop.say("job prove 2026-030 " + number + " --how x --left-out y").exit == 2);
}

TEST_CASE("a torque is proved by its reading, and not by one outside its limits") {
    const Shop shop;
    const json torque = shop.proof("2026-030", "open", "torque");
    REQUIRE(torque.is_object());
    const std::string number = std::to_string(torque.at("number").get<int>());
    // Said by a touch it is not, and within limits that do not hold its torque it is not either.
    CHECK(shop.say("job prove 2026-030 " + number).exit == 2);
    const Ran other = shop.say("job prove 2026-030 " + number +
                               " --reading '60 N.m' --low '55 N.m' --high 65 --uncertainty '2 N.m'");
    CHECK(other.exit == 1);
    CHECK(shop.numbered("2026-030", torque.at("number")).at("state") == "open");
    // Without limits it is held against the step.
    const Ran plain =
        shop.say("job prove 2026-030 " + number + " --reading '60 N.m' --instrument torque-wrench-100");
    CHECK(plain.exit == 1);
    CHECK_THAT(plain.out, Contains("outside"));
    const Ran outside = shop.say("job prove 2026-030 " + number +
                                 " --reading '40 N.m' --low '75 N.m' --high 85 --uncertainty '2 N.m'");
    INFO(outside.err);
    CHECK(outside.exit == 1);
    CHECK_THAT(outside.out, Contains("open: ") && Contains("outside"));
    CHECK(shop.numbered("2026-030", torque.at("number")).at("state") == "open");
    const Ran within = shop.say("job prove 2026-030 " + number +
                                " --reading '80 N.m' --low '75 N.m' --high 85 --uncertainty '2 N.m'");
    CHECK(within.exit == 0);
    CHECK(shop.numbered("2026-030", torque.at("number")).at("state") == "proved");
    const auto readings = shop.say("job show 2026-030 --json").json().at("readings");
    const auto& last = readings.at(readings.size() - 1);
    CHECK(last.at("value") == "80");
    CHECK(last.at("high").dump().find("N.m") != std::string::npos); // the unit of the reading
    CHECK(last.at("verdict") == "within");
    CHECK(shop.say("job prove 2026-030 " + number + " --reading '60 furlongs'").exit == 2);
    CHECK(shop.say("job prove 2026-030 " + number + " --reading 60 --low '55 N.m'").exit == 2);
}

TEST_CASE("a second pair of eyes signs, and words that name several proofs are asked again") {
    const Shop shop;
    const json wheel = shop.proof("2026-030", "open", "torque");
    const std::string number = std::to_string(wheel.at("number").get<int>());
    CHECK(shop.say("job prove 2026-030 " + number + " --seen-by Tove").exit == 0);
    CHECK(shop.numbered("2026-030", wheel.at("number")).at("second_eyes") == "Tove");
    CHECK(shop.numbered("2026-030", wheel.at("number")).at("state") == "open"); // it proves nothing by itself
    const Ran many = shop.say("job prove 2026-030 e --how looked");
    CHECK(many.exit == 2);
    CHECK_THAT(many.err, Contains("more than one proof") && Contains("\n   1 "));
    CHECK_THAT(shop.say("job prove 2026-030 99 --how looked").err, Contains("names no proof"));
}

TEST_CASE("a round is begun and its checks are ticked: fine, finding with severity, not done") {
    const Shop shop;
    const Ran begun = shop.say("job round 2026-032 --has automatic --json");
    INFO(begun.err);
    REQUIRE(begun.exit == 0);
    CHECK(begun.json().at("checks").get<int>() > 5);
    CHECK(shop.say("job round 2026-032 --has wings").exit == 2);
    const auto rounds = shop.say("job rounds 2026-032 --json").json().at("rounds");
    const auto& checks = rounds.at(rounds.size() - 1).at("checks");
    const auto number = [&](std::size_t at) { return std::to_string(checks.at(at).at("number").get<int>()); };
    CHECK(shop.say("job check 2026-032 " + number(0) + " fine").exit == 0);
    CHECK(shop.say("job check 2026-032 " + number(1) + " 'not done' --note 'no light'").exit == 0);
    const Ran bare = shop.say("job check 2026-032 " + number(2) + " finding --note cracked");
    CHECK(bare.exit == 2);
    CHECK_THAT(bare.err, Contains("--severity"));
    const Ran found = shop.say("job check 2026-032 " + number(2) +
                               " finding --note 'cracked to the cords' --severity unsafe --to-do 'new tyre' "
                               "--minutes 45 --json");
    CHECK(found.exit == 0);
    const auto after = shop.say("job rounds 2026-032 --json").json().at("rounds");
    const auto& ticked = after.at(after.size() - 1).at("checks");
    CHECK(ticked.at(0).at("answer") == "fine");
    CHECK(ticked.at(1).at("answer") == "not done");
    CHECK(ticked.at(1).at("note") == "no light");
    CHECK(ticked.at(2).at("finding") == found.json().at("finding"));
    CHECK_THAT(shop.say("job show 2026-032").out,
               Contains("open   unsafe: cracked to the cords; to do: new tyre"));
    CHECK(shop.say("job check 2026-032 " + number(3) + " perhaps").exit == 2);
    CHECK(shop.say("job check 2026-032 " + number(3) + " fine --severity soon").exit == 2);
}

TEST_CASE("terms, lines of the bill and the owner's word are said") {
    const Shop shop;
    REQUIRE(shop.say("job cost 2026-032").exit == 1);
    CHECK_THAT(shop.say("job charge 2026-032 'tyre fitted outside' 12,50").err, Contains("job terms"));
    CHECK(shop.say("job terms 2026-032 --rate 54").exit == 2);
    CHECK(shop.say("job terms 2026-032 --currency euro").exit == 2);
    CHECK(shop.say("job terms 2026-032 --currency eur --rate cheap").exit == 2);
    REQUIRE(shop.say("job terms 2026-032 --currency eur --tax 19").exit == 0);
    const auto before = shop.say("job cost 2026-032 --json").json().at("cost");
    const Ran line = shop.say("job charge 2026-032 'tyre fitted outside' 12,50 --json");
    CHECK(line.exit == 0);
    const auto cost = line.json().at("cost");
    CHECK(cost.at("currency") == "EUR");
    CHECK(std::stod(cost.at("net").get<std::string>()) ==
          Approx(std::stod(before.at("net").get<std::string>()) + 12.5));
    CHECK(shop.say("job charge 2026-032 'tyre fitted outside' much").exit == 2);
    CHECK(shop.say("job charge 2026-032 tyre --drop").exit == 0);
    CHECK(shop.say("job cost 2026-032 --json").json().at("cost").at("net") == before.at("net"));

    const Ran word =
        shop.say("job approve 2026-032 'front tyre' --sum '64.90' --how called --from 'Wim Aalders' --json");
    INFO(word.err);
    CHECK(word.exit == 0);
    CHECK(word.json().at("sum") == "64.90 EUR"); // the currency of the terms
    CHECK(word.json().at("given") == true);
    const auto shown = shop.say("job show 2026-032 --json").json().at("approvals");
    CHECK(shown.at(shown.size() - 1).at("by") == "Wim Aalders");
    CHECK(shop.say("job approve 2026-032 'front tyre' --how dreamt").exit == 2);
    CHECK(shop.say("job approve 2026-032 'front tyre' --how wrote --sum 'much EUR'").exit == 2);
    CHECK(shop.say("job approve 2026-032 'rear tyre' --how wrote --refused --json").json().at("given") ==
          false);
}
