#include "qml/prove/roadview.h"

#include "core/job/proving.h"
#include "core/journal/say.h"
#include "core/journal/sayclosing.h"
#include "core/units/parse.h"
#include "qml/shell/words.h"

#include <QPointer>

#include <algorithm>

namespace undercowl::ui {

namespace {

constexpr int mostDays = 3650;

// Digits with a point, or nothing for what is no length that is not below 0.
std::optional<job::TypedValue> distance(const std::string& digits, const std::string& unit) {
    const auto read = units::parseQuantity(digits + ' ' + unit, units::Dimension::Length);
    if (!read || read->number.value < 0)
        return std::nullopt;
    std::string point = read->number.text;
    std::ranges::replace(point, ',', '.');
    return job::TypedValue{point, unit};
}

QString dueWords(const job::Job& job, const job::Recheck& recheck) {
    QStringList words;
    if (recheck.after)
        words +=
            RoadView::tr("after %1 %2").arg(numberText(recheck.after->digits), text(recheck.after->unit));
    if (const auto due = job::dueAt(job, recheck))
        words += RoadView::tr("by %1").arg(dateWords(dayOf(*due)));
    if (recheck.seen)
        words += recheck.seen->note.empty() ? RoadView::tr("seen to") : text(recheck.seen->note);
    return words.join(QStringLiteral(", "));
}

} // namespace

void RoadView::show(const Snapshot& snapshot) {
    std::vector<Line> tests;
    for (const job::RoadTest& test : snapshot.job.roadTests)
        tests.push_back({.id = text(test.id),
                         .title = test.distance ? numberText(test.distance->digits) + QChar(QChar::Nbsp) +
                                                      text(test.distance->unit)
                                                : tr("Road test"),
                         .detail = text(test.note),
                         .aside = when(test.said.at, session()->now())});
    tests_.setLines(std::move(tests));
    std::vector<Line> rechecks;
    for (const job::Recheck& recheck : snapshot.job.rechecks) {
        const auto due = job::dueAt(snapshot.job, recheck);
        rechecks.push_back({.id = text(recheck.id),
                            .title = text(recheck.what),
                            .detail = dueWords(snapshot.job, recheck),
                            .mark = due && *due < session()->now() ? QStringLiteral("due") : QString(),
                            .on = recheck.seen.has_value()});
    }
    rechecks_.setLines(std::move(rechecks));
}

void RoadView::say(journal::Draft entry, const QString& undoText, FormDraft* draft) {
    session()->say({std::move(entry)},
                   {.undoText = undoText, .form = draft == nullptr ? QString() : draft->form()},
                   [draft = QPointer(draft)](const Entries& said) {
                       if (said && draft != nullptr)
                           draft->said();
                   });
}

void RoadView::keepTest(FormDraft* draft) {
    const auto field = [draft](const char* name) { return utf8(draft->text(QString::fromLatin1(name))); };
    job::RoadTest test{session()->newId(), {}, field("note"), {}};
    const std::string digits = field("distance");
    test.distance = distance(digits, field("unit") == "mi" ? "mi" : "km");
    if ((!digits.empty() && !test.distance) || (digits.empty() && test.note.empty())) {
        setErrors({{QStringLiteral("distance"), tr("Type how far it was ridden, such as 4.")}});
        return;
    }
    if (digits.empty())
        test.distance.reset();
    setErrors({});
    say(journal::roadTested(jobId(), test), tr("Road test kept"), draft);
}

void RoadView::keepRecheck(FormDraft* draft) {
    const auto field = [draft](const char* name) { return utf8(draft->text(QString::fromLatin1(name))); };
    job::Recheck recheck;
    recheck.id = session()->newId();
    recheck.what = field("what");
    QVariantMap errors;
    if (recheck.what.empty())
        errors[QStringLiteral("what")] = tr("Type what is to be looked at again, such as \"axle nut\".");
    if (const auto digits = field("after"); !digits.empty()) {
        recheck.after = distance(digits, "km");
        if (!recheck.after)
            errors[QStringLiteral("after")] = tr("Type the distance as a number, such as 50.");
    }
    if (const auto days = field("days"); !days.empty()) {
        bool whole = false;
        recheck.afterDays = text(days).toInt(&whole);
        if (!whole || *recheck.afterDays < 0 || *recheck.afterDays > mostDays)
            errors[QStringLiteral("days")] = tr("Type whole days, such as 14.");
    }
    setErrors(errors);
    if (errors.isEmpty())
        say(journal::recheckDue(jobId(), recheck), tr("Recheck kept"), draft);
}

void RoadView::seen(const QString& recheck) {
    say(journal::recheckSeen(jobId(), recheck.toStdString()), tr("Seen to"), nullptr);
}

} // namespace undercowl::ui
