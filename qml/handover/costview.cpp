#include "qml/handover/costview.h"

#include "core/journal/sayclosing.h"
#include "qml/shell/words.h"

#include <QPointer>

#include <algorithm>

namespace undercowl::ui {

namespace {

QString rowTitle(const job::CostRow& row) {
    if (row.kind != job::CostRow::Kind::Work)
        return text(row.what);
    return row.what.empty() ? CostView::tr("Other work") : text(row.what);
}

// A decimal with a point; empty stays empty.
std::optional<std::string> decimalText(const std::string& digits) {
    return digits.empty() ? digits : job::withPoint(digits);
}

std::string field(const FormDraft& draft, const char* name) {
    return utf8(draft.text(QString::fromLatin1(name)));
}

} // namespace

void CostView::show(const Snapshot& snapshot) {
    const auto cost = job::costOf(snapshot.job, session()->now());
    reckoned_ = cost.has_value();
    std::vector<Line> rows;
    std::vector<Line> lines;
    doubts_.clear();
    if (cost) {
        for (const job::CostRow& row : cost->rows)
            rows.push_back({.id = QString::number(rows.size()),
                            .title = rowTitle(row),
                            .detail = row.minutes > 0 ? minuteWords(row.minutes) : QString(),
                            .aside = numberText(job::money(row.net, cost->currency))});
        for (const job::CostLine& line : snapshot.job.costTerms->lines)
            lines.push_back(
                {.id = QString::number(lines.size()), .title = text(line.what), .aside = text(line.sum)});
        net_ = numberText(job::money(cost->net, cost->currency));
        tax_ = cost->taxPercent.empty()
                   ? QString()
                   : tr("%1 % tax: %2")
                         .arg(text(cost->taxPercent), numberText(job::money(cost->tax, cost->currency)));
        gross_ = numberText(job::money(cost->gross, cost->currency));
        spent_ = minuteWords(cost->minutes);
        QStringList expected;
        if (cost->minutesExpected > 0)
            expected += minuteWords(cost->minutesExpected);
        for (const job::TypedValue& sum : cost->approved)
            expected += numberText(sum.digits) + QChar(QChar::Nbsp) + text(sum.unit);
        expected_ = expected.isEmpty() ? tr("nothing") : expected.join(QStringLiteral(", "));
        for (const job::Message& doubt : cost->doubts)
            doubts_ += words(doubt);
    }
    rows_.setLines(std::move(rows));
    lines_.setLines(std::move(lines));
}

job::CostTerms CostView::terms() const {
    const auto now = snapshot();
    if (now != nullptr && now->job.costTerms)
        return *now->job.costTerms;
    const auto setting = [this](const char* name) {
        return session()->setting(QString::fromLatin1(name)).toStdString();
    };
    return {setting("currency"), setting("hour-rate"), setting("tax")};
}

QVariantMap CostView::known() const {
    const auto known = terms();
    return {{QStringLiteral("currency"), text(known.currency)},
            {QStringLiteral("rate"), text(known.hourRate)},
            {QStringLiteral("tax"), text(known.tax)}};
}

void CostView::say(const job::CostTerms& terms, const QString& undoText, FormDraft* draft) {
    session()->say({journal::costSettled(jobId(), terms)},
                   {.undoText = undoText, .form = draft == nullptr ? QString() : draft->form()},
                   [draft = QPointer(draft)](const Entries& said) {
                       if (said && draft != nullptr)
                           draft->said();
                   });
}

void CostView::settle(FormDraft* draft) {
    job::CostTerms said = terms();
    QVariantMap errors;
    said.currency = draft->text(QStringLiteral("currency")).trimmed().toUpper().toStdString();
    if (said.currency.empty())
        errors[QStringLiteral("currency")] = tr("Type the currency, such as EUR.");
    const auto rate = decimalText(field(*draft, "rate"));
    const auto tax = decimalText(field(*draft, "tax"));
    if (!rate)
        errors[QStringLiteral("rate")] = tr("Type the rate as a number, such as 58.50.");
    if (!tax)
        errors[QStringLiteral("tax")] = tr("Type the tax as a number of per cent, such as 19.");
    setErrors(errors);
    if (!errors.isEmpty())
        return;
    said.hourRate = *rate;
    said.tax = *tax;
    session()->set(QStringLiteral("currency"), text(said.currency));
    session()->set(QStringLiteral("hour-rate"), text(said.hourRate));
    session()->set(QStringLiteral("tax"), text(said.tax));
    say(said, tr("Reckoned"), draft);
}

void CostView::addLine(FormDraft* draft) {
    job::CostTerms said = terms();
    const job::CostLine line{field(*draft, "what"),
                             decimalText(field(*draft, "sum")).value_or(std::string{})};
    QVariantMap errors;
    if (said.currency.empty())
        errors[QStringLiteral("currency")] = tr("Type the currency, such as EUR.");
    if (line.what.empty())
        errors[QStringLiteral("what")] = tr("Type what it is for, such as \"tyre fitted outside\".");
    if (line.sum.empty())
        errors[QStringLiteral("sum")] = tr("Type the sum without tax as a number, such as 12.50.");
    setErrors(errors);
    if (!errors.isEmpty())
        return;
    said.lines.push_back(line);
    say(said, tr("Line added"), draft);
}

void CostView::dropLine(int place) {
    job::CostTerms said = terms();
    if (place < 0 || place >= static_cast<int>(said.lines.size()))
        return;
    said.lines.erase(said.lines.begin() + place);
    say(said, tr("Line taken out"), nullptr);
}

} // namespace undercowl::ui
