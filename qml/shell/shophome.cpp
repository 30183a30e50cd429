#include "qml/shell/shophome.h"

#include "qml/shell/draftpages.h"
#include "qml/shell/words.h"

#include <algorithm>
#include <optional>

namespace undercowl::ui {

namespace {

constexpr std::size_t doneShown = 30; // of those that were handed over; older ones are found by their words

} // namespace

void ShopHome::componentComplete() {
    connect(session_, &ShopSession::jobsChanged, this, [this] {
        stale_ = true;
        if (active_)
            refresh();
    });
    connect(session_, &ShopSession::languageChanged, this, &ShopHome::refresh);
    connect(session_, &ShopSession::stateChanged, this, &ShopHome::refresh);
    connect(session_, &ShopSession::draftsChanged, this, &ShopHome::showDrafts);
    refresh();
    showDrafts();
}

void ShopHome::setActive(bool active) {
    if (active_ == active)
        return;
    active_ = active;
    emit activeChanged();
    if (active_ && stale_ && session_ != nullptr)
        refresh();
}

void ShopHome::refresh() {
    stale_ = false;
    session_->ask(
        this, [](ShopStore& store) { return store.jobs(doneShown); },
        [this](const Result<std::vector<store::JobLine>>& read) {
            if (read)
                show(*read);
            else
                session_->report(read.error());
        });
}

void ShopHome::show(const std::vector<store::JobLine>& read) {
    const auto last = std::ranges::find_if(
        read, [](const store::JobLine& job) { return job.waits.what != job::Waits::Nothing; });
    lastJobId_ = last == read.end() ? QString() : text(last->id);
    // In the order of what they wait for; within that, last worked on first.
    auto lines = read;
    std::ranges::stable_sort(lines, {}, [](const store::JobLine& job) { return job.waits.what; });
    std::optional<job::Waits> group;
    std::vector<Line> open;
    std::vector<Line> done;
    for (const auto& job : lines) {
        Line line;
        line.id = text(job.id);
        line.title = text(job.machine);
        if (line.title.isEmpty())
            line.title = tr("Machine not described yet");
        line.detail = words(job.stopped);
        line.more = words(job.waits.why.key.empty() ? job.next : job.waits.why);
        if (group != job.waits.what)
            line.group = words(job.waits.what);
        group = job.waits.what;
        line.aside = when(job.lastAt, session_->now());
        line.mark = job.openUnsafe > 0 ? QStringLiteral("unsafe")
                    : job.waiting      ? QStringLiteral("waiting")
                                       : QString();
        (job.waits.what == job::Waits::Nothing ? done : open).push_back(std::move(line));
    }
    jobs_.setLines(std::move(open));
    moreDone_ = done.size() >= doneShown;
    done_.setLines(std::move(done));
    ready_ = true;
    emit changed();
    showDrafts();
}

void ShopHome::showDrafts() {
    std::vector<Line> lines;
    for (const auto& draft : session_->waitingDrafts()) {
        if (draft.form.startsWith(u"calc/"))
            continue; // a calculation keeps what was typed last; nothing of it waits
        Line line;
        line.id = draft.form;
        line.title = draft.title;
        const auto job = std::ranges::find(jobs_.lines(), text(draft.job), &Line::id);
        line.detail = job == jobs_.lines().end() ? QString() : job->title;
        line.aside = when(draft.at, session_->now());
        lines.push_back(std::move(line));
    }
    drafts_.setLines(std::move(lines));
}

QString ShopHome::lastJobId() const {
    return lastJobId_;
}

QString ShopHome::lastMachine() const {
    const auto job = std::ranges::find(jobs_.lines(), lastJobId_, &Line::id);
    return job == jobs_.lines().end() ? QString() : job->title;
}

QString ShopHome::draftJob(const QString& form) const {
    const auto& waiting = session_->waitingDrafts();
    const auto draft = std::ranges::find(waiting, form, &WaitingDraft::form);
    return draft == waiting.end() ? QString() : text(draft->job);
}

QVariantMap ShopHome::draftPage(const QString& form) const {
    QVariantMap way = ui::draftPage(form);
    if (way.value(QStringLiteral("page")) == QLatin1String("MemoPage")) {
        QVariantMap properties = way.value(QStringLiteral("properties")).toMap();
        const auto line = std::ranges::find(drafts_.lines(), form, &Line::id);
        properties.insert(QStringLiteral("machine"),
                          line == drafts_.lines().end() ? QString() : line->detail);
        way.insert(QStringLiteral("properties"), properties);
    }
    return way;
}

void ShopHome::discardDraft(const QString& form) {
    session_->dropDraft(form);
}

} // namespace undercowl::ui
