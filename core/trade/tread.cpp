#include "core/trade/calculations.h"

#include <fmt/format.h>

#include <array>
#include <optional>

namespace undercowl::trade {
namespace {

using units::Dimension;

struct Law {
    std::string_view country;
    std::string_view vehicle;
    std::optional<double> millimetres;
    std::string_view law;
    std::string_view condition;
};

constexpr std::array laws{
    Law{"UK", "motorcycle", 1.0, "Road Vehicles (Construction and Use) Regulations 1986 reg. 27",
        "across three quarters of the breadth, all round; pattern visible on the rest"},
    Law{"UK", "moped", std::nullopt, "Road Vehicles (Construction and Use) Regulations 1986 reg. 27",
        "up to 50 cc: every original groove must show"},
    Law{"DE", "motorcycle", 1.6, "StVZO section 36", "main grooves in the middle three quarters"},
    Law{"DE", "moped", 1.0, "StVZO section 36", "mopeds, small and light motorcycles"},
    Law{"AT", "motorcycle", 1.6, "KDV 1967 section 4(4)", "middle three quarters"},
    Law{"AT", "moped", 1.0, "KDV 1967 section 4(4)", "mopeds"},
    Law{"US", "motorcycle", 0.8, "49 CFR 571.119 (FMVSS 119) S6.4",
        "treadwear indicator at 1/32 in: a making standard, not a roadside limit; states have their own"},
    Law{"US-MD", "motorcycle", 0.79375, "COMAR 11.14.03.05 (Maryland)", "reject below 1/32 in"},
};

Outcome work(const Declaration& declaration, const Given& given) {
    const Law* law = nullptr;
    for (const Law& candidate : laws)
        if (candidate.country == given.text("country") && candidate.vehicle == given.text("class"))
            law = &candidate;
    if (law == nullptr)
        return given.problem("class", "has no rule on file for " + given.text("country"),
                             "motorcycle, or another country");
    Result result(declaration);
    result.put("law", std::string(law->law));
    result.say(std::string(law->law) + ": " + std::string(law->condition));
    if (!law->millimetres) {
        result.put("limit", std::string("pattern visible"));
        result.warn("no depth is laid down: look whether every original groove shows");
        return result;
    }
    result.put("limit", *law->millimetres, 5);
    verdict::Limits limits;
    limits.low = units::Quantity{*law->millimetres, units::unit(Dimension::Length, "mm")};
    limits.source = {verdict::Trust::Standard, std::string(law->law)};
    result.judge(given, given.quantity("depth"), limits);
    return result;
}

} // namespace

Calculation tread() {
    Declaration d;
    d.name = "tread";
    d.title = "Tread depth";
    d.purpose = "Whether the tread is deep enough for the law of a place.";
    d.formula = {"depth against the legal minimum, with the uncertainty of the gauge"};
    d.inputs = {
        quantity("depth", "Depth", Dimension::Length, "mm",
                 "at the most worn place of the middle three quarters")
            .range(0, 20),
        choice("country", "Country",
               {{"UK", "United Kingdom"},
                {"DE", "Germany"},
                {"AT", "Austria"},
                {"US", "United States, federal"},
                {"US-MD", "Maryland"}},
               "whose law applies"),
        choice("class", "Class", {{"motorcycle", "motorcycle"}, {"moped", "moped"}}, "as in the papers")
            .withDefault("motorcycle"),
        uncertainty(Dimension::Length, "mm", "0.1")};
    d.outputs = {quantityOut("limit", "Limit", Dimension::Length, "mm"), textOut("law", "Law")};
    d.givesVerdict = true;
    d.sources = {"UK: Road Vehicles (Construction and Use) Regulations 1986 reg. 27", "DE: StVZO section 36",
                 "AT: KDV 1967 section 4(4)", "US: 49 CFR 571.119 (FMVSS 119) S6.4; COMAR 11.14.03.05"};
    d.cautions = {"limits differ by country, class and day: the law of the place applies",
                  "a legal tyre can be worn out: the maker's limit is often higher"};
    d.validity = {"a digital or sliding depth gauge without a better figure is taken to be good to 0.1 mm"};
    d.example = {{{"depth", "2.1 mm"}, {"country", "DE"}, {"class", "motorcycle"}},
                 {{"limit", "1.6"}, {"verdict", "within"}}};
    return {d, work};
}

} // namespace undercowl::trade
