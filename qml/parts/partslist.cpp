#include "qml/parts/partslist.h"

#include "core/journal/say.h"
#include "qml/shell/words.h"

#include <QPointer>

#include <algorithm>
#include <array>

namespace undercowl::ui {

namespace {

constexpr std::array states{job::PartState::Wanted,   job::PartState::Asked, job::PartState::Ordered,
                            job::PartState::Here,     job::PartState::Wrong, job::PartState::Fitted,
                            job::PartState::NotNeeded};

const job::Part* byId(const job::Job& job, const std::string& id) {
    const auto found = std::ranges::find(job.parts, id, &job::Part::id);
    return found == job.parts.end() ? nullptr : &*found;
}

} // namespace

void PartsList::show(const Snapshot& snapshot) {
    auto parts = snapshot.job.parts;
    std::ranges::stable_sort(parts, {}, [](const job::Part& part) { return !job::outstanding(part); });
    std::vector<Line> lines;
    for (const auto& part : parts) {
        QStringList detail{text(part.number), text(part.supplier), text(part.note)};
        detail.removeAll(QString());
        lines.push_back({.id = text(part.id),
                         .title = text(part.name),
                         .detail = detail.join(QStringLiteral(" · ")),
                         .aside = words(part.state),
                         .mark = text(job::code(part.state)),
                         .on = part.state == job::PartState::Fitted});
    }
    parts_.setLines(std::move(lines));
}

QStringList PartsList::states() const {
    QStringList list;
    for (const auto state : ui::states)
        list << words(state);
    return list;
}

void PartsList::add(FormDraft* draft) {
    job::Part part;
    part.id = session()->newId();
    part.name = utf8(draft->text(QStringLiteral("name")));
    part.number = utf8(draft->text(QStringLiteral("number")));
    part.note = utf8(draft->text(QStringLiteral("note")));
    part.state = job::PartState::Wanted;
    if (part.name.empty()) {
        setErrors({{QStringLiteral("name"), tr("Type what part it is, such as \"front brake hose\".")}});
        return;
    }
    setErrors({});
    session()->say({journal::partStated(jobId(), part)},
                   {.undoText = tr("Part kept"), .form = draft->property("form").toString()},
                   [this, self = QPointer(this), draft = QPointer(draft)](const Entries& said) {
                       if (!said || self == nullptr || draft == nullptr)
                           return;
                       draft->said();
                       emit added();
                   });
}

int PartsList::stateOf(const QString& part) const {
    const auto now = snapshot();
    const auto* known = now == nullptr ? nullptr : byId(now->job, part.toStdString());
    return known == nullptr ? -1 : static_cast<int>(known->state);
}

void PartsList::setState(const QString& part, int state) {
    const auto now = snapshot();
    const auto* known = now == nullptr ? nullptr : byId(now->job, part.toStdString());
    if (known == nullptr || state < 0 || state >= static_cast<int>(ui::states.size()))
        return;
    job::Part changed = *known;
    changed.state = ui::states.at(static_cast<std::size_t>(state));
    session()->say({journal::partStated(jobId(), changed)}, {.undoText = words(changed.state), .form = {}});
}

} // namespace undercowl::ui
