#include "qml/measure/measureview.h"

#include "core/journal/say.h"
#include "core/units/format.h"
#include "core/units/parse.h"
#include "core/verdict/specify.h"
#include "qml/shell/words.h"

#include <QCoreApplication>
#include <QJsonDocument>
#include <QJsonObject>
#include <QLocale>

#include <algorithm>

namespace undercowl::ui {

namespace {

QString quantityName(int unitIndex) { // in every language the same
    return text(units::englishName(measuredUnit(unitIndex).dimension()));
}

QJsonObject memory(const ShopSession* session) {
    return session == nullptr
               ? QJsonObject()
               : QJsonDocument::fromJson(session->setting(QStringLiteral("measuring")).toUtf8()).object();
}

QString verdictCode(verdict::Answer answer) {
    switch (answer) {
    case verdict::Answer::Within: return QStringLiteral("within");
    case verdict::Answer::Outside: return QStringLiteral("outside");
    case verdict::Answer::TooClose: break;
    }
    return QStringLiteral("undecided");
}

} // namespace

void MeasureView::componentComplete() {
    JobScreen::componentComplete();
    if (session() == nullptr)
        return;
    connect(session(), &ShopSession::jobsChanged, this, &MeasureView::readInstruments);
    readInstruments();
}

void MeasureView::readInstruments() {
    session()->ask(
        this, [](ShopStore& store) { return store.instruments(); },
        [this](const Result<std::vector<journal::KeptInstrument>>& kept) {
            if (kept)
                kept_ = *kept;
            judge();
        });
}

void MeasureView::setDraft(FormDraft* draft) {
    if (draft_ == draft)
        return;
    draft_ = draft;
    if (draft_ != nullptr)
        connect(draft_, &FormDraft::valuesChanged, this, &MeasureView::judge);
    emit draftChanged();
    judge();
}

QString MeasureView::aboutText() const {
    const auto now = snapshot();
    if (now == nullptr || about_.isEmpty())
        return {};
    if (const auto* step = job::findStep(now->job, about_.toStdString()))
        return text(step->title);
    const auto* task = job::findTask(now->job, about_.toStdString());
    return task == nullptr ? QString() : text(task->title);
}

int MeasureView::unitIndex() const {
    const QString name = QStringLiteral("unit");
    if (draft_ != nullptr && draft_->values().contains(name))
        return draft_->values().value(name).toInt();
    const int meant =
        unitMeant(draft_ == nullptr ? QString() : draft_->text(QStringLiteral("what")), memory(session()));
    return meant < 0 ? plainNumber() : meant;
}

bool MeasureView::lacksUnit() const {
    return draft_ != nullptr && !draft_->values().contains(QStringLiteral("unit")) &&
           unitMeant(draft_->text(QStringLiteral("what")), memory(session())) < 0;
}

QString MeasureView::limitUnit() const {
    const QString name = QStringLiteral("limitUnit");
    return draft_ != nullptr && draft_->values().contains(name)
               ? unitText(measuredUnit(draft_->values().value(name).toInt()))
               : unit();
}

std::vector<Fitting> MeasureView::fitting() const {
    return fittingInstruments(kept_, measuredUnit(unitIndex()));
}

QString MeasureView::remembered(int unitIndex) const {
    return memory(session())[u"instruments"].toObject()[quantityName(unitIndex)].toString();
}

QString MeasureView::instrumentName() const {
    const QString name = QStringLiteral("instrument");
    if (draft_ == nullptr || !draft_->values().contains(name))
        return remembered(unitIndex());
    // One that a proposal named may be gone, or be none of the shop's.
    const QString named = draft_->values().value(name).toString();
    const auto all = fitting();
    const bool there = named.isEmpty() || std::ranges::any_of(all, [&](const Fitting& one) {
                           return text(one.instrument.name) == named;
                       });
    return there ? named : remembered(unitIndex());
}

QStringList MeasureView::instruments() const {
    QStringList all{tr("none named")};
    for (const Fitting& one : fitting())
        all +=
            one.ours ? tr("%1, of the shop").arg(text(one.instrument.name)) : coreWords(one.instrument.name);
    return all;
}

int MeasureView::instrument() const {
    const auto all = fitting();
    const QString name = instrumentName();
    const auto found =
        std::ranges::find_if(all, [&](const Fitting& one) { return text(one.instrument.name) == name; });
    return found == all.end() ? 0 : static_cast<int>(found - all.begin()) + 1;
}

QString MeasureView::instrumentText() const {
    const auto all = fitting();
    const int index = instrument();
    if (index == 0)
        return tr("no instrument named");
    const Fitting& one = all[static_cast<std::size_t>(index) - 1];
    return one.ours
               ? tr("%1: %2").arg(text(one.instrument.name), coreWords(verdict::errorText(one.instrument)))
               : tr("%1: %2, assumed")
                     .arg(coreWords(one.instrument.name), coreWords(verdict::errorText(one.instrument)));
}

QStringList MeasureView::trusts() const {
    return {tr("manual"), tr("shop's record"), tr("standard"), tr("worked out here")};
}

void MeasureView::chooseUnit(int index) {
    if (draft_ == nullptr)
        return;
    const QString limitName = QStringLiteral("limitUnit");
    const bool alike = measuredUnit(index).dimension() == measuredUnit(unitIndex()).dimension();
    const bool limited =
        !draft_->text(QStringLiteral("low")).isEmpty() || !draft_->text(QStringLiteral("high")).isEmpty();
    if (!alike) {
        draft_->set(QStringLiteral("instrument"), remembered(index));
        draft_->set(limitName, index);
    } else if (limited && !draft_->values().contains(limitName)) {
        draft_->set(limitName, unitIndex());
    }
    draft_->set(QStringLiteral("unit"), index);
}

void MeasureView::toggleUnit() {
    if (const int next = nextUnitAlike(unitIndex()); next != unitIndex())
        chooseUnit(next);
}

void MeasureView::chooseInstrument(int index) {
    const auto all = fitting();
    if (draft_ != nullptr && index >= 0 && index <= static_cast<int>(all.size()))
        draft_->set(QStringLiteral("instrument"),
                    index == 0 ? QString() : text(all[static_cast<std::size_t>(index) - 1].instrument.name));
}

void MeasureView::again() {
    const QString value = draft_ == nullptr ? QString() : draft_->text(QStringLiteral("value")).trimmed();
    if (!units::parseNumber(utf8(value), units::Comma::Decimal)) {
        setErrors({{QStringLiteral("value"), tr("Type a value first; then the next one can be typed.")}});
        return;
    }
    setErrors({});
    const QString name = QStringLiteral("readings");
    draft_->set(name, draft_->values().value(name).toStringList() << value);
    draft_->set(QStringLiteral("value"), QString());
}

void MeasureView::removeAside(int index) {
    const QString name = QStringLiteral("readings");
    QStringList all = draft_ == nullptr ? QStringList() : draft_->values().value(name).toStringList();
    if (index < 0 || index >= all.size())
        return;
    all.removeAt(index);
    draft_->set(name, all);
}

void MeasureView::propose(int index) {
    if (draft_ == nullptr || index < 0 || index >= static_cast<int>(proposed_.size()))
        return;
    const QVariantMap& values = proposed_[static_cast<std::size_t>(index)].values;
    // What the proposal leaves open must not stay from before.
    draft_->set(QStringLiteral("trust"), -1);
    for (const char* name : {"low", "high", "reference"})
        draft_->set(QLatin1String(name), QString());
    const QVariant unit = values.value(QStringLiteral("unit"), unitIndex());
    draft_->set(QStringLiteral("limitUnit"), unit);
    for (auto value = values.begin(); value != values.end(); ++value)
        draft_->set(value.key(), value.value());
}

void MeasureView::proposeFirst() {
    if (draft_ != nullptr && !draft_->begun() && !about_.isEmpty() && !proposed_.empty())
        draft_->fill(proposed_.front().values);
}

void MeasureView::judge() {
    showTarget();
    setup_.clear();
    mean_.clear();
    verdict_.clear();
    reason_.clear();
    cautions_.clear();
    working_.clear();
    band_.set(std::nullopt);
    if (draft_ == nullptr) {
        emit judged();
        return;
    }
    const auto all = fitting();
    Measuring now = measuringFrom(*draft_, about_.toStdString(), all, measuredUnit(unitIndex()),
                                  instrumentName(), piece());
    QStringList setup{limitsText(now.reading), instrumentText()};
    setup.removeAll(QString());
    setup_ = setup.join(QStringLiteral(" \u00b7 "));
    std::vector<Line> aside;
    for (const QString& one : draft_->values().value(QStringLiteral("readings")).toStringList())
        aside.push_back({.id = QString::number(aside.size()), .title = one, .detail = unit()});
    aside_.setLines(std::move(aside));
    if (now.values.empty()) {
        showCourse(text(now.reading.what), {});
        emit judged();
        return;
    }
    if (now.errors.contains(QStringLiteral("high"))) {
        reason_ = now.errors[QStringLiteral("high")].toString();
        showCourse(text(now.reading.what), {});
        emit judged();
        return;
    }
    const auto judgement = ui::judged(now, dayOf(session()->now()));
    if (!judgement) {
        reason_ = coreWords(judgement.error());
        showCourse(text(now.reading.what), {});
        emit judged();
        return;
    }
    CourseNow point;
    point.value = judgement->value;
    if (now.limits) {
        point.low = now.limits->low;
        point.high = now.limits->high;
    }
    showCourse(text(now.reading.what), point);
    if (judgement->repeated)
        mean_ = tr("mean of %1: %2, spread %3")
                    .arg(QString::number(judgement->repeated->count), withUnit(now.reading.value),
                         numberText(units::format(
                             {judgement->repeated->spread,
                              units::baseUnit(units::intervalOf(judgement->value.unit.dimension()))},
                             2)));
    if (judgement->verdict) {
        verdict_ = verdictCode(judgement->verdict->answer);
        if (judgement->assumed)
            reason_ = tr("as read; the instrument is not known, taken to be within %1: %2")
                          .arg(coreWords(now.reading.uncertainty), limitsText(now.reading));
        else
            reason_ = tr("%1 % sure to be within: %2")
                          .arg(QLocale().toString(judgement->verdict->probability * 100, 'f', 1),
                               now.reading.limitSource.empty() ? tr("source of the limits not named")
                                                               : knownWords(now.reading.limitSource));
    } else if (!now.reading.low && !now.reading.high) {
        reason_ = tr("No limits given: the value is kept without a verdict.");
    } else if (now.reading.instrument.empty()) {
        reason_ =
            tr("No instrument named, so its uncertainty is not known: the value is kept without a verdict.");
    } else {
        reason_ = coreWords(judgement->noVerdict);
    }
    band_.set(judgement->verdict);
    for (const std::string& line : judgement->working)
        working_ += coreWords(line);
    for (const std::string& line : judgement->settle)
        cautions_ += tr("What would settle it: %1").arg(coreWords(line));
    // Until a source is named nothing can be said of how far the limits are to be trusted.
    if (now.errors.contains(QStringLiteral("trust")))
        cautions_ += now.errors[QStringLiteral("trust")].toString();
    else
        for (const std::string& caution : judgement->cautions)
            cautions_ += coreWords(caution);
    emit judged();
}

void MeasureView::follow(const QString& what) {
    showCourse(what, {});
}

void MeasureView::showCourse(const QString& what, CourseNow now) {
    const auto shot = snapshot();
    if (shot == nullptr) {
        course_.set(std::nullopt);
        return;
    }
    now.at = session()->now();
    course_.set(courseOf(shot->job, what, now));
}

void MeasureView::remember(const job::Reading& said) {
    QJsonObject all = memory(session());
    QJsonObject instruments = all[u"instruments"].toObject();
    instruments[quantityName(unitIndex())] = text(said.instrument);
    all[QStringLiteral("instruments")] = instruments;
    all[QStringLiteral("unit")] = unitIndex();
    all[QStringLiteral("what")] = text(said.what);
    QJsonObject units = all[u"units"].toObject();
    units[quantityName(unitIndex())] = unitIndex();
    all[QStringLiteral("units")] = units;
    session()->set(QStringLiteral("measuring"),
                   QString::fromUtf8(QJsonDocument(all).toJson(QJsonDocument::Compact)));
}

void MeasureView::keep() {
    if (draft_ == nullptr || snapshot() == nullptr)
        return;
    const auto all = fitting();
    Measuring now = measuringFrom(*draft_, about_.toStdString(), all, measuredUnit(unitIndex()),
                                  instrumentName(), piece());
    if (lacksUnit())
        now.errors[QStringLiteral("unit")] = tr("Choose the unit that this was measured in.");
    setErrors(now.errors);
    if (!now.errors.isEmpty())
        return;
    if (const auto judgement = ui::judged(now, dayOf(session()->now())); !judgement) {
        setErrors({{QStringLiteral("value"), coreWords(judgement.error())}});
        return;
    }
    now.reading.id = session()->newId();
    remember(now.reading);
    session()->say({journal::readingTaken(jobId(), now.reading)},
                   {.undoText = tr("Kept: %1").arg(withUnit(now.reading.value)),
                    .form = draft_->property("form").toString()},
                   [self = QPointer(this)](const Entries& done) {
                       if (!done || self == nullptr)
                           return;
                       self->beforeHeard_.clear();
                       if (self->draft_ != nullptr)
                           self->draft_->said();
                       emit self->kept();
                   });
}

void MeasureView::withdraw(const QString& reading) {
    const auto now = snapshot();
    if (now == nullptr)
        return;
    const auto& readings = now->job.readings;
    const auto known = std::ranges::find(readings, utf8(reading), &job::Reading::id);
    if (known != readings.end())
        session()->say({journal::withdrawn(jobId(), known->said.entry)},
                       {.undoText = tr("Taken out: %1").arg(text(known->what)), .form = {}});
}

void MeasureView::show(const Snapshot& snapshot) {
    std::vector<Line> lines;
    for (auto reading = snapshot.job.readings.rbegin(); reading != snapshot.job.readings.rend(); ++reading) {
        QStringList detail{limitsText(*reading), knownWords(reading->instrument)};
        if (reading->repeated.size() > 1)
            detail.prepend(tr("mean of %1").arg(repeatedText(*reading)));
        detail.removeAll(QString());
        lines.push_back({.id = text(reading->id),
                         .title = text(reading->what),
                         .detail = detail.join(QStringLiteral(", ")),
                         .aside = withUnit(reading->value),
                         .mark = text(reading->verdict)});
    }
    readings_.setLines(std::move(lines));
    proposed_ = ui::proposals(snapshot.job, about_.toStdString());
    std::vector<Line> shown;
    for (const Proposal& one : proposed_)
        shown.push_back({.id = QString::number(shown.size()), .title = one.what, .detail = one.detail});
    proposals_.setLines(std::move(shown));
    judge();
}

} // namespace undercowl::ui
