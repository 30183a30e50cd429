#include "qml/sheets/sheetsview.h"

#include "core/store/sheets.h"
#include "qml/shell/words.h"

#include <QDir>
#include <QFile>
#include <QPointer>
#include <QSaveFile>

#include <algorithm>

namespace undercowl::ui {

namespace {

constexpr qint64 largestFile = 64 * 1024 * 1024;

using Files = std::vector<std::pair<std::string, std::string>>;

// On the worker: each file whole or as it was.
Result<QStringList> save(const Files& files, const QString& folder) {
    QStringList names;
    for (const auto& [name, bytes] : files) {
        QSaveFile file(QDir(folder).filePath(text(name)));
        const auto size = static_cast<qint64>(bytes.size());
        if (!QDir().mkpath(folder) || !file.open(QIODevice::WriteOnly) ||
            file.write(bytes.data(), size) != size || !file.commit())
            return tl::unexpected(store::Problem{
                store::Fault::InputOutput, SheetsView::tr("%1 cannot be written. Make room, and try again.")
                                               .arg(file.fileName())
                                               .toStdString()});
        names += text(name);
    }
    return names;
}

} // namespace

QString SheetsView::folder() const {
    return session_ == nullptr ? QString() : text(session_->folder().string()) + QStringLiteral("-sheets");
}

void SheetsView::write() {
    session_->ask(
        this,
        [folder = folder()](ShopStore& store) -> Result<QStringList> {
            const auto files = store::sheetsOf(store);
            if (!files)
                return tl::unexpected(files.error());
            return save(*files, folder);
        },
        [this](const Result<QStringList>& names) {
            if (!names)
                return session_->report(names.error());
            files_ = *names;
            emit changed();
        });
}

void SheetsView::show(const journal::SheetPlan& plan) {
    std::vector<Line> lines;
    for (const journal::SheetLine& line : plan.lines) {
        QStringList problems;
        for (const std::string& problem : line.problems)
            problems += coreWords(problem);
        lines.push_back(
            {.id = QString::number(line.line),
             .title = tr("Line %1: %2")
                          .arg(line.line)
                          .arg(line.problems.empty() ? coreWords(line.says) : tr("cannot be brought in")),
             .detail = problems.join(u'\n'),
             .mark = !line.problems.empty() ? QStringLiteral("wrong")
                     : line.drafts.empty()  ? QStringLiteral("passed")
                                            : QString()});
    }
    lines_.setLines(std::move(lines));
    drafts_ = plan.drafts();
    ready_ = static_cast<int>(std::ranges::count_if(plan.lines, [](const journal::SheetLine& line) {
        return line.problems.empty() && !line.drafts.empty();
    }));
    QStringList unknown;
    for (const std::string& column : plan.unknown)
        unknown += text(column);
    unknown_ = unknown.join(QStringLiteral(", "));
    emit changed();
}

void SheetsView::forget() {
    error_.clear();
    broughtIn_ = 0;
    show({});
}

void SheetsView::look(const QString& path) {
    forget();
    QFile file(path.trimmed());
    if (!file.open(QIODevice::ReadOnly) || file.size() > largestFile) {
        error_ = tr("This file cannot be read: %1").arg(path);
        emit changed();
        return;
    }
    session_->ask(
        this,
        [bytes = file.readAll().toStdString(), year = static_cast<int>(dayOf(session_->now()).year()),
         now = session_->now()](ShopStore& store) {
            return store::planOf(store, bytes, year, [now] { return journal::newId(now); });
        },
        [this](const Result<journal::SheetPlan>& plan) {
            if (plan)
                return show(*plan);
            error_ = coreWords(plan.error().message);
            emit changed();
        });
}

void SheetsView::bringIn() {
    if (busy_ || drafts_.empty())
        return;
    busy_ = true;
    session_->say(drafts_, {.undoText = tr("Brought in: %1").arg(ready_), .form = {}},
                  [this, self = QPointer(this)](const Entries& said) {
                      if (self == nullptr)
                          return;
                      busy_ = false;
                      if (!said)
                          return;
                      const int all = ready_;
                      show({});
                      broughtIn_ = all;
                      emit changed();
                  });
}

} // namespace undercowl::ui
