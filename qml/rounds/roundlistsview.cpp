#include "qml/rounds/roundlistsview.h"

#include "qml/shell/words.h"

#include <QPointer>

#include <algorithm>
#include <array>

namespace undercowl::ui {

namespace {

std::size_t checksIn(const journal::RoundList& list) {
    std::size_t count = 0;
    for (const journal::RoundGroup& group : list.groups)
        count += group.checks.size();
    return count;
}

} // namespace

void RoundListsView::componentComplete() {
    connect(session_, &ShopSession::savingChanged, this, &RoundListsView::read); // an undo changes them too
    read();
}

void RoundListsView::read() {
    session_->ask(
        this, [](ShopStore& store) { return store.roundLists(); },
        [this](const Result<std::vector<journal::RoundList>>& lists) {
            if (lists)
                show(*lists);
            else
                session_->report(lists.error());
        });
}

const journal::RoundList* RoundListsView::chosen() const {
    const auto found = std::ranges::find(all_, key_.toStdString(), &journal::RoundList::key);
    return found == all_.end() ? nullptr : &*found;
}

QString RoundListsView::title() const {
    const auto* list = chosen();
    return list == nullptr ? QString() : knownWords(list->title);
}

void RoundListsView::show(std::vector<journal::RoundList> lists) {
    all_ = std::move(lists);
    const std::array uses{tr("looked over"), tr("tried at take-in"), tr("photographed at take-in")};
    std::vector<Line> lines;
    for (const journal::RoundList& list : all_)
        lines.push_back(
            {.id = text(list.key),
             .title = knownWords(list.title),
             .detail =
                 tr("checks: %1, %2").arg(checksIn(list)).arg(uses.at(static_cast<std::size_t>(list.use)))});
    lists_.setLines(std::move(lines));
    lines.clear();
    if (const auto* list = chosen())
        for (const journal::RoundGroup& group : list->groups)
            for (const std::string& check : group.checks)
                lines.push_back({.id = QString::number(lines.size()),
                                 .title = knownWords(check),
                                 .detail = knownWords(group.name)});
    checks_.setLines(std::move(lines));
    emit changed();
}

QString RoundListsView::groupOf(int place) const {
    const auto& lines = checks_.lines();
    return place >= 0 && place < static_cast<int>(lines.size())
               ? lines[static_cast<std::size_t>(place)].detail
               : QString();
}

void RoundListsView::keep(const journal::RoundList& list, const QString& undoText) {
    error_.clear();
    emit changed();
    session_->say({journal::roundKept(list)}, {.undoText = undoText, .form = {}},
                  [this, self = QPointer(this)](const Entries& said) {
                      if (said && self != nullptr)
                          emit kept();
                  });
}

void RoundListsView::add(const QString& group, const QString& check) {
    const auto* list = chosen();
    if (list == nullptr)
        return;
    std::string name = utf8(group);
    const std::string words = utf8(check);
    if (words.empty() || name.empty()) {
        error_ = tr("Type the check and the part of the machine that it belongs to.");
        emit changed();
        return;
    }
    journal::RoundList with = *list;
    const auto shownAs = [](const QString& typed) {
        return [typed = typed.trimmed()](const std::string& kept) { return knownWords(kept) == typed; };
    };
    auto into = std::ranges::find_if(with.groups, shownAs(group), &journal::RoundGroup::name);
    if (into == with.groups.end())
        into = with.groups.insert(with.groups.end(), {std::move(name), {}});
    if (std::ranges::any_of(into->checks, shownAs(check))) {
        error_ = tr("This check stands in the list already.");
        emit changed();
        return;
    }
    into->checks.push_back(words);
    keep(with, tr("Check added"));
}

void RoundListsView::change(int place, const QString& check) {
    const auto* list = chosen();
    if (list == nullptr || place < 0)
        return;
    journal::RoundList with = *list;
    auto left = static_cast<std::size_t>(place);
    for (journal::RoundGroup& group : with.groups) {
        if (left >= group.checks.size()) {
            left -= group.checks.size();
            continue;
        }
        const auto at = group.checks.begin() + static_cast<std::ptrdiff_t>(left);
        const std::string words = utf8(check);
        if (words.empty())
            group.checks.erase(at);
        else if (check.trimmed() != knownWords(*at)) // else it was not changed
            *at = words;
        std::erase_if(with.groups, [](const journal::RoundGroup& each) { return each.checks.empty(); });
        return keep(with, words.empty() ? tr("Check taken out") : tr("Check changed"));
    }
}

} // namespace undercowl::ui
