#include "core/units/unit.h"

#include "core/units/spelling.h"
#include "core/units/unit_table.h"

#include <array>
#include <cstddef>
#include <cstdio>
#include <cstdlib>
#include <deque>

namespace undercowl::units {
namespace {

constexpr std::array<std::string_view, dimensionCount> dimensionNames{"number",
                                                                      "torque",
                                                                      "energy",
                                                                      "force",
                                                                      "gauge pressure",
                                                                      "absolute pressure",
                                                                      "pressure difference",
                                                                      "stress",
                                                                      "length",
                                                                      "area",
                                                                      "volume",
                                                                      "mass",
                                                                      "density",
                                                                      "speed",
                                                                      "rotational speed",
                                                                      "power",
                                                                      "consumption",
                                                                      "temperature",
                                                                      "temperature difference",
                                                                      "time",
                                                                      "angle",
                                                                      "voltage",
                                                                      "current",
                                                                      "resistance",
                                                                      "electric charge"};

struct Spelling {
    std::string exact;
    std::string folded;
    Unit unit;
};

struct Table {
    std::deque<UnitEntry> entries = makeUnitTable();
    std::array<std::vector<Unit>, dimensionCount> byDimension;
    std::array<std::vector<Spelling>, dimensionCount> spellings;

    Table() {
        for (const UnitEntry& entry : entries) {
            const auto index = static_cast<std::size_t>(entry.dimension);
            const Unit unit{entry};
            byDimension.at(index).push_back(unit);
            const auto spell = [&](const std::string& text) {
                const std::string exact = compactSpelling(text);
                spellings.at(index).push_back({exact, foldedSpelling(exact), unit});
            };
            spell(entry.symbol);
            for (const std::string& alias : entry.aliases)
                spell(alias);
        }
    }
};

const Table& table() {
    static const Table instance;
    return instance;
}

// A megapascal is not a millipascal: a small m must not be read as mega.
bool caseChangesMeaning(const std::string& written, const Spelling& spelling) {
    return spelling.exact.size() > 1 && spelling.exact.front() == 'M' && written.front() == 'm' &&
           spelling.unit.symbol().front() == 'M';
}

std::optional<Unit> search(const std::string& compact, Dimension dimension) {
    const auto& spellings = table().spellings.at(static_cast<std::size_t>(dimension));
    for (const Spelling& spelling : spellings)
        if (spelling.exact == compact)
            return spelling.unit;
    const std::string folded = foldedSpelling(compact);
    std::optional<Unit> found;
    for (const Spelling& spelling : spellings) {
        if (spelling.folded != folded || caseChangesMeaning(compact, spelling))
            continue;
        if (found && !(*found == spelling.unit))
            return std::nullopt;
        found = spelling.unit;
    }
    return found;
}

} // namespace

std::string_view englishName(Dimension dimension) {
    return dimensionNames.at(static_cast<std::size_t>(dimension));
}

Dimension intervalOf(Dimension dimension) {
    switch (dimension) {
    case Dimension::GaugePressure:
    case Dimension::AbsolutePressure: return Dimension::PressureDifference;
    case Dimension::Temperature: return Dimension::TemperatureDifference;
    default: return dimension;
    }
}

Unit::Unit() : entry_(&unitsOf(Dimension::Number).front().entry()) {}

const std::vector<Unit>& unitsOf(Dimension dimension) {
    return table().byDimension.at(static_cast<std::size_t>(dimension));
}

Unit baseUnit(Dimension dimension) {
    return unitsOf(dimension).front();
}

std::optional<Unit> findUnit(std::string_view text, Dimension dimension) {
    return search(compactSpelling(text), dimension);
}

std::vector<Unit> findUnits(std::string_view text) {
    std::vector<Unit> found;
    for (int index = 0; index < dimensionCount; ++index)
        if (const auto unit = findUnit(text, static_cast<Dimension>(index)))
            found.push_back(*unit);
    return found;
}

Unit unit(Dimension dimension, std::string_view symbol) {
    for (const Unit candidate : unitsOf(dimension))
        if (candidate.symbol() == symbol)
            return candidate;
    std::fprintf(stderr, "no unit %.*s in %s\n", static_cast<int>(symbol.size()), symbol.data(),
                 std::string(englishName(dimension)).c_str());
    std::abort();
}

std::string symbolsOf(Dimension dimension) {
    std::string list;
    for (const Unit candidate : unitsOf(dimension))
        list.append(list.empty() ? "" : ", ").append(candidate.symbol());
    return list;
}

std::optional<std::string> knownAmbiguity(std::string_view text) {
    const std::string folded = foldedSpelling(compactSpelling(text));
    struct Trap {
        std::string_view folded;
        std::string_view answer;
    };
    static constexpr std::array traps{
        Trap{"gal", "write US gal or imp gal: they differ by a fifth"},
        Trap{"gallon", "write US gal or imp gal: they differ by a fifth"},
        Trap{"gallons", "write US gal or imp gal: they differ by a fifth"},
        Trap{"pt", "write US pt or imp pt: they differ by a fifth"},
        Trap{"pint", "write US pt or imp pt: they differ by a fifth"},
        Trap{"pints", "write US pt or imp pt: they differ by a fifth"},
        Trap{"floz", "write US fl oz or imp fl oz: they are not the same"},
        Trap{"mpg", "write mpg(US) or mpg(imp): they differ by a fifth"},
        Trap{"mohm", "write mohm for milliohm or Mohm for megaohm"},
    };
    for (const Trap& trap : traps)
        if (trap.folded == folded)
            return std::string(trap.answer);
    return std::nullopt;
}

} // namespace undercowl::units
