#include "qml/parts/partform.h"

#include "core/job/money.h"
#include "core/journal/say.h"
#include "qml/shell/words.h"

#include <QPointer>

#include <algorithm>
#include <array>

namespace undercowl::ui {

namespace {

constexpr int stateCount = static_cast<int>(job::PartState::NotNeeded) + 1;
constexpr int fitCount = static_cast<int>(job::PartFit::DoesNotFit) + 1;

const job::Part* partOf(const SnapshotPtr& snapshot, const QString& id) {
    if (snapshot == nullptr)
        return nullptr;
    const auto found = std::ranges::find(snapshot->job.parts, id.toStdString(), &job::Part::id);
    return found == snapshot->job.parts.end() ? nullptr : &*found;
}

// The index in words, or what stands already.
template<typename Enum>
Enum chosen(const FormDraft& draft, const char* name, int count, Enum fallback) {
    bool whole = false;
    const int index = draft.text(QString::fromLatin1(name)).toInt(&whole);
    return whole && index >= 0 && index < count ? static_cast<Enum>(index) : fallback;
}

} // namespace

void PartForm::show(const Snapshot& snapshot) {
    const auto* part = partOf(this->snapshot(), part_);
    title_ = part == nullptr ? tr("Part") : text(part->name);
    const auto photos = job::photosAbout(snapshot.job, part_.toStdString());
    photo_ = photos.empty() ? QUrl() : session()->mediaUrl(text(photos.back()->media));
    subjects_.clear();
    subjectIds_.clear();
    const auto add = [&](const Id& id, const std::string& words) {
        subjectIds_.push_back(id);
        subjects_ += text(words);
    };
    for (const job::Finding& finding : snapshot.job.findings)
        add(finding.id, finding.text);
    for (const job::StripStep& step : snapshot.job.steps)
        add(step.id, step.title);
}

QStringList PartForm::states() const {
    QStringList list;
    for (int state = 0; state < stateCount; ++state)
        list += words(static_cast<job::PartState>(state));
    return list;
}

QStringList PartForm::fits() const {
    return {tr("Not said"), tr("Fits"), tr("After a change"), tr("Does not fit")};
}

QString PartForm::subjectId(int index) const {
    return index >= 0 && index < subjects_.size() ? text(subjectIds_[static_cast<std::size_t>(index)])
                                                  : QString();
}

int PartForm::subjectIndex(const QString& id) const {
    const auto found = std::ranges::find(subjectIds_, id.toStdString());
    return found == subjectIds_.end() ? -1 : static_cast<int>(found - subjectIds_.begin());
}

QVariantMap PartForm::known() const {
    const auto* part = partOf(snapshot(), part_);
    if (part == nullptr)
        return {};
    return {{QStringLiteral("name"), text(part->name)},
            {QStringLiteral("number"), text(part->number)},
            {QStringLiteral("other"), text(part->otherNumbers)},
            {QStringLiteral("supplier"), text(part->supplier)},
            {QStringLiteral("price"), part->price ? text(part->price->digits) : QString()},
            {QStringLiteral("currency"),
             part->price ? text(part->price->unit) : session()->setting(QStringLiteral("currency"))},
            {QStringLiteral("note"), text(part->note)},
            {QStringLiteral("about"), text(part->about)},
            {QStringLiteral("state"), QString::number(static_cast<int>(part->state))},
            {QStringLiteral("fitted"), QString::number(static_cast<int>(part->fitted))},
            {QStringLiteral("fit"), text(part->fit)}};
}

void PartForm::keep(FormDraft* draft) {
    const auto* known = partOf(snapshot(), part_);
    if (known == nullptr || draft == nullptr)
        return;
    const auto field = [draft](const char* name) { return utf8(draft->text(QString::fromLatin1(name))); };
    job::Part part = *known;
    part.name = field("name");
    part.number = field("number");
    part.otherNumbers = field("other");
    part.supplier = field("supplier");
    part.note = field("note");
    part.about = field("about");
    part.fit = field("fit");
    part.state = chosen(*draft, "state", stateCount, part.state);
    part.fitted = chosen(*draft, "fitted", fitCount, part.fitted);
    QVariantMap errors;
    if (part.name.empty())
        errors[QStringLiteral("name")] = tr("Type what part it is, such as \"front brake hose\".");
    part.price.reset();
    if (auto digits = field("price"); !digits.empty()) {
        const auto exact = job::decimal(digits);
        const std::string currency =
            draft->text(QStringLiteral("currency")).trimmed().toUpper().toStdString();
        if (!exact)
            errors[QStringLiteral("price")] = tr("Type the price as a number, such as 18.50.");
        if (currency.empty())
            errors[QStringLiteral("currency")] = tr("Type the currency, such as EUR.");
        std::ranges::replace(digits, ',', '.');
        part.price = job::TypedValue{digits, currency};
    }
    const bool wantsWhy =
        part.fitted == job::PartFit::FitsAfterChange || part.fitted == job::PartFit::DoesNotFit;
    if (wantsWhy && part.fit.empty())
        errors[QStringLiteral("fit")] = tr("Type why, such as \"pivot hole 1 mm too small\".");
    setErrors(errors);
    if (!errors.isEmpty())
        return;
    session()->say({journal::partStated(jobId(), part)},
                   {.undoText = tr("Part kept"), .form = draft->property("form").toString()},
                   [this, self = QPointer(this), draft = QPointer(draft)](const Entries& said) {
                       if (!said || self == nullptr || draft == nullptr)
                           return;
                       draft->said();
                       emit kept();
                   });
}

} // namespace undercowl::ui
