#include "qml/find/finder.h"

#include "qml/shell/words.h"

#include <utility>

namespace undercowl::ui {

namespace {

constexpr std::size_t mostHits = 400; // that are filtered
constexpr std::size_t mostLines = 50; // that are shown
constexpr int kindCount = static_cast<int>(store::HitKind::Photo) + 1;
constexpr job::TimeMs msPerDay = job::TimeMs{24} * 60 * 60 * 1000;

QString kindWords(store::HitKind kind) {
    switch (kind) {
    case store::HitKind::Machine: return Finder::tr("machine");
    case store::HitKind::Owner: return Finder::tr("owner");
    case store::HitKind::Job: return Finder::tr("job");
    case store::HitKind::Finding: return Finder::tr("finding");
    case store::HitKind::Step: return Finder::tr("strip step");
    case store::HitKind::Wire: return Finder::tr("wire");
    case store::HitKind::Part: return Finder::tr("part");
    case store::HitKind::Reading: return Finder::tr("reading");
    case store::HitKind::Memo: return Finder::tr("memo");
    case store::HitKind::Photo: return Finder::tr("photo");
    }
    return {};
}

} // namespace

void Finder::setWords(const QString& words) {
    if (words_ == words)
        return;
    words_ = words;
    searched_ = false;
    emit wordsChanged();
    emit searchedChanged();
    const int number = ++wanted_;
    if (words_.trimmed().isEmpty()) {
        found_.clear();
        show();
        return;
    }
    session_->ask(
        this,
        [text = utf8(words_), known = jobLines_](ShopStore& store) { return search(store, text, known); },
        [this, number](const Result<Answer>& found) {
            if (number != wanted_)
                return;
            if (!found) {
                session_->report(found.error());
                return;
            }
            found_ = found->found;
            jobLines_ = found->jobs;
            show();
            searched_ = true;
            emit searchedChanged();
        });
}

Result<Finder::Answer> Finder::search(const ShopStore& store, const std::string& words, JobLines known) {
    auto hits = store.find(words, mostHits);
    if (!hits)
        return tl::unexpected(hits.error());
    if (known == nullptr) {
        const auto jobs = store.jobs();
        if (!jobs)
            return tl::unexpected(jobs.error());
        auto lines = std::make_shared<std::map<Id, store::JobLine>>();
        for (const store::JobLine& line : *jobs)
            lines->emplace(line.id, line);
        known = lines;
    }
    Answer answer{{}, known};
    answer.found.reserve(hits->size());
    for (store::Hit& hit : *hits) {
        const auto line = known->find(hit.job);
        answer.found.push_back(
            {std::move(hit), line == known->end() ? std::nullopt : std::optional(line->second)});
    }
    return answer;
}

bool Finder::passes(const Found& found) const {
    if (kind_ > 0 && static_cast<int>(found.hit.kind) != kind_ - 1)
        return false;
    if (!machine_.isEmpty() && text(found.hit.machine) != machine_)
        return false;
    if (severity_ > 0 && (!found.hit.severity || static_cast<int>(*found.hit.severity) != severity_ - 1))
        return false;
    if (state_ == 0 && age_ == 0 && waits_ == 0)
        return true;
    if (!found.job)
        return false;
    const bool done = found.job->moment == job::Moment::Done;
    if ((state_ == 1 && done) || (state_ == 2 && !found.job->waiting) ||
        (state_ == 3 && found.job->openUnsafe == 0) || (state_ == 4 && !done))
        return false;
    if (waits_ > 0 && static_cast<int>(found.job->waits.what) != waits_ - 1)
        return false;
    return age_ == 0 || found.job->lastAt >= session_->now() - age_ * msPerDay;
}

void Finder::show() {
    std::vector<Line> lines;
    shown_.clear();
    machines_.clear();
    for (const Found& found : found_) {
        const store::Hit& hit = found.hit;
        const QString machine = text(hit.machine);
        if (!machine.isEmpty() && !machines_.contains(machine))
            machines_ += machine;
        if (lines.size() == mostLines || !passes(found))
            continue;
        QString around = text(hit.connector); // its wires are called alike in every connector
        if (around.isEmpty())
            around = text(hit.snippet).remove(u'[').remove(u']');
        lines.push_back({.id = QString::number(lines.size()),
                         .title = text(hit.title),
                         .detail = around == text(hit.title) ? QString() : around,
                         .more = machine,
                         .aside = kindWords(hit.kind)});
        shown_.push_back(static_cast<std::size_t>(&found - found_.data()));
    }
    hits_.setLines(std::move(lines));
}

template<typename Value>
void Finder::set(Value& filter, const Value& value) {
    if (filter == value)
        return;
    filter = value;
    show();
    emit filtersChanged();
}

void Finder::setKind(int kind) {
    set(kind_, kind);
}

void Finder::setSeverity(int severity) {
    set(severity_, severity);
}

void Finder::setWaits(int waits) {
    set(waits_, waits);
}

void Finder::setState(int state) {
    set(state_, state);
}

void Finder::setAge(int days) {
    set(age_, days);
}

void Finder::setMachine(const QString& machine) {
    set(machine_, machine);
}

QStringList Finder::waitings() const {
    QStringList all{tr("anything")};
    for (int waits = 0; waits < static_cast<int>(job::Waits::Nothing); ++waits)
        all += ui::words(static_cast<job::Waits>(waits));
    return all;
}

QStringList Finder::kinds() const {
    QStringList all{tr("everything")};
    for (int kind = 0; kind < kindCount; ++kind)
        all += kindWords(static_cast<store::HitKind>(kind));
    return all;
}

bool Finder::filtered() const {
    return kind_ != 0 || severity_ != 0 || waits_ != 0 || state_ != 0 || age_ != 0 || !machine_.isEmpty();
}

QVariantMap Finder::pageOf(int row) const {
    QString page = QStringLiteral("JobPage");
    QVariantMap properties;
    if (row >= 0 && static_cast<std::size_t>(row) < shown_.size()) {
        const store::Hit& hit = found_[shown_[static_cast<std::size_t>(row)]].hit;
        const auto on = [&](const char* name, const char* what) {
            page = QLatin1String(name);
            properties.insert(QLatin1String(what), text(hit.subject));
        };
        switch (hit.kind) {
        case store::HitKind::Finding: on("FindingPage", "finding"); break;
        case store::HitKind::Step: on("StripPage", "step"); break;
        case store::HitKind::Wire: on("GatheringPage", "gathering"); break;
        case store::HitKind::Part: on("PartPage", "part"); break;
        case store::HitKind::Reading: page = QStringLiteral("ReadingsPage"); break;
        case store::HitKind::Machine:
        case store::HitKind::Owner:
        case store::HitKind::Job:
        case store::HitKind::Memo:
        case store::HitKind::Photo: break;
        }
    }
    return {{QStringLiteral("page"), page}, {QStringLiteral("properties"), properties}};
}

QString Finder::jobOf(int row) const {
    if (row < 0 || static_cast<std::size_t>(row) >= shown_.size())
        return {};
    return text(found_[shown_[static_cast<std::size_t>(row)]].hit.job);
}

} // namespace undercowl::ui
