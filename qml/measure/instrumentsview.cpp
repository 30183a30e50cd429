#include "qml/measure/instrumentsview.h"

#include "core/units/format.h"
#include "qml/shell/words.h"

#include <QCoreApplication>
#include <QPointer>

#include <algorithm>
#include <array>

namespace undercowl::ui {

namespace {

using journal::KeptInstrument;
using verdict::InstrumentSheet;

constexpr int kindCount = static_cast<int>(verdict::InstrumentKind::Other) + 1;

// The form's fields are those of the sheet, but for the kind, which is an index.
constexpr std::array fields{
    std::pair{"name", &InstrumentSheet::name},       std::pair{"low", &InstrumentSheet::low},
    std::pair{"high", &InstrumentSheet::high},       std::pair{"resolution", &InstrumentSheet::resolution},
    std::pair{"wrench", &InstrumentSheet::wrench},   std::pair{"gaugeClass", &InstrumentSheet::gaugeClass},
    std::pair{"percent", &InstrumentSheet::percent}, std::pair{"digits", &InstrumentSheet::digits},
    std::pair{"error", &InstrumentSheet::error},     std::pair{"feel", &InstrumentSheet::feel},
    std::pair{"source", &InstrumentSheet::source},   std::pair{"calibrated", &InstrumentSheet::calibrated},
    std::pair{"due", &InstrumentSheet::due}};

// "due in 97 days, on 1 Mar 2027"; overdue and never calibrated are told first.
QString dueText(const verdict::Instrument& instrument, units::Date today, bool& caution) {
    caution = verdict::calibrationCaution(instrument, today).has_value();
    if (instrument.due) {
        const auto days = static_cast<int>(units::daysBetween(today, *instrument.due));
        const QString day = dateWords(*instrument.due);
        if (days < 0)
            return InstrumentsView::tr("Calibration overdue since %1: its limit of error cannot be relied on")
                .arg(day);
        if (!instrument.calibrated)
            return InstrumentsView::tr("No calibration is recorded; due on %1").arg(day);
        if (days < 2)
            return days == 0 ? InstrumentsView::tr("Calibration due today")
                             : InstrumentsView::tr("Calibration due tomorrow, on %1").arg(day);
        return InstrumentsView::tr("Calibration due on %1, in %2 days").arg(day).arg(days);
    }
    if (instrument.calibrated)
        return InstrumentsView::tr("Calibrated on %1, no date set for the next time")
            .arg(dateWords(*instrument.calibrated));
    return InstrumentsView::tr("No calibration is recorded");
}

Line lineOf(const KeptInstrument& kept, units::Date today) {
    const verdict::Instrument& one = kept.instrument;
    bool caution = false;
    Line line;
    line.id = text(kept.id);
    line.title = text(one.name);
    line.aside =
        InstrumentsView::tr("%1, %2 to %3, %4")
            .arg(coreWords(englishName(one.kind)), numberText(units::formatSignificant(one.rangeLow)),
                 numberText(units::format({one.rangeHigh, one.unit})), coreWords(verdict::errorText(one)));
    line.detail = dueText(one, today, caution);
    if (caution)
        line.mark = QStringLiteral("caution");
    return line;
}

} // namespace

void InstrumentsView::componentComplete() {
    connect(session_, &ShopSession::jobsChanged, this, &InstrumentsView::read);
    read();
}

void InstrumentsView::read() {
    session_->ask(
        this, [](ShopStore& store) { return store.instruments(); },
        [this](const Result<std::vector<KeptInstrument>>& kept) {
            if (!kept) {
                session_->report(kept.error());
                return;
            }
            kept_ = *kept;
            ready_ = true;
            show();
            emit changed();
        });
}

void InstrumentsView::show() {
    const units::Date today = dayOf(session_->now());
    std::vector<Line> inUse;
    std::vector<Line> retired;
    for (const KeptInstrument& one : kept_)
        (one.retired ? retired : inUse).push_back(lineOf(one, today));
    // What must be seen to stands first.
    std::ranges::stable_sort(inUse, {}, [](const Line& line) { return line.mark.isEmpty(); });
    inUse_.setLines(std::move(inUse));
    retired_.setLines(std::move(retired));
}

QStringList InstrumentsView::kinds() const {
    QStringList all;
    for (int i = 0; i < kindCount; ++i)
        all += coreWords(englishName(static_cast<verdict::InstrumentKind>(i)));
    return all;
}

const KeptInstrument* InstrumentsView::byId(const QString& instrument) const {
    const auto found = std::ranges::find(kept_, instrument.toStdString(), &KeptInstrument::id);
    return found == kept_.end() ? nullptr : &*found;
}

QVariantMap InstrumentsView::known(const QString& instrument) const {
    const KeptInstrument* kept = byId(instrument);
    if (kept == nullptr)
        return {};
    const InstrumentSheet sheet = verdict::sheetOf(kept->instrument);
    QVariantMap values{{QStringLiteral("kind"), static_cast<int>(kept->instrument.kind)}};
    for (const auto& [name, member] : fields)
        values[QLatin1String(name)] = text(sheet.*member);
    return values;
}

bool InstrumentsView::isRetired(const QString& instrument) const {
    const KeptInstrument* kept = byId(instrument);
    return kept != nullptr && kept->retired;
}

QString InstrumentsView::advice(int kind) const {
    return kind < 0 || kind >= kindCount
               ? QString()
               : coreWords(verdict::testAdvice(static_cast<verdict::InstrumentKind>(kind)));
}

void InstrumentsView::keep(FormDraft* draft, const QString& instrument) {
    if (draft == nullptr)
        return;
    const int kind = draft->values().value(QStringLiteral("kind"), -1).toInt();
    if (kind < 0 || kind >= kindCount) {
        setErrors({{QStringLiteral("kind"), tr("Choose what kind of instrument it is.")}});
        return;
    }
    InstrumentSheet sheet;
    for (const auto& [name, member] : fields)
        sheet.*member = utf8(draft->text(QLatin1String(name)));
    sheet.kind = verdict::code(static_cast<verdict::InstrumentKind>(kind));
    // What belongs to another kind was typed before the kind was changed.
    if (sheet.kind != verdict::code(verdict::InstrumentKind::TorqueWrench))
        sheet.wrench.clear();
    auto made = verdict::instrumentFrom(sheet);
    if (!made) {
        setErrors({{text(made.error().field), coreWords(made.error().message)}});
        return;
    }
    for (const KeptInstrument& other : kept_)
        if (!other.retired && text(other.id) != instrument && other.instrument.name == made->name &&
            other.instrument.unit.dimension() == made->unit.dimension()) {
            setErrors({{QStringLiteral("name"),
                        tr("Another instrument for the same quantity has this name: choose another one.")}});
            return;
        }
    setErrors({});
    const KeptInstrument said{instrument.isEmpty() ? session_->newId() : instrument.toStdString(),
                              *std::move(made), isRetired(instrument)};
    session_->say({journal::instrumentKept(said)},
                  {.undoText = tr("Kept: %1").arg(text(said.instrument.name)),
                   .form = draft->property("form").toString()},
                  [self = QPointer(this), draft = QPointer(draft)](const Entries& done) {
                      if (!done || self == nullptr)
                          return;
                      if (draft != nullptr)
                          draft->said();
                      emit self->kept();
                  });
}

void InstrumentsView::retire(const QString& instrument, bool retired) {
    const KeptInstrument* kept = byId(instrument);
    if (kept == nullptr)
        return;
    KeptInstrument said = *kept;
    said.retired = retired;
    session_->say({journal::instrumentKept(said)},
                  {.undoText = retired ? tr("No longer used: %1").arg(text(said.instrument.name))
                                       : tr("In use again: %1").arg(text(said.instrument.name)),
                   .form = {}},
                  [self = QPointer(this)](const Entries& done) {
                      if (done && self != nullptr)
                          emit self->kept();
                  });
}

void InstrumentsView::setErrors(const QVariantMap& errors) {
    if (errors_ == errors)
        return;
    errors_ = errors;
    emit errorsChanged();
}

} // namespace undercowl::ui
