// A machine that was here before: found by its frame number, linked to the job that it comes back from.
#include "core/job/text.h"
#include "qml/shell/words.h"
#include "qml/takein/takein.h"

#include <algorithm>

namespace undercowl::ui {

namespace {

constexpr qsizetype shortestFrame = 4; // letters: fewer are still being typed

// Blanks and hyphens do not tell frame numbers apart.
std::string bare(std::string_view number) {
    std::string letters = job::lowered(number);
    std::erase_if(letters, [](char c) { return c == ' ' || c == '-' || c == '.'; });
    return letters;
}

struct Before {
    store::JobLine line;
    job::Machine machine;
    job::Owner owner;
};

Result<std::vector<Before>> jobsBefore(const ShopStore& store, const std::string& frame) {
    const auto jobs = store.jobs();
    if (!jobs)
        return tl::unexpected(jobs.error());
    std::vector<Before> before;
    for (const store::JobLine& line : *jobs)
        if (bare(line.frameNumber) == frame) {
            const auto job = store.job(line.id);
            if (!job)
                return tl::unexpected(job.error());
            before.push_back({line, store.machine(job->machine).value_or(job::Machine{}),
                              store.owner(job->owner).value_or(job::Owner{})});
        }
    return before;
}

} // namespace

void TakeIn::lookForReturn(const QString& frame) {
    if (editing_ || frame.trimmed().size() < shortestFrame) {
        returns_.setLines({});
        return;
    }
    session_->ask(
        this, [wanted = bare(utf8(frame))](ShopStore& store) { return jobsBefore(store, wanted); },
        [this](const Result<std::vector<Before>>& before) {
            if (!before)
                return session_->report(before.error());
            std::vector<Line> lines;
            known_.clear();
            for (const Before& one : *before) {
                const QString id = text(one.line.id);
                lines.push_back(
                    {.id = id,
                     .title = tr("Comes back from %1").arg(text(one.line.number)),
                     .detail = text(one.line.machine) + QStringLiteral(" · ") + text(one.line.owner),
                     .more = text(one.line.reason),
                     .aside = when(one.line.lastAt, session_->now()),
                     .on = draft_->text(QStringLiteral("returned")) == id});
                known_[id] = QVariantMap{{QStringLiteral("returned"), id},
                                         {QStringLiteral("returnedMachine"), text(one.machine.id)},
                                         {QStringLiteral("returnedOwner"), text(one.owner.id)},
                                         {QStringLiteral("make"), text(one.machine.make)},
                                         {QStringLiteral("model"), text(one.machine.model)},
                                         {QStringLiteral("year"),
                                          one.machine.year ? QString::number(*one.machine.year) : QString()},
                                         {QStringLiteral("notes"), text(one.machine.notes)},
                                         {QStringLiteral("owner"), text(one.owner.name)},
                                         {QStringLiteral("phone"), text(one.owner.phone)},
                                         {QStringLiteral("mail"), text(one.owner.mail)},
                                         {QStringLiteral("address"), text(one.owner.address)}};
            }
            returns_.setLines(std::move(lines));
        });
}

// What is known of it is filled in where nothing was typed.
void TakeIn::comesBackFrom(const QString& job) {
    const auto known = known_.value(job).toMap();
    for (auto value = known.begin(); value != known.end(); ++value)
        if (value.key().startsWith(QStringLiteral("returned")) || draft_->text(value.key()).isEmpty())
            draft_->set(value.key(), value.value());
    auto lines = returns_.lines();
    for (Line& line : lines)
        line.on = line.id == job;
    returns_.setLines(std::move(lines));
}

} // namespace undercowl::ui
