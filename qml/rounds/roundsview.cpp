#include "qml/rounds/roundsview.h"

#include "core/journal/rounds.h"
#include "core/journal/saywork.h"
#include "qml/rounds/checkwalk.h"
#include "qml/shell/words.h"

#include <QPointer>

#include <algorithm>
#include <array>

namespace undercowl::ui {

void RoundsView::show(const Snapshot& snapshot) {
    std::vector<Line> lines;
    unfinished_.clear();
    unfinishedToGo_.clear();
    for (const job::Round& round : snapshot.job.rounds) {
        const auto with = [&](std::optional<job::CheckAnswer> answer) {
            return static_cast<int>(std::ranges::count(round.checks, answer, &job::RoundCheck::answer));
        };
        const int open = with(std::nullopt);
        QStringList detail;
        if (open > 0) {
            detail += tr("%1 of %2 to go").arg(open).arg(round.checks.size());
            unfinished_ = text(round.id);
            unfinishedToGo_ = detail.back();
        }
        if (const int found = with(job::CheckAnswer::Found); found > 0)
            detail += tr("findings: %1").arg(found);
        if (const int left = with(job::CheckAnswer::NotDone); left > 0)
            detail += tr("not done: %1").arg(left);
        if (detail.isEmpty())
            detail += tr("all fine");
        lines.push_back({.id = text(round.id),
                         .title = roundTitle(round.title),
                         .detail = detail.join(QStringLiteral(" · ")),
                         .aside = when(round.said.at, session()->now()),
                         .on = open == 0});
    }
    begun_.setLines(std::move(lines));
    emit begunChanged();
}

void RoundsView::begin(const QStringList& traits) {
    if (beginning_ || jobId().empty())
        return;
    beginning_ = true;
    std::vector<std::string> has;
    for (const QString& trait : traits)
        has.push_back(trait.toStdString());
    const Id id = session()->newId();
    session()->sayFrom(
        [has, id, job = jobId()](ShopStore& store) -> Entries {
            const auto lists = store.roundLists();
            if (!lists)
                return tl::unexpected(lists.error());
            job::Round round = journal::composed(*lists, has);
            if (round.checks.empty())
                return tl::unexpected(store::Problem{
                    store::Fault::Refused,
                    tr("The shop's lists hold no check for this machine: add some in Settings.")
                        .toStdString()});
            round.id = id;
            return store.append(std::array{journal::roundBegun(job, round)});
        },
        {.undoText = tr("Round begun"), .form = {}},
        [this, self = QPointer(this), id](const Entries& said) {
            if (self == nullptr)
                return;
            beginning_ = false;
            if (said)
                emit roundBegun(text(id));
        });
}

} // namespace undercowl::ui
