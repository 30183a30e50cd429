#include "qml/measure/measuring.h"

#include "core/job/quantity.h"
#include "core/job/torque.h"
#include "core/units/format.h"
#include "core/units/parse.h"
#include "core/verdict/words.h"
#include "qml/measure/course.h"
#include "qml/shell/words.h"

#include <QCoreApplication>

#include <algorithm>
#include <array>
#include <cmath>
#include <set>

namespace undercowl::ui {

namespace {

using units::Dimension;

struct Choice {
    Dimension dimension;
    const char* symbol;
};

// Units of one quantity stand together: the toggle goes through them.
constexpr std::array choices{
    Choice{Dimension::Torque, "N.m"},        Choice{Dimension::Torque, "lbf.ft"},
    Choice{Dimension::Torque, "kgf.m"},      Choice{Dimension::GaugePressure, "bar"},
    Choice{Dimension::GaugePressure, "psi"}, Choice{Dimension::GaugePressure, "kPa"},
    Choice{Dimension::Length, "mm"},         Choice{Dimension::Length, "in"},
    Choice{Dimension::Voltage, "V"},         Choice{Dimension::Current, "A"},
    Choice{Dimension::Resistance, "ohm"},    Choice{Dimension::Temperature, "degC"},
    Choice{Dimension::Temperature, "degF"},  Choice{Dimension::RotationalSpeed, "rpm"},
    Choice{Dimension::Volume, "mL"},         Choice{Dimension::Number, "1"}};

constexpr int count = static_cast<int>(choices.size());

struct Said {
    Q_DECLARE_TR_FUNCTIONS(Measuring)
};

std::optional<units::Typed> number(const QString& words, const char* field, QVariantMap& errors) {
    const auto read = units::parseNumber(utf8(words), units::Comma::Decimal);
    if (read)
        return *read;
    errors[QLatin1String(field)] =
        words.isEmpty() ? Said::tr("Type the value on the keypad.") : coreWords(read.error().message);
    return std::nullopt;
}

job::TypedValue typedIn(const units::Typed& typed, const units::Unit& unit) {
    std::string digits = typed.text;
    std::replace(digits.begin(), digits.end(), ',', '.');
    return {std::move(digits), utf8(unitText(unit))};
}

// A mean has no more digits than the instrument, or the finest of its readings, gives.
std::string meanDigits(const units::Quantity& mean, double step) {
    std::string words = units::formatToStep(mean, step);
    if (const auto blank = words.find(' '); blank != std::string::npos)
        words.resize(blank);
    return words;
}

void readLimits(const FormDraft& draft, units::Unit valueUnit, Measuring& measuring) {
    const QVariantMap values = draft.values();
    const QString unitName = QStringLiteral("limitUnit");
    const units::Unit unit =
        values.contains(unitName) ? measuredUnit(values.value(unitName).toInt()) : valueUnit;
    verdict::Limits limits;
    const auto side = [&](const char* name, std::optional<units::Quantity>& quantity,
                          std::optional<job::TypedValue>& typed) {
        const QString words = draft.text(QLatin1String(name)).trimmed();
        if (words.isEmpty())
            return;
        if (const auto read = number(words, name, measuring.errors)) {
            quantity = units::Quantity{read->value, unit};
            typed = typedIn(*read, unit);
        }
    };
    side("low", limits.low, measuring.reading.low);
    side("high", limits.high, measuring.reading.high);
    if (!limits.low && !limits.high)
        return;
    if (limits.low && limits.high && limits.low->base() > limits.high->base()) {
        const QString crossed =
            Said::tr("\"At least\" %1 is above \"At most\" %2, so that no value fits: change one of the two.")
                .arg(withUnit(*measuring.reading.low), withUnit(*measuring.reading.high));
        measuring.errors[QStringLiteral("low")] = crossed;
        measuring.errors[QStringLiteral("high")] = crossed;
    }
    const int trust = values.value(QStringLiteral("trust"), -1).toInt();
    if (trust < 0) {
        measuring.errors[QStringLiteral("trust")] = Said::tr("Say where the limits come from.");
    } else {
        limits.source = {static_cast<verdict::Trust>(std::min(trust, 3)),
                         utf8(draft.text(QStringLiteral("reference")))};
        measuring.reading.limitSource = limits.source.text();
    }
    measuring.limits = limits;
}

void takeTorque(const job::Hardware& piece, Measuring& measuring) {
    const auto around = job::torqueLimits(piece);
    const std::string& unit = piece.torque->unit;
    measuring.reading.low = job::TypedValue{around.low, unit};
    measuring.reading.high = job::TypedValue{around.high, unit};
    measuring.reading.limitSource = around.limits.source.text();
    measuring.limits = around.limits;
    measuring.rule = verdict::targetRule;
    measuring.errors.remove(QStringLiteral("trust"));
}

// "manual, page 7-12" as trust and reference. What was written in other words is trusted least and kept as
// written.
void takeSource(const std::string& source, QVariantMap& values) {
    if (source.empty())
        return;
    for (int trust = 0; trust < 4; ++trust) {
        const std::string name(verdict::englishName(static_cast<verdict::Trust>(trust)));
        if (source != name && !source.starts_with(name + ", "))
            continue;
        values[QStringLiteral("trust")] = trust;
        if (source.size() > name.size() + 2)
            values[QStringLiteral("reference")] = text(source.substr(name.size() + 2));
        return;
    }
    const bool ours = source == "shop's own record";
    values[QStringLiteral("trust")] =
        static_cast<int>(ours ? verdict::Trust::ShopRecord : verdict::Trust::WorkedOutHere);
    if (!ours)
        values[QStringLiteral("reference")] = text(source);
}

} // namespace

QStringList measuredUnits() {
    QStringList all;
    for (const Choice& choice : choices)
        all += choice.dimension == Dimension::Number ? Said::tr("plain number")
                                                     : QString::fromLatin1(choice.symbol);
    return all;
}

units::Unit measuredUnit(int index) {
    const Choice& choice = choices.at(static_cast<std::size_t>(std::clamp(index, 0, count - 1)));
    return units::findUnit(choice.symbol, choice.dimension).value_or(units::baseUnit(choice.dimension));
}

int measuredUnitIndex(const std::string& symbol) {
    for (int i = 0; i < count; ++i)
        if (utf8(unitText(measuredUnit(i))) == symbol ||
            choices.at(static_cast<std::size_t>(i)).symbol == symbol)
            return i;
    return -1;
}

int unitMeant(const QString& what, const QJsonObject& memory) {
    const auto dimension = job::dimensionMeant(utf8(what));
    const int last = memory[u"unit"].toInt();
    if (!dimension)
        return what.isEmpty() || memory[u"what"].toString() == what ? last : -1;
    const auto of = [&](int index) { return measuredUnit(index).dimension() == *dimension; };
    const auto each = memory[u"units"].toObject()[text(units::englishName(*dimension))];
    if (each.isDouble() && of(each.toInt()))
        return each.toInt();
    for (int i = 0; i < count; ++i)
        if (of(i))
            return i;
    return -1;
}

int plainNumber() {
    return measuredUnitIndex("1");
}

int nextUnitAlike(int index) {
    const auto at = [](int i) { return choices.at(static_cast<std::size_t>(i)).dimension; };
    const int here = std::clamp(index, 0, count - 1);
    for (int step = 1; step <= count; ++step)
        if (at((here + step) % count) == at(here))
            return (here + step) % count;
    return here;
}

QString unitText(const units::Unit& unit) {
    return unit.dimension() == Dimension::Number ? QString() : text(unit.symbol());
}

std::vector<Fitting> fittingInstruments(std::span<const journal::KeptInstrument> kept,
                                        const units::Unit& unit) {
    std::vector<Fitting> all;
    for (const journal::KeptInstrument& one : kept)
        if (!one.retired && one.instrument.unit.dimension() == unit.dimension())
            all.push_back({one.instrument, true});
    for (const verdict::Instrument& one : verdict::ordinaryInstruments())
        if (one.unit.dimension() == unit.dimension() &&
            journal::instrumentNamed(kept, one.name, unit.dimension()) == nullptr)
            all.push_back({one, false});
    return all;
}

Measuring measuringFrom(const FormDraft& draft, const std::string& about, std::span<const Fitting> fitting,
                        units::Unit unit, const QString& instrument, const job::Hardware* piece) {
    Measuring measuring;
    job::Reading& reading = measuring.reading;
    reading.about = about;
    reading.what = utf8(draft.text(QStringLiteral("what")));
    if (reading.what.empty())
        measuring.errors[QStringLiteral("what")] =
            Said::tr("Type what was measured, such as \"rear axle nut, torque\".");
    QStringList typed = draft.values().value(QStringLiteral("readings")).toStringList();
    const QString now = draft.text(QStringLiteral("value")).trimmed();
    if (!now.isEmpty() || typed.isEmpty())
        typed += now;
    for (const QString& words : typed)
        if (const auto read = number(words, "value", measuring.errors)) {
            measuring.values.emplace_back(units::Quantity{read->value, unit});
            reading.value = typedIn(*read, unit);
            reading.repeated.push_back(reading.value.digits);
        }
    if (reading.repeated.size() < 2)
        reading.repeated.clear();
    readLimits(draft, unit, measuring);
    if (piece != nullptr && unit.dimension() == Dimension::Torque && !reading.low && !reading.high)
        takeTorque(*piece, measuring);
    for (const Fitting& one : fitting)
        if (text(one.instrument.name) == instrument) {
            measuring.instrument = one.instrument;
            reading.instrument = one.instrument.name;
            break;
        }
    return measuring;
}

tl::expected<verdict::Judgement, std::string> judged(Measuring& measuring, units::Date today) {
    const auto* instrument = measuring.instrument ? &*measuring.instrument : nullptr;
    const auto* limits = measuring.limits ? &*measuring.limits : nullptr;
    auto judgement = verdict::judge(measuring.values, instrument, limits, today, measuring.rule);
    if (!judgement)
        return judgement;
    if (measuring.rule == verdict::targetRule && measuring.values.size() > 1)
        for (const units::Quantity& value : measuring.values) {
            const auto alone = verdict::judge({&value, 1}, instrument, limits, today, measuring.rule);
            if (alone && alone->verdict && judgement->verdict &&
                alone->verdict->answer == verdict::Answer::Outside) {
                judgement->verdict = alone->verdict;
                judgement->working.push_back("one of the readings is outside: " + units::format(value));
                break;
            }
        }
    job::Reading& reading = measuring.reading;
    if (!reading.repeated.empty()) {
        double step = measuring.instrument
                          ? units::convertedStep(
                                {judgement->value.in(measuring.instrument->unit), measuring.instrument->unit},
                                measuring.instrument->resolution, judgement->value.unit)
                          : 0;
        for (const std::string& digits : reading.repeated)
            if (const auto read = units::parseNumber(digits, units::Comma::Decimal))
                step = step > 0 ? std::min(step, read->step) : read->step;
        reading.value.digits = meanDigits(judgement->value, step);
    }
    if (judgement->expanded)
        reading.uncertainty = units::format(*judgement->expanded, 2) + " (k = 2)";
    if (judgement->verdict) {
        reading.verdict = verdict::word(judgement->verdict->answer);
        reading.probability = judgement->verdict->probability;
    }
    return judgement;
}

std::vector<Proposal> proposals(const job::Job& job, const std::string& about) {
    std::vector<Proposal> all;
    std::set<QString> known;
    const auto add = [&](Proposal proposal) {
        if (!proposal.what.isEmpty() && known.insert(proposal.what).second)
            all.push_back(std::move(proposal));
    };
    const auto unitOf = [](const job::TypedValue& value, QVariantMap& values, const char* name) {
        if (const int index = measuredUnitIndex(value.unit); index >= 0)
            values[QLatin1String(name)] = index;
    };
    const auto measuredBefore = [&](const job::Reading& reading) {
        QVariantMap values{{QStringLiteral("what"), text(reading.what)}};
        unitOf(reading.value, values, "unit");
        // What the step demands is asked of the step again: typed in, it would pass for another demand.
        const bool ofStep = job::heldAgainstStep(job, reading);
        for (const auto& [name, limit] : {std::pair{"low", reading.low}, std::pair{"high", reading.high}})
            if (limit && !ofStep) {
                values[QLatin1String(name)] = text(limit->digits);
                unitOf(*limit, values, "limitUnit");
            }
        if (!ofStep)
            takeSource(reading.limitSource, values);
        if (!reading.instrument.empty())
            values[QStringLiteral("instrument")] = text(reading.instrument);
        add({text(reading.what), limitsText(reading), std::move(values)});
    };
    for (const auto* own = job::findStep(job, about); own != nullptr; own = nullptr) {
        for (auto reading = job.readings.rbegin(); reading != job.readings.rend(); ++reading)
            if (reading->about == about)
                measuredBefore(*reading);
        for (const job::Hardware& hardware : own->hardware) {
            if (!job::torqueOf(hardware))
                continue;
            const QString what = Said::tr("%1, torque").arg(text(job::torqueName(*own, hardware)));
            QVariantMap values{{QStringLiteral("what"), what}};
            unitOf(*hardware.torque, values, "unit");
            add({what, Said::tr("to be %1, as the step says").arg(withUnit(*hardware.torque)),
                 std::move(values)});
        }
    }
    if (const QString next = nextState(job); !next.isEmpty()) {
        QVariantMap values{{QStringLiteral("what"), next}};
        unitOf(job.readings.back().value, values, "unit");
        add({next, Said::tr("next after: %1").arg(text(job.readings.back().what)), std::move(values)});
    }
    for (auto reading = job.readings.rbegin(); reading != job.readings.rend(); ++reading)
        measuredBefore(*reading);
    return all;
}

QString withUnit(const job::TypedValue& value) {
    return value.unit.empty() ? numberText(value.digits)
                              : numberText(value.digits) + QChar(QChar::Nbsp) + text(value.unit);
}

QString repeatedText(const job::Reading& reading) {
    QStringList all;
    for (const std::string& digits : reading.repeated)
        all += numberText(digits);
    return all.join(QStringLiteral(", "));
}

QString limitsText(const job::Reading& reading) {
    QStringList limits;
    if (reading.low)
        limits += Said::tr("at least %1").arg(withUnit(*reading.low));
    if (reading.high)
        limits += Said::tr("at most %1").arg(withUnit(*reading.high));
    if (!reading.limitSource.empty())
        limits += knownWords(reading.limitSource);
    return limits.join(QStringLiteral(", "));
}

} // namespace undercowl::ui
