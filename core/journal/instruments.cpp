#include "core/journal/instruments.h"

#include "core/journal/force.h"

#include <algorithm>
#include <limits>
#include <tuple>

namespace undercowl::journal {
namespace {

constexpr double most = 1e9;

// A unit belongs to one dimension, but "kPa" is written for three: the dimension stands beside it.
units::Unit readUnit(const Fields& body) {
    const std::string measures = body.text("measures");
    for (int index = 0; index < units::dimensionCount; ++index) {
        const auto dimension = static_cast<units::Dimension>(index);
        if (units::englishName(dimension) != measures)
            continue;
        if (const auto unit = units::findUnit(body.text("unit"), dimension))
            return *unit;
        throw ShapeError("unit: '" + body.text("unit") + "' is no unit of " + measures);
    }
    throw ShapeError("measures: '" + measures + "' is not known");
}

double numberOr(const Fields& body, const char* name) {
    return body.has(name) ? body.number(name, 0, most) : 0;
}

std::optional<units::Date> dayOf(const Fields& body, const char* name) {
    if (!body.has(name))
        return std::nullopt;
    const auto date = units::parseDate(body.text(name));
    if (!date)
        throw ShapeError(std::string(name) + ": no date");
    return *date;
}

} // namespace

Draft instrumentKept(const KeptInstrument& kept) {
    const verdict::Instrument& instrument = kept.instrument;
    Json body{{"name", instrument.name},
              {"kind", verdict::code(instrument.kind)},
              {"measures", units::englishName(instrument.unit.dimension())},
              {"unit", instrument.unit.symbol()},
              {"low", instrument.rangeLow},
              {"high", instrument.rangeHigh},
              {"resolution", instrument.resolution}};
    const auto put = [&body](const char* name, double value) {
        if (value != 0)
            body[name] = value;
    };
    put("percent_of_reading", instrument.limit.percentOfReading);
    put("percent_of_range", instrument.limit.percentOfRange);
    put("digits", instrument.limit.digits);
    put("error", instrument.limit.absolute);
    put("feel", instrument.feel);
    if (!instrument.limitSource.empty())
        body["source"] = instrument.limitSource;
    if (instrument.calibrated)
        body["calibrated"] = units::formatDate(*instrument.calibrated);
    if (instrument.due)
        body["due"] = units::formatDate(*instrument.due);
    if (kept.retired)
        body["retired"] = true;
    return {"instrument.kept",
            std::string(shopStream),
            kept.id,
            body.dump(-1, ' ', false, Json::error_handler_t::replace),
            {}};
}

KeptInstrument readInstrument(const Id& id, const Fields& body) {
    KeptInstrument kept;
    kept.id = id;
    verdict::Instrument& instrument = kept.instrument;
    instrument.name = body.text("name");
    instrument.kind = body.word("kind", verdict::instrumentKind);
    instrument.unit = readUnit(body);
    instrument.rangeLow = body.number("low", -most, most);
    instrument.rangeHigh = body.number("high", -most, most);
    instrument.resolution = body.number("resolution", 0, most);
    instrument.limit = {numberOr(body, "percent_of_reading"), numberOr(body, "percent_of_range"),
                        numberOr(body, "digits"), numberOr(body, "error")};
    instrument.feel = numberOr(body, "feel");
    instrument.limitSource = body.textOr("source");
    instrument.calibrated = dayOf(body, "calibrated");
    instrument.due = dayOf(body, "due");
    if (body.has("retired")) {
        if (!body.child("retired").is_boolean())
            throw ShapeError("retired: must be true or false");
        kept.retired = body.child("retired").get<bool>();
    }
    if (const auto missing = verdict::whatIsMissing(instrument); !missing.empty())
        throw ShapeError(missing.front());
    return kept;
}

std::vector<KeptInstrument> foldInstruments(std::span<const Entry> entries) {
    std::vector<KeptInstrument> all;
    for (const InForce& entry : inForce(shopStream, entries).effects) {
        if (entry.last->kind != "instrument.kept" || entry.last->redacted)
            continue;
        const Json body = Json::parse(entry.last->body, nullptr, false);
        if (body.is_discarded())
            continue;
        try {
            KeptInstrument kept = readInstrument(entry.last->subject, Fields(body));
            std::erase_if(all, [&](const KeptInstrument& old) { return old.id == kept.id; });
            all.push_back(std::move(kept));
        } catch (const ShapeError&) {
            continue; // unreadable: said nothing
        }
    }
    std::ranges::sort(all, {},
                      [](const KeptInstrument& kept) { return std::tie(kept.instrument.name, kept.id); });
    return all;
}

const verdict::Instrument* instrumentNamed(std::span<const KeptInstrument> kept, std::string_view name,
                                           units::Dimension dimension) {
    for (const KeptInstrument& one : kept)
        if (!one.retired && one.instrument.name == name && one.instrument.unit.dimension() == dimension)
            return &one.instrument;
    return nullptr;
}

} // namespace undercowl::journal
