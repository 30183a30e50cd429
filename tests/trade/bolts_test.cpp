#include "core/trade/threads.h"
#include "tests/trade/running.h"

#include <cmath>
#include <numbers>

using namespace undercowl::trade;
using std::numbers::pi;
using undercowl::reference::highRows;
using undercowl::reference::Row;

// Source: ISO 898-1:2013 tables 3, 4 and 5.
TEST_CASE("Stress areas and proof loads are those of ISO 898-1") {
    for (const Row& row : highRows("iso898_fasteners.csv", "thread_class")) {
        INFO(row.name());
        const auto thread = parseThread(row["designation"]);
        REQUIRE(thread);
        CHECK(thread->pitch == row.number("pitch_mm"));
        CHECK(stressArea(*thread) == Approx(row.number("as_calc_mm2")).margin(0.0006));
        CHECK(nominalStressArea(*thread) == Approx(row.number("as_nom_mm2")));
        const auto grade = propertyClass(row["property_class"]);
        REQUIRE(grade);
        CHECK(grade->proofStress == row.number("sp_mpa"));
        CHECK(grade->tensile == row.number("rm_min_mpa"));
        CHECK(proofLoad(*thread, *grade) == row.number("proof_load_table_n"));
        CHECK(std::round(nominalStressArea(*thread) * grade->proofStress) ==
              Approx(row.number("proof_load_calc_n")).margin(1));
    }
}

// Source: ISO 898-1:2013 clause 9.1.6 with ISO 724; Machinery's Handbook; Shigley & Mischke; Bickford 1990;
// VDI 2230-1.
TEST_CASE("The published bolt formulas are the ones that are worked with") {
    CHECK(highRows("iso898_fasteners.csv", "formula").size() == 2);
    for (const Row& row : highRows("torque_friction.csv", "formula"))
        CHECK_FALSE(row["condition"].empty());
    const Thread m8{8, 1.25, true};
    const double d3 = 8 - 1.226869 * 1.25;
    CHECK(stressArea(m8) == Approx(pi / 4 * std::pow((pitchDiameter(m8) + d3) / 2, 2)));
    // Motosh (Bickford 1990) with effective radii: P/2pi + mu rt/cos 30 + mu rn.
    const double motosh =
        1.25 / (2 * pi) + 0.12 * pitchDiameter(m8) / 2 / std::cos(pi / 6) + 0.12 * 10.315 / 2;
    CHECK(nutFactor(m8, 0.12, 0.12, 10.315) * 8 == Approx(motosh));
    // The printed rounded constants of VDI 2230 agree to a third of a per cent.
    CHECK(nutFactor(m8, 0.12, 0.12, 10.315) * 8 ==
          Approx(0.159 * 1.25 + 0.577 * pitchDiameter(m8) * 0.12 + 10.315 / 2 * 0.12).epsilon(0.003));
}

// Sources: T = K d F and the VDI 2230 long form, each row's own.
TEST_CASE("Torque examples agree") {
    int checked = 0;
    for (const Row& row : highRows("torque_friction.csv", "worked_example")) {
        INFO(row.name());
        const std::string& words = row["condition"];
        const auto thread = parseThread(words.substr(0, words.find(' ')));
        if (row["case"] == "W8") {
            // ISO 16047 form, a second formula for the same bolt.
            const Thread m8{row.number("d_mm"), row.number("pitch_mm"), true};
            const double mu = row.number("mu_thread");
            const double d2 = pitchDiameter(m8);
            const double iso = row.number("preload_n") / 1000 *
                               (0.5 * (1.25 + 1.154 * pi * mu * d2) / (pi - 1.154 * mu * 1.25 / d2) +
                                row.number("mu_head") * row.number("dkm_mm") / 2);
            CHECK(iso == Approx(row.number("value")).margin(0.00006));
            CHECK(iso ==
                  Approx(nutFactor(m8, mu, mu, row.number("dkm_mm")) * 8 / 1000 * row.number("preload_n"))
                      .epsilon(0.01));
            ++checked;
            continue;
        }
        REQUIRE(thread);
        const std::string grade = words.substr(
            words.find(' ') + 1, words.find_first_of(", ", words.find(' ') + 1) - words.find(' ') - 1);
        if (row["case"] == "W7") {
            const Result preload = ran(
                "bolt-preload",
                {{"thread", "M8"}, {"class", "8.8"}, {"torque", "22 N.m"}, {"nut_factor", row["k_typical"]}});
            CHECK(number(preload, "preload") == Approx(row.number("preload_n")).margin(0.006));
            CHECK(100 * number(preload, "share_of_proof") == Approx(row.number("value")).margin(0.0006));
            ++checked;
            continue;
        }
        Typed typed{{"thread", words.substr(0, words.find(' '))},
                    {"class", grade == "8.8" || grade == "10.9" ? grade : grade.substr(0, 3)}};
        if (row.has("mu_thread")) {
            typed["friction"] = row["mu_thread"];
            typed["friction_head"] = row["mu_head"];
            typed["bearing_diameter"] = row["dkm_mm"];
            CHECK(pitchDiameter(*thread) == Approx(row.number("d2_mm")).margin(6e-7));
            CHECK(nutFactor(*thread, row.number("mu_thread"), row.number("mu_head"), row.number("dkm_mm")) ==
                  Approx(row.number("k_typical")).margin(6e-6));
        } else {
            typed["nut_factor"] = row["k_typical"];
        }
        const Result torque = ran("bolt-torque", typed);
        CHECK(number(torque, "preload") == Approx(row.number("preload_n")).margin(0.06));
        CHECK(number(torque, "torque") == Approx(row.number("value")).margin(0.00006));
        ++checked;
    }
    CHECK(checked == 8);
}

// Sources: Machinery's Handbook 31st ed. p. 1665; published bolt-torque table for SAE J429 grade 5; VDI 2230
// class limits.
TEST_CASE("Printed examples and friction classes agree") {
    for (const Row& row : highRows("torque_friction.csv", "published_example")) {
        INFO(row.name());
        const double d = row.number("d_mm");
        const double force = row.number("preload_n");
        const double torque =
            row.has("mu_thread")
                ? force / 1000 * (0.159 * row.number("pitch_mm") + 1.156 * row.number("mu_thread") * d)
                : row.number("k_max") * d / 1000 * force;
        CHECK(torque == Approx(row.number("value")).margin(0.0006));
    }
    for (const Row& row : highRows("torque_friction.csv", "k_from_class")) {
        INFO(row.name());
        const Thread m8{row.number("d_mm"), row.number("pitch_mm"), true};
        for (const auto& [mu, k] : {std::pair{"mu_min", "k_min"}, std::pair{"mu_max", "k_max"}})
            CHECK(nutFactor(m8, row.number(mu), row.number(mu), row.number("dkm_mm")) ==
                  Approx(row.number(k)).margin(0.00006));
    }
    // VDI 2230-1: the classes follow one another upward; their limits are what the input accepts.
    double before = 0;
    for (const Row& row : highRows("torque_friction.csv", "mu_class")) {
        CHECK(row.number("mu_min") > before);
        before = row.number("mu_min");
        CHECK_NOTHROW(ran("bolt-torque", {{"thread", "M8"}, {"class", "8.8"}, {"friction", row["mu_min"]}}));
    }
    CHECK(highRows("torque_friction.csv", "k_factor_conflict").size() == 1);
    bool said = false;
    for (const std::string& caution : findCalculation("bolt-torque")->declaration.cautions)
        said = said || caution.find("differ by up to half") != std::string::npos;
    CHECK(said);
    CHECK(findCalculation("bolt-torque")->declaration.cautions.front() == "worked out here: the manual wins");
}

// Sources: US Army TM 9-254; helicopter maintenance manual; metric fastener torque guide; the adapter
// formula.
TEST_CASE("Torque wrench adapters") {
    CHECK(highRows("torque_wrench.csv", "formula").front()["case"] == "adapter");
    for (const char* record : {"published_example", "worked_example"})
        for (const Row& row : highRows("torque_wrench.csv", record)) {
            INFO(row.name());
            const Result r = ran("torque-adapter", {{"torque", row["t_target_nm"]},
                                                    {"wrench_length", row["l_mm"]},
                                                    {"adapter_length", row["e_mm"]},
                                                    {"angle", row["angle_deg"]}});
            CHECK(number(r, "setting") == Approx(row.number("t_set_nm")).margin(0.00006));
            CHECK(number(r, "factor") == Approx(row.number("value")).margin(6e-7));
        }
}

TEST_CASE("A soft thread is held to the limit given") {
    const Typed typed{{"thread", "M8"},
                      {"class", "8.8"},
                      {"nut_factor", "0.15"},
                      {"thread_in", "aluminium"},
                      {"torque_limit", "12 N.m"}};
    const Result result = ran("bolt-torque", typed);
    CHECK(number(result, "torque") == 12);
    CHECK(number(result, "preload") == Approx(12 / (0.15 * 0.008)));
}

TEST_CASE("Bolts are tightened across, round or outward") {
    const auto order = [](int bolts, const std::string& pattern) {
        std::string text;
        const Result result =
            ran("tightening-order",
                {{"bolts", std::to_string(bolts)}, {"pattern", pattern}, {"torque", "10"}, {"stages", "1"}});
        for (const Step& step : std::get<std::vector<Step>>(result.find("steps")->value))
            text += std::to_string(std::get<int>(step.cells.front().second)) + " ";
        return text;
    };
    CHECK(order(4, "cross") == "1 3 2 4 ");
    CHECK(order(5, "cross") == "1 3 5 2 4 ");
    CHECK(order(8, "cross") == "1 5 3 7 2 6 4 8 ");
    CHECK(order(4, "circle") == "1 2 3 4 ");
    CHECK(order(5, "line") == "3 4 2 5 1 ");
    for (int bolts = 2; bolts <= 24; ++bolts)
        for (const char* pattern : {"cross", "circle", "line"}) {
            const Result result = ran(
                "tightening-order",
                {{"bolts", std::to_string(bolts)}, {"pattern", pattern}, {"torque", "10"}, {"stages", "1"}});
            std::vector<int> seen(static_cast<std::size_t>(bolts), 0);
            for (const Step& step : std::get<std::vector<Step>>(result.find("steps")->value))
                ++seen.at(static_cast<std::size_t>(std::get<int>(step.cells.front().second) - 1));
            CHECK(seen == std::vector<int>(static_cast<std::size_t>(bolts), 1));
        }
}

TEST_CASE("What a nut factor covers already is refused beside it") {
    for (const char* key : {"friction_head", "bearing_diameter"})
        CHECK(refused("bolt-torque", {{"thread", "M8"},
                                      {"class", "8.8"},
                                      {"nut_factor", "0.2"},
                                      {key, std::string(key) == "friction_head" ? "0.15" : "12"}})
                  .field == key);
}
