#include "qml/knowledge/knowledgeview.h"

#include "core/store/knowing.h"
#include "qml/shell/words.h"

#include <QDir>
#include <QPointer>
#include <QSaveFile>

#include <array>
#include <set>

namespace undercowl::ui {

namespace {

QString kindWords(job::FactKind kind) {
    const std::array words{KnowledgeView::tr("limit"),      KnowledgeView::tr("torque"),
                           KnowledgeView::tr("part"),       KnowledgeView::tr("wiring map"),
                           KnowledgeView::tr("adjustment"), KnowledgeView::tr("finding"),
                           KnowledgeView::tr("time")};
    return words.at(static_cast<std::size_t>(kind));
}

QString heldIn(const job::Fact& fact) {
    return KnowledgeView::tr("held in jobs: %1").arg(fact.seen.size());
}

// What goes into the job stays in the language that it was taken over in, as if it had been typed.
auto takenWords(const job::Fact& fact) {
    const QString lookHere = KnowledgeView::tr("typical of this model, look whether it is so here");
    const QString record = KnowledgeView::tr("this shop's record");
    return journal::TakenWords{kindWords(fact.kind).toStdString(), heldIn(fact).toStdString(),
                               lookHere.toStdString(), record.toStdString()};
}

Line lineOf(const job::Fact& fact, std::size_t place) {
    QStringList more{kindWords(fact.kind)};
    if (!fact.source.empty())
        more += text(fact.source);
    more += heldIn(fact);
    return {.id = QString::number(place),
            .title = text(fact.what),
            .detail = coreWords(fact.says),
            .more = more.join(QStringLiteral(" · ")),
            .mark = text(job::code(fact.kind))};
}

// "marrowin-tern-125": nothing of a typed name but letters, digits and hyphens gets into a file's name.
QString fileName(const QString& words) {
    QString name;
    for (const QChar letter : words.toLower())
        name += letter.isLetterOrNumber() ? letter : QChar(u'-');
    return name.left(60) + QStringLiteral(".json");
}

} // namespace

QString KnowledgeView::title() const {
    return (make_ + u' ' + model_).trimmed();
}

void KnowledgeView::componentComplete() {
    const auto snapshot = session_->snapshot();
    Id own;
    if (snapshot != nullptr) {
        const auto& machine = snapshot->machine;
        if (make_.isEmpty() && model_.isEmpty()) {
            make_ = text(machine.make);
            model_ = text(machine.model);
            own = snapshot->job.id;
        }
        offered_ = job::sameModel(machine.make, machine.model, make_.toStdString(), model_.toStdString());
    }
    session_->ask(
        this,
        [make = make_.toStdString(), model = model_.toStdString(), own,
         now = session_->now()](ShopStore& store) -> Result<job::ModelKnowledge> {
            const auto entries = store.shopEntries();
            if (!entries)
                return tl::unexpected(entries.error());
            return store::knowledgeOf(store, *entries, make, model, now, own);
        },
        [this](const Result<job::ModelKnowledge>& known) {
            if (known)
                show(*known);
            else
                session_->report(known.error());
        });
}

void KnowledgeView::show(job::ModelKnowledge known) {
    known_ = std::move(known);
    ready_ = true;
    std::vector<Line> lines;
    std::set<const job::Fact*> told;
    const auto add = [&](const job::Fact& fact) {
        if (told.insert(&fact).second)
            lines.push_back(lineOf(fact, static_cast<std::size_t>(&fact - known_.facts.data())));
    };
    for (const auto& group : job::contradictions(known_)) {
        lines.push_back({.id = QStringLiteral("!") + QString::number(lines.size()),
                         .title = tr("Does not agree: %1").arg(text(group.front()->what)),
                         .mark = QStringLiteral("contradiction")});
        for (const job::Fact* fact : group)
            add(*fact);
    }
    if (!told.empty() && told.size() < known_.facts.size())
        lines.push_back(
            {.id = QStringLiteral("rest"), .title = tr("The rest"), .mark = QStringLiteral("rest")});
    for (const job::Fact& fact : known_.facts)
        add(fact);
    facts_.setLines(std::move(lines));
    emit changed();
}

void KnowledgeView::takeOver(const QString& fact) {
    bool whole = false;
    const int place = fact.toInt(&whole);
    const auto job = session_->job();
    if (!whole || place < 0 || place >= static_cast<int>(known_.facts.size()) || job == nullptr || !offered_)
        return;
    const auto& taken = known_.facts[static_cast<std::size_t>(place)];
    session_->say(journal::takenOver(*job, taken, takenWords(taken), [this] { return session_->newId(); }),
                  {.undoText = tr("Taken over: %1").arg(text(taken.what)), .form = {}});
}

void KnowledgeView::write() {
    const QString folder = text(session_->folder().string()) + QStringLiteral("-knowledge");
    const QString path = QDir(folder).filePath(fileName(title()));
    const std::string bytes = journal::knowledgeFile(known_);
    QSaveFile whole(path);
    if (!QDir().mkpath(folder) || !whole.open(QIODevice::WriteOnly) ||
        whole.write(bytes.data(), static_cast<qint64>(bytes.size())) != static_cast<qint64>(bytes.size()) ||
        !whole.commit()) {
        session_->tell(tr("%1 cannot be written. Make room, and try again.").arg(path));
        return;
    }
    file_ = path;
    emit changed();
}

} // namespace undercowl::ui
