#include "qml/measure/measureview.h"

#include "core/journal/say.h"
#include "core/units/format.h"
#include "core/units/parse.h"
#include "core/verdict/judge.h"
#include "qml/shell/words.h"

#include <QCoreApplication>
#include <QDate>
#include <QLocale>

#include <algorithm>
#include <array>

namespace undercowl::ui {

namespace {

using units::Dimension;

struct Choice {
    Dimension dimension;
    const char* symbol;
};

// What is measured in a workshop, in the units that its instruments show.
constexpr std::array choices{
    Choice{Dimension::Torque, "N.m"},         Choice{Dimension::Torque, "lbf.ft"},
    Choice{Dimension::GaugePressure, "bar"},  Choice{Dimension::GaugePressure, "psi"},
    Choice{Dimension::GaugePressure, "kPa"},  Choice{Dimension::Length, "mm"},
    Choice{Dimension::Voltage, "V"},          Choice{Dimension::Current, "A"},
    Choice{Dimension::Resistance, "ohm"},     Choice{Dimension::Temperature, "degC"},
    Choice{Dimension::RotationalSpeed, "rpm"}};

units::Unit unitAt(int index) {
    const auto at = static_cast<std::size_t>(std::clamp(index, 0, static_cast<int>(choices.size()) - 1));
    return units::findUnit(choices.at(at).symbol, choices.at(at).dimension)
        .value_or(units::baseUnit(choices.at(at).dimension));
}

std::vector<const verdict::Instrument*> instrumentsFor(const units::Unit& unit) {
    std::vector<const verdict::Instrument*> all;
    for (const verdict::Instrument& one : verdict::ordinaryInstruments())
        if (one.unit.dimension() == unit.dimension())
            all.push_back(&one);
    return all;
}

units::Date today() {
    const QDate date = QDate::currentDate();
    return units::Date{std::chrono::year{date.year()}, std::chrono::month{unsigned(date.month())},
                       std::chrono::day{unsigned(date.day())}};
}

QString withUnit(const job::TypedValue& value) {
    return text(value.digits) + QChar(QChar::Nbsp) + text(value.unit);
}

QString verdictWord(verdict::Answer answer) {
    switch (answer) {
    case verdict::Answer::Within: return QStringLiteral("within");
    case verdict::Answer::Outside: return QStringLiteral("outside");
    case verdict::Answer::TooClose: return QStringLiteral("too close to call");
    }
    return {};
}

std::optional<units::Quantity> quantityOf(const job::TypedValue& value, const units::Unit& unit) {
    const auto number = units::parseNumber(value.digits, units::Comma::Decimal);
    return number ? std::optional(units::Quantity{number->value, unit}) : std::nullopt;
}

// What core/verdict says of a reading as it was typed; nothing when its value is no number.
std::optional<tl::expected<verdict::Judgement, std::string>> judge(const job::Reading& reading,
                                                                   units::Unit unit) {
    const auto value = quantityOf(reading.value, unit);
    if (!value)
        return std::nullopt;
    verdict::Limits limits;
    if (reading.low)
        limits.low = quantityOf(*reading.low, unit);
    if (reading.high)
        limits.high = quantityOf(*reading.high, unit);
    const auto fitting = instrumentsFor(unit);
    const auto instrument = std::ranges::find(fitting, reading.instrument, &verdict::Instrument::name);
    return verdict::judge(std::array{*value}, instrument == fitting.end() ? nullptr : *instrument,
                          limits.low || limits.high ? &limits : nullptr, today());
}

} // namespace

void MeasureView::setDraft(FormDraft* draft) {
    if (draft_ == draft)
        return;
    draft_ = draft;
    if (draft_ != nullptr)
        connect(draft_, &FormDraft::valuesChanged, this, &MeasureView::judge);
    emit draftChanged();
    judge();
}

QStringList MeasureView::units() const {
    QStringList all;
    for (const Choice& choice : choices)
        all += QString::fromLatin1(choice.symbol);
    return all;
}

QString MeasureView::unit() const {
    return draft_ == nullptr ? units().front()
                             : text(unitAt(draft_->values().value(QStringLiteral("unit")).toInt()).symbol());
}

QStringList MeasureView::instruments() const {
    QStringList all{tr("none named")};
    if (draft_ != nullptr)
        for (const auto* one : instrumentsFor(unitAt(draft_->values().value(QStringLiteral("unit")).toInt())))
            all += QCoreApplication::translate("Instruments", one->name.c_str());
    return all;
}

QStringList MeasureView::trusts() const {
    return {tr("manual"), tr("shop's record"), tr("standard"), tr("worked out here")};
}

job::Reading MeasureView::reading(QVariantMap& errors) const {
    job::Reading reading;
    const auto value = [this](const char* name) { return draft_->text(QLatin1String(name)); };
    const units::Unit unit = unitAt(draft_->values().value(QStringLiteral("unit")).toInt());
    reading.what = utf8(value("what"));
    reading.about = about_.toStdString();
    if (reading.what.empty())
        errors[QStringLiteral("what")] = tr("Type what was measured, such as \"rear axle nut, torque\".");
    const auto typed = [&](const char* name, bool needed) -> std::optional<job::TypedValue> {
        const QString words = value(name).trimmed();
        if (words.isEmpty() && !needed)
            return std::nullopt;
        const auto number = units::parseNumber(utf8(words), units::Comma::Decimal);
        if (!number) {
            errors[QLatin1String(name)] =
                words.isEmpty() ? tr("Type the value on the keypad.") : text(number.error().message);
            return std::nullopt;
        }
        QString digits = text(number->text);
        return job::TypedValue{digits.replace(u',', u'.').toStdString(), unit.symbol()};
    };
    reading.value = typed("value", true).value_or(job::TypedValue{});
    reading.low = typed("low", false);
    reading.high = typed("high", false);
    if (reading.low || reading.high) {
        const int trust = draft_->values().value(QStringLiteral("trust"), -1).toInt();
        const std::string reference = utf8(value("reference"));
        if (trust < 0)
            errors[QStringLiteral("trust")] = tr("Say where the limits come from.");
        else
            reading.limitSource =
                verdict::LimitSource{static_cast<verdict::Trust>(std::min(trust, 3)), reference}.text();
    }
    const auto fitting = instrumentsFor(unit);
    const int instrument = draft_->values().value(QStringLiteral("instrument")).toInt();
    if (instrument > 0 && instrument <= static_cast<int>(fitting.size()))
        reading.instrument = fitting[static_cast<std::size_t>(instrument) - 1]->name;
    return reading;
}

void MeasureView::judge() {
    verdict_.clear();
    reason_.clear();
    cautions_.clear();
    working_.clear();
    band_.set(std::nullopt);
    QVariantMap ignored;
    if (draft_ == nullptr) {
        emit judged();
        return;
    }
    const units::Unit unit = unitAt(draft_->values().value(QStringLiteral("unit")).toInt());
    const job::Reading typed = reading(ignored);
    const auto answer = ui::judge(typed, unit);
    if (!answer) {
        emit judged();
        return;
    }
    const auto& judgement = *answer;
    if (!judgement) {
        reason_ = text(judgement.error());
    } else if (judgement->verdict) {
        verdict_ = verdictWord(judgement->verdict->answer);
        if (verdict_ == QStringLiteral("too close to call"))
            verdict_ = QStringLiteral("undecided");
        reason_ = tr("%1 % sure to be within: %2")
                      .arg(QLocale().toString(judgement->verdict->probability * 100, 'f', 1),
                           typed.limitSource.empty() ? tr("source of the limits not named")
                                                     : text(typed.limitSource));
    } else if (!typed.low && !typed.high) {
        reason_ = tr("No limits given: the value is kept without a verdict.");
    } else if (typed.instrument.empty()) {
        reason_ =
            tr("No instrument named, so its uncertainty is not known: the value is kept without a verdict.");
    } else {
        reason_ = text(judgement->noVerdict);
    }
    if (judgement) {
        band_.set(judgement->verdict);
        for (const std::string& line : judgement->working)
            working_ += text(line);
        for (const std::string& line : judgement->settle)
            cautions_ += tr("What would settle it: %1").arg(text(line));
    }
    if (judgement)
        for (const std::string& caution : judgement->cautions)
            cautions_ += QCoreApplication::translate("Verdicts", caution.c_str());
    emit judged();
}

void MeasureView::keep() {
    if (draft_ == nullptr || snapshot() == nullptr)
        return;
    QVariantMap errors;
    job::Reading said = reading(errors);
    setErrors(errors);
    if (!errors.isEmpty())
        return;
    said.id = session()->newId();
    const units::Unit unit = unitAt(draft_->values().value(QStringLiteral("unit")).toInt());
    const auto answer = ui::judge(said, unit);
    if (!answer)
        return; // refused above
    const auto& judgement = *answer;
    if (!judgement) {
        setErrors({{QStringLiteral("value"), text(judgement.error())}});
        return;
    }
    if (judgement->expanded)
        said.uncertainty = units::format(*judgement->expanded, 2) + " (k = 2)";
    if (judgement->verdict) {
        said.verdict = verdictWord(judgement->verdict->answer).toStdString();
        said.probability = judgement->verdict->probability;
    }
    session()->say(
        {journal::readingTaken(jobId(), said)},
        {.undoText = tr("Kept: %1").arg(withUnit(said.value)), .form = draft_->property("form").toString()},
        [self = QPointer(this)](const Entries& done) {
            if (!done || self == nullptr)
                return;
            if (self->draft_ != nullptr)
                self->draft_->said();
            emit self->kept();
        });
}

void MeasureView::show(const Snapshot& snapshot) {
    std::vector<Line> lines;
    for (auto reading = snapshot.job.readings.rbegin(); reading != snapshot.job.readings.rend(); ++reading) {
        QStringList limits;
        if (reading->low)
            limits += tr("at least %1").arg(withUnit(*reading->low));
        if (reading->high)
            limits += tr("at most %1").arg(withUnit(*reading->high));
        if (!reading->limitSource.empty())
            limits += text(reading->limitSource);
        lines.push_back({.id = text(reading->id),
                         .title = text(reading->what),
                         .detail = limits.join(QStringLiteral(", ")),
                         .aside = withUnit(reading->value),
                         .mark = text(reading->verdict)});
    }
    readings_.setLines(std::move(lines));
}

} // namespace undercowl::ui
