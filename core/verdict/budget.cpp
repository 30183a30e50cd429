#include "core/verdict/budget.h"

#include "core/units/format.h"

#include <cmath>

namespace undercowl::verdict {

double divisor(Distribution distribution) {
    switch (distribution) {
    case Distribution::Rectangular: return std::sqrt(3.0);
    case Distribution::Triangular: return std::sqrt(6.0);
    case Distribution::Normal: return 2;
    case Distribution::Standard: break;
    }
    return 1;
}

std::string_view englishName(Distribution distribution) {
    switch (distribution) {
    case Distribution::Rectangular: return "rectangular";
    case Distribution::Triangular: return "triangular";
    case Distribution::Normal: return "normal, k = 2";
    case Distribution::Standard: break;
    }
    return "standard";
}

double Contribution::standard() const {
    return halfWidth / divisor(distribution);
}

double Budget::combined() const {
    double squares = 0;
    for (const Contribution& line : lines)
        squares += line.standard() * line.standard();
    return std::sqrt(squares);
}

std::vector<std::string> Budget::working() const {
    using units::format;
    std::vector<std::string> text;
    for (const Contribution& line : lines) {
        std::string row = line.what + ": " + format({line.halfWidth, unit}) + ", ";
        row += englishName(line.distribution);
        if (line.distribution != Distribution::Standard)
            row += ": divided by " + units::formatSignificant(divisor(line.distribution)) +
                   " gives u = " + format({line.standard(), unit});
        text.push_back(std::move(row));
    }
    text.push_back("combined standard uncertainty u = root of the sum of squares = " + format(standard()));
    text.push_back("expanded uncertainty U = 2 u = " + format(expanded()) + " (k = 2, about 95 %)");
    return text;
}

} // namespace undercowl::verdict
