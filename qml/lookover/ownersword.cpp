#include "qml/lookover/ownersword.h"

#include "core/journal/saywork.h"
#include "qml/shell/words.h"

#include <QPointer>

#include <algorithm>
#include <array>

namespace undercowl::ui {

namespace {

constexpr std::array<const char*, 3> wayCodes{"called", "wrote", "stood here"};

std::string wayOf(FormDraft& draft) {
    bool typed = false;
    const int way = draft.text(QStringLiteral("way")).toInt(&typed);
    return typed && way >= 0 && way < static_cast<int>(wayCodes.size())
               ? wayCodes.at(static_cast<std::size_t>(way))
               : std::string();
}

QString wayWords(const std::string& code) {
    if (code == wayCodes[0])
        return OwnersWord::tr("called");
    if (code == wayCodes[1])
        return OwnersWord::tr("wrote");
    return code == wayCodes[2] ? OwnersWord::tr("stood here") : text(code);
}

// Digits with a point; nothing when it is no sum of money.
std::optional<std::string> sumOf(const QString& typed) {
    QString digits = typed.trimmed();
    digits.replace(u',', u'.');
    const auto digit = [](QChar letter) { return letter.isDigit() && letter.unicode() < 128; };
    const auto point = digits.indexOf(u'.');
    const QString whole = digits.left(point < 0 ? digits.size() : point);
    const QString part = point < 0 ? QString() : digits.mid(point + 1);
    if (whole.isEmpty() || whole.size() > 9 || !std::ranges::all_of(whole, digit) ||
        (point >= 0 && (part.isEmpty() || part.size() > 3 || !std::ranges::all_of(part, digit))))
        return std::nullopt;
    return digits.toStdString();
}

} // namespace

QStringList OwnersWord::ways() const {
    QStringList list;
    for (const char* code : wayCodes)
        list += wayWords(code);
    return list;
}

void OwnersWord::setFinding(const QString& finding) {
    finding_ = finding;
    if (const auto now = snapshot())
        show(*now);
    emit changed();
}

void OwnersWord::show(const Snapshot& snapshot) {
    const auto* finding = job::findFinding(snapshot.job, finding_.toStdString());
    title_ = finding == nullptr ? QString() : text(finding->text);
    owner_ = text(snapshot.owner.name);
    std::vector<Line> lines;
    for (const job::Approval& approval : snapshot.job.approvals) {
        QStringList detail{text(approval.by), wayWords(approval.how),
                           when(approval.said.at, session()->now())};
        detail.removeAll(QString());
        lines.push_back(
            {.id = text(approval.id),
             .title = approval.given ? text(approval.what) : tr("Not wanted: %1").arg(text(approval.what)),
             .detail = detail.join(QStringLiteral(", ")),
             .aside = approval.sum
                          ? numberText(approval.sum->digits) + QChar(QChar::Nbsp) + text(approval.sum->unit)
                          : QString(),
             .mark = approval.given ? QString() : QStringLiteral("refused"),
             .on = approval.given});
    }
    approvals_.setLines(std::move(lines));
}

void OwnersWord::say(journal::Draft draft, FormDraft* form, const QString& undoText) {
    session()->say({std::move(draft)}, {.undoText = undoText, .form = form->form()},
                   [this, self = QPointer(this), form = QPointer(form)](const Entries& said) {
                       if (!said || self == nullptr || form == nullptr)
                           return;
                       form->said();
                       emit kept();
                   });
}

void OwnersWord::refuse(FormDraft* draft) {
    if (draft == nullptr || finding_.isEmpty())
        return;
    const job::Refusal refusal{utf8(draft->text(QStringLiteral("by"))),
                               wayOf(*draft),
                               utf8(draft->text(QStringLiteral("note"))),
                               {}};
    QVariantMap errors;
    if (refusal.by.empty())
        errors[QStringLiteral("by")] = tr("Type who said no: the record names them.");
    if (refusal.how.empty())
        errors[QStringLiteral("way")] = tr("Choose how it was said: called, wrote or stood here.");
    setErrors(errors);
    if (errors.isEmpty())
        say(journal::findingRefused(jobId(), finding_.toStdString(), refusal), draft, tr("Refusal kept"));
}

void OwnersWord::approve(FormDraft* draft, bool given) {
    if (draft == nullptr)
        return;
    job::Approval approval;
    approval.id = session()->newId();
    approval.what = utf8(draft->text(QStringLiteral("what")));
    approval.by = utf8(draft->text(QStringLiteral("by")));
    approval.how = wayOf(*draft);
    approval.given = given;
    QVariantMap errors;
    if (approval.what.empty())
        errors[QStringLiteral("what")] = tr("Type what it covers, such as \"front brake, tyres\".");
    if (approval.by.empty())
        errors[QStringLiteral("by")] = tr("Type who said so.");
    if (approval.how.empty())
        errors[QStringLiteral("way")] = tr("Choose how it was said: called, wrote or stood here.");
    const QString typed = draft->text(QStringLiteral("sum")).trimmed();
    if (!typed.isEmpty()) {
        const auto sum = sumOf(typed);
        const std::string currency = utf8(draft->text(QStringLiteral("currency")).toUpper());
        if (!sum)
            errors[QStringLiteral("sum")] = tr("Write the sum as digits, such as 120.50.");
        if (currency.size() != 3)
            errors[QStringLiteral("currency")] = tr("Write the currency in three letters, such as EUR.");
        if (sum)
            approval.sum = job::TypedValue{*sum, currency};
    }
    setErrors(errors);
    if (errors.isEmpty())
        say(journal::approvalAsked(jobId(), approval), draft,
            given ? tr("Approval kept") : tr("Refusal kept"));
}

} // namespace undercowl::ui
