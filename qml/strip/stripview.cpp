#include "qml/strip/stripview.h"

#include "core/job/cautions.h"
#include "core/journal/say.h"
#include "core/units/parse.h"
#include "qml/shell/words.h"
#include "qml/wiring/gatherings.h"

#include <QCoreApplication>
#include <QPointer>

#include <algorithm>
#include <string_view>
#include <unordered_map>

namespace undercowl::ui {

namespace {

QString cautionWords(std::string_view key) {
    const std::string english(job::englishCaution(key));
    return coreWords(english);
}

bool names(const std::vector<std::string>& keys, std::string_view key) {
    return std::ranges::find(keys, key) != keys.end();
}

// The file of the first photo of each thing that photos are about, in one go: a job may have hundreds of
// steps.
std::unordered_map<std::string_view, std::string_view> firstPhotos(const job::Job& job) {
    std::unordered_map<std::string_view, std::string_view> files;
    for (const job::Photo& photo : job.photos)
        files.try_emplace(photo.about, photo.media);
    return files;
}

} // namespace

QString StripView::form() const {
    return corrects_.isEmpty() ? QStringLiteral("strip/%1").arg(text(jobId()))
                               : QStringLiteral("strip/%1/%2").arg(text(jobId()), corrects_);
}

void StripView::show(const Snapshot& snapshot) {
    if (!asked_) {
        asked_ = true;
        session()->restoreDraft(this, form(), [this](const QByteArray& json) { restore(json); });
    }
    const auto photos = firstPhotos(snapshot.job);
    std::vector<Line> steps;
    for (auto step = snapshot.job.steps.rbegin(); step != snapshot.job.steps.rend(); ++step) {
        const auto photo = photos.find(step->id);
        steps.push_back({.id = text(step->id),
                         .title = text(step->title),
                         .detail = hardwareText(*step),
                         .aside = QString::number(step->order),
                         .picture = photo == photos.end() ? QUrl() : session()->mediaUrl(text(photo->second)),
                         .on = step->refitted.has_value()});
    }
    steps_.setLines(std::move(steps));
    showDraft();
}

void StripView::restore(const QByteArray& json) {
    const auto now = snapshot();
    if (now == nullptr)
        return;
    draft_ = stripDraftFromJson(json);
    const auto* said = job::findStep(now->job, draft_.step.id);
    // A step that was said and whose draft stayed behind is not said twice.
    if (draft_.step.id.empty() || (corrects_.isEmpty() && said != nullptr))
        begin(*now);
    begun_ = true;
    showDraft();
    emit changed();
}

void StripView::begin(const Snapshot& snapshot) {
    draft_ = {};
    if (const auto* step = job::findStep(snapshot.job, corrects_.toStdString())) {
        draft_.step = *step;
        const auto fromTitle = job::cautionsFor(step->title);
        for (const std::string& key : step->cautions)
            if (!names(fromTitle, key))
                draft_.addedCautions.push_back(key);
        return;
    }
    draft_.step.id = session()->newId();
    if (!snapshot.job.steps.empty()) // the work goes on with the same task
        draft_.step.task = snapshot.job.steps.back().task;
}

void StripView::showDraft() {
    std::vector<Line> hardware;
    for (std::size_t i = 0; i < draft_.step.hardware.size(); ++i) {
        const job::Hardware& one = draft_.step.hardware[i];
        hardware.push_back({.id = QString::number(i),
                            .title = hardwareText(one),
                            .detail = one.torque ? numberText(one.torque->digits) + QChar(QChar::Nbsp) +
                                                       text(one.torque->unit)
                                                 : QString(),
                            .on = !one.at.empty()});
    }
    hardware_.setLines(std::move(hardware));
    std::vector<Line> photos;
    std::vector<Line> wires;
    if (const auto now = snapshot(); now != nullptr && !draft_.step.id.empty()) {
        const auto about = job::photosAbout(now->job, draft_.step.id);
        for (auto photo = about.rbegin(); photo != about.rend(); ++photo)
            photos.push_back(
                {.id = text((*photo)->id),
                 .title = (*photo)->note.empty() ? words((*photo)->purpose) : text((*photo)->note),
                 .picture = session()->mediaUrl(text((*photo)->media))});
        for (const auto& gathering : now->job.gatherings)
            if (gathering.step == draft_.step.id)
                wires.push_back({.id = text(gathering.id),
                                 .title = text(gathering.title),
                                 .detail = progressOf(gathering)});
    }
    photos_.setLines(std::move(photos));
    if (shownPhoto_ >= photos_.count() || piece_ < 0)
        shownPhoto_ = 0;
    wires_.setLines(std::move(wires));
}

void StripView::changedDraft() {
    if (!begun_)
        return;
    session()->keepDraft({form(), corrects_.isEmpty() ? tr("Strip step") : tr("Correction of a strip step"),
                          jobId(), session()->now()},
                         toJson(draft_));
    showDraft();
    emit changed();
}

int StripView::number() const {
    const auto now = snapshot();
    if (now == nullptr)
        return 1;
    const auto& steps = now->job.steps;
    const auto at = std::ranges::find(steps, draft_.step.id, &job::StripStep::id);
    return static_cast<int>(at - steps.begin()) + 1;
}

QString StripView::title() const {
    return text(draft_.step.title);
}

QString StripView::bag() const {
    return text(draft_.step.bag);
}

QString StripView::note() const {
    return text(draft_.step.note);
}

QStringList StripView::cautions() const {
    QStringList all;
    for (const std::string& key : cautionsOf(draft_))
        all += cautionWords(key);
    return all;
}

QStringList StripView::otherCautions() const {
    const auto named = cautionsOf(draft_);
    QStringList all;
    for (const job::Caution& caution : job::cautions())
        if (!names(named, caution.key))
            all += cautionWords(caution.key);
    return all;
}

QStringList StripView::tasks() const {
    QStringList all;
    if (const auto now = snapshot())
        for (const job::Task& task : now->job.tasks)
            all += text(task.title);
    if (!draft_.newTask.empty())
        all += text(draft_.newTask);
    return all;
}

int StripView::task() const {
    const auto now = snapshot();
    if (now == nullptr)
        return -1;
    const auto& tasks = now->job.tasks;
    if (!draft_.newTask.empty())
        return static_cast<int>(tasks.size());
    const auto at = std::ranges::find(tasks, draft_.step.task, &job::Task::id);
    return at == tasks.end() ? -1 : static_cast<int>(at - tasks.begin());
}

QUrl StripView::photo() const {
    return photos_.count() == 0 ? QUrl() : photos_.lines()[static_cast<std::size_t>(shownPhoto_)].picture;
}

QString StripView::bagsInUse() const {
    QStringList bags;
    if (const auto now = snapshot())
        for (const job::StripStep& step : now->job.steps)
            if (!step.bag.empty() && !step.refitted && step.id != draft_.step.id &&
                !bags.contains(text(step.bag)))
                bags += text(step.bag);
    return bags.join(QStringLiteral(", "));
}

QString StripView::claim() {
    if (corrects_.isEmpty()) { // the id of a step that was said is safe
        changedDraft();
        session()->flush();
    }
    return text(draft_.step.id);
}

void StripView::setTitle(const QString& title) {
    if (text(draft_.step.title) == title)
        return;
    draft_.step.title = title.toStdString();
    changedDraft();
}

void StripView::setNote(const QString& note) {
    if (text(draft_.step.note) == note)
        return;
    draft_.step.note = note.toStdString();
    changedDraft();
}

void StripView::setBag(const QString& bag) {
    if (draft_.step.bag == utf8(bag))
        return;
    draft_.step.bag = utf8(bag);
    changedDraft();
}

void StripView::addHardware(int count, const QString& what, const QString& thread, const QString& length,
                            const QString& torque) {
    QVariantMap errors;
    if (utf8(what).empty())
        errors[QStringLiteral("hardware")] = tr("Choose or type what it is, such as \"screw\".");
    job::Hardware hardware{std::max(1, count), utf8(what), utf8(thread), utf8(length), std::nullopt};
    if (!torque.trimmed().isEmpty()) {
        const auto typed =
            units::parseQuantity(utf8(torque), units::Dimension::Torque,
                                 units::unit(units::Dimension::Torque, "N.m"), units::Comma::Decimal);
        if (!typed)
            errors[QStringLiteral("torque")] = coreWords(typed.error().message);
        else
            hardware.torque =
                job::TypedValue{QString::fromStdString(typed->number.text).replace(u',', u'.').toStdString(),
                                typed->unit.symbol()};
    }
    setErrors(errors);
    if (!errors.isEmpty())
        return;
    draft_.step.hardware.push_back(std::move(hardware));
    changedDraft();
}

void StripView::removeHardware(int index) {
    if (index < 0 || index >= static_cast<int>(draft_.step.hardware.size()))
        return;
    draft_.step.hardware.erase(draft_.step.hardware.begin() + index);
    piece_ = -1;
    changedDraft();
}

void StripView::addCaution(int index) {
    const auto named = cautionsOf(draft_);
    for (const job::Caution& caution : job::cautions())
        if (!names(named, caution.key) && index-- == 0) {
            draft_.addedCautions.emplace_back(caution.key);
            changedDraft();
            return;
        }
}

void StripView::chooseTask(int index) {
    const auto now = snapshot();
    if (now == nullptr || index > static_cast<int>(now->job.tasks.size()))
        return;
    if (index == static_cast<int>(now->job.tasks.size()))
        return; // the task that is named with this step
    draft_.newTask.clear();
    draft_.step.task = index < 0 ? Id{} : now->job.tasks[static_cast<std::size_t>(index)].id;
    changedDraft();
}

void StripView::nameTask(const QString& title) {
    draft_.newTask = utf8(title);
    draft_.step.task.clear();
    changedDraft();
}

void StripView::keep() {
    const auto now = snapshot();
    if (now == nullptr || !begun_ || saying_)
        return;
    job::StripStep step = draft_.step;
    step.title = utf8(text(step.title));
    step.note = utf8(text(step.note));
    if (step.title.empty()) {
        setErrors(
            {{QStringLiteral("title"), tr("Type what was done, such as \"unplug 6-place connector\".")}});
        return;
    }
    setErrors({});
    step.cautions = cautionsOf(draft_);
    std::vector<journal::Draft> drafts;
    if (!draft_.newTask.empty()) {
        const job::Task task{session()->newId(), draft_.newTask, false, {}, 0};
        step.task = task.id;
        drafts.push_back(journal::taskNamed(jobId(), task));
    }
    const Id supersedes = corrects_.isEmpty() ? Id{} : step.said.entry;
    drafts.push_back(journal::stepStripped(jobId(), step, supersedes));
    saying_ = true;
    emit changed();
    session()->say(std::move(drafts),
                   {.undoText = corrects_.isEmpty() ? tr("Step %1 kept").arg(number()) : tr("Step corrected"),
                    .form = form()},
                   [self = QPointer(this)](const Entries& said) {
                       if (self == nullptr)
                           return;
                       self->saying_ = false;
                       if (const auto fresh = self->snapshot(); said && fresh != nullptr) {
                           self->begin(*fresh);
                           self->showDraft();
                       }
                       emit self->changed();
                       if (said)
                           emit self->kept();
                   });
}

} // namespace undercowl::ui
