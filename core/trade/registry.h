// All calculations of the trade, by name.
#pragma once

#include "core/trade/declaration.h"
#include "core/trade/given.h"
#include "core/trade/result.h"

#include <map>
#include <string>
#include <string_view>
#include <vector>

namespace undercowl::trade {

struct Calculation {
    Declaration declaration;
    // Pure: the same inputs give the same outcome.
    Outcome (*work)(const Declaration& declaration, const Given& given);
};

// In alphabetical order. Lives as long as the program.
[[nodiscard]] const std::vector<Calculation>& calculations();
[[nodiscard]] const Calculation* findCalculation(std::string_view name);

// Reads the inputs as typed and works out the result. TODAY fills a date that defaults to it.
[[nodiscard]] Outcome run(const Calculation& calculation, const std::map<std::string, std::string>& typed,
                          units::Date today);

} // namespace undercowl::trade
