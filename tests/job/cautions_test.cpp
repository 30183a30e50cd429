#include "core/job/cautions.h"
#include "core/job/needs.h"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace undercowl::job;

// Common practice, no source.
TEST_CASE("The words of a step's title bring the usual cautions") {
    CHECK(cautionsFor("Unplug 6-place connector") == std::vector<std::string>{"battery-negative-off"});
    const auto brake = cautionsFor("Front BRAKE caliper off");
    CHECK(brake == std::vector<std::string>{"brake-dust", "brake-fluid", "brake-proof"});
    CHECK(cautionsFor("left mirror off").empty());
}

TEST_CASE("Every caution that a title can bring has its sentence") {
    for (const char* title : {"battery", "tank", "rear wheel", "spark plug", "silencer", "clutch cover"})
        for (const std::string& key : cautionsFor(title))
            CHECK_FALSE(englishCaution(key).empty());
    CHECK(englishCaution("nonsense").empty());
    CHECK(cautions().size() >= 10);
}

TEST_CASE("a step named in another language has the cautions and the bans of its English name") {
    const auto has = [](const char* title, std::string_view key) {
        const auto keys = cautionsFor(title);
        return std::find(keys.begin(), keys.end(), key) != keys.end();
    };
    for (const char* title : {"Bremssattel vorn abnehmen", "smontare la pinza del freno",
                              "déposer l'étrier de frein", "quitar la pinza de freno"}) {
        INFO(title);
        CHECK(has(title, "brake-fluid"));
        CHECK(has(title, "brake-proof"));
        CHECK(suggestedNeeds(title, {}).doNotRide);
    }
    for (const char* title : {"6-poligen Stecker abziehen", "staccare il connettore a 6 vie",
                              "débrancher le connecteur à 6 voies", "soltar el conector de 6 vías"}) {
        INFO(title);
        CHECK(has(title, "battery-negative-off"));
    }
    for (const char* title :
         {"Vorderrad ausbauen", "togliere la ruota", "déposer la roue", "sacar la rueda"}) {
        INFO(title);
        CHECK(has(title, "strap-on-lift"));
        CHECK(suggestedNeeds(title, {}).doNotRide);
    }
    CHECK(cautionsFor("Spiegel links ab").empty());
    CHECK(cautionsFor("specchio sinistro").empty());
    CHECK(cautionsFor("rétroviseur gauche").empty());
    CHECK(cautionsFor("espejo izquierdo").empty());
}
