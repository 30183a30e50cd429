// The documentation page of a calculation, made from its declaration.
#pragma once

#include "core/trade/registry.h"

#include <string>

namespace undercowl::trade {

// Markdown: purpose, formula, inputs, results, validity, sources, cautions, and the worked example as it runs
// now.
[[nodiscard]] std::string page(const Calculation& calculation);

// The list of all pages.
[[nodiscard]] std::string indexPage();

// The date on which the examples are run.
[[nodiscard]] units::Date exampleDay();

} // namespace undercowl::trade
