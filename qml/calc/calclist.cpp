#include "qml/calc/calclist.h"

#include "core/trade/registry.h"
#include "qml/calc/calcwords.h"
#include "qml/shell/words.h"

#include <algorithm>

namespace undercowl::ui {

CalcList::CalcList(QObject* parent) : QObject(parent) {
    show();
}

void CalcList::setWords(const QString& words) {
    if (words_ == words)
        return;
    words_ = words;
    show();
    emit wordsChanged();
}

void CalcList::show() {
    const QStringList wanted = words_.split(u' ', Qt::SkipEmptyParts);
    std::vector<Line> lines;
    for (const trade::Calculation& calculation : trade::calculations()) {
        const trade::Declaration& declaration = calculation.declaration;
        Line line{.id = text(declaration.name),
                  .title = calcWords(declaration.title),
                  .detail = calcWords(declaration.purpose)};
        const QString all = line.id + u' ' + line.title + u' ' + line.detail;
        if (std::ranges::all_of(wanted,
                                [&](const QString& word) { return all.contains(word, Qt::CaseInsensitive); }))
            lines.push_back(std::move(line));
    }
    std::ranges::sort(
        lines, [](const QString& a, const QString& b) { return a.localeAwareCompare(b) < 0; }, &Line::title);
    lines_.setLines(std::move(lines));
}

} // namespace undercowl::ui
