#include "qml/calc/calcview.h"

#include "core/journal/say.h"
#include "core/units/format.h"
#include "core/verdict/words.h"
#include "qml/calc/calcreading.h"
#include "qml/calc/calcwords.h"

#include <QDateTime>

#include <cmath>

namespace undercowl::ui {

namespace {

using trade::Kind;

// The plain number's symbol is no word for a screen.
QString unitWords(const std::string& symbol) {
    return symbol == "1" ? QString() : symbol == "percent" ? QStringLiteral("%") : text(symbol);
}

QString withUnit(const QString& digits, const QString& unit) {
    return unit.isEmpty() ? digits : digits + QChar(QChar::Nbsp) + unit;
}

// Where the draft holds the unit that was chosen for an input.
QString unitKey(const QString& key) {
    return key + QStringLiteral("/unit");
}

const trade::Choice* chosen(const trade::Input& input, const std::string& key) {
    for (const trade::Choice& choice : input.choices)
        if (choice.key == key)
            return &choice;
    return nullptr;
}

} // namespace

void CalcView::show(const Snapshot& /*snapshot*/) {
    work(); // the job may know more by now
}

void CalcView::setName(const QString& name) {
    if (name_ == name)
        return;
    name_ = name;
    calculation_ = trade::findCalculation(name.toStdString());
    emit nameChanged();
    work();
}

void CalcView::setDraft(FormDraft* draft) {
    if (draft_ == draft)
        return;
    draft_ = draft;
    if (draft_ != nullptr)
        connect(draft_, &FormDraft::valuesChanged, this, &CalcView::work);
    emit draftChanged();
    work();
}

const trade::Declaration* CalcView::declaration() const {
    return calculation_ == nullptr ? nullptr : &calculation_->declaration;
}

const trade::Input* CalcView::input() const {
    return declaration() == nullptr ? nullptr : declaration()->input(key_.toStdString());
}

QString CalcView::title() const {
    return declaration() == nullptr ? QString() : calcWords(declaration()->title);
}

QString CalcView::purpose() const {
    return declaration() == nullptr ? QString() : calcWords(declaration()->purpose);
}

QStringList CalcView::formula() const {
    return declaration() == nullptr ? QStringList() : calcWords(declaration()->formula);
}

QStringList CalcView::sources() const {
    return declaration() == nullptr ? QStringList() : calcWords(declaration()->sources);
}

QStringList CalcView::validity() const {
    return declaration() == nullptr ? QStringList() : calcWords(declaration()->validity);
}

QString CalcView::symbol(const trade::Input& input) const {
    const QString chosen = draft_ == nullptr ? QString() : draft_->text(unitKey(text(input.key)));
    return chosen.isEmpty() ? text(input.unit) : chosen;
}

// From the keypad a comma is the decimal mark and nothing else.
std::string CalcView::typed(const trade::Input& input) const {
    const std::string words = draft_ == nullptr ? std::string() : utf8(draft_->text(text(input.key)));
    if (input.kind != Kind::Quantity || words.empty())
        return words;
    const QString unit = symbol(input);
    const QString number = text(words).replace(u',', u'.');
    return (unit == u"1" ? number : number + u' ' + unit).toStdString(); // a plain number has no unit
}

void CalcView::work() {
    for (QString* words : {&verdict_, &reason_, &problem_, &summary_, &faultKey_, &fault_})
        words->clear();
    working_.clear();
    cautions_.clear();
    result_.reset();
    std::vector<Line> lines;
    if (declaration() == nullptr) {
        inputs_.setLines({});
        results_.setLines({});
        emit worked();
        return;
    }
    std::map<std::string, std::string> given;
    QStringList missing;
    for (const trade::Input& one : declaration()->inputs) {
        const std::string own = typed(one);
        const std::string known = own.empty() ? fromJob(one) : std::string{};
        const std::string& words = known.empty() ? own : known;
        Line line{.id = text(one.key), .title = calcWords(one.label), .detail = calcWords(one.why)};
        const std::string& stands = words.empty() ? one.byDefault : words;
        line.mark = !known.empty()           ? QStringLiteral("job")
                    : !words.empty()         ? QStringLiteral("given")
                    : !one.byDefault.empty() ? QStringLiteral("default")
                    : one.required           ? QStringLiteral("needed")
                                             : QStringLiteral("open");
        if (!words.empty())
            given[one.key] = words;
        else if (line.mark == u"needed")
            missing += line.title;
        if (!known.empty())
            line.aside = text(known);
        else if (one.kind == Kind::Quantity && !words.empty())
            line.aside = withUnit(draft_->text(line.id), unitWords(symbol(one).toStdString()));
        else if (one.kind == Kind::Quantity && !stands.empty())
            line.aside = withUnit(numberText(stands), unitWords(one.unit));
        else if (const auto* choice = chosen(one, stands))
            line.aside = calcWords(choice->label);
        else
            line.aside = text(stands);
        lines.push_back(std::move(line));
    }
    if (!missing.isEmpty()) {
        problem_ = tr("Still needed: %1").arg(missing.join(QStringLiteral(", ")));
        results_.setLines({});
    }
    // What is there is checked all the same, so that a slip is seen at once and not after the last input.
    const trade::Outcome outcome =
        trade::run(*calculation_, given, dayOf(QDateTime::currentMSecsSinceEpoch()));
    if (!outcome) {
        const trade::Problem& wrong = outcome.error();
        if (given.contains(wrong.field) || missing.isEmpty()) {
            faultKey_ = text(wrong.field);
            fault_ = tr("%1; possible: %2").arg(calcWords(wrong.reason), coreWords(wrong.possible));
            if (missing.isEmpty()) {
                const auto* field = declaration()->input(wrong.field);
                problem_ = tr("%1: %2").arg(field == nullptr ? faultKey_ : calcWords(field->label), fault_);
            }
            for (Line& line : lines)
                if (line.id == faultKey_)
                    line.more = fault_;
        }
        results_.setLines({});
    } else {
        showResult(*outcome);
    }
    cautions_ += calcWords(declaration()->cautions);
    inputs_.setLines(std::move(lines));
    band_.set(result_ ? result_->verdict : std::nullopt);
    curve_.set(result_ ? result_->plot : std::nullopt);
    emit worked();
}

void CalcView::showResult(const trade::Result& result) {
    std::vector<Line> lines;
    QStringList told;
    for (const auto& [key, value] : result.values) {
        const trade::Output* output = declaration()->output(key);
        const QString label = output == nullptr ? text(key) : calcWords(output->label);
        // A list stands line by line.
        QString shown = calcWords(value.text);
        if (const auto* list = std::get_if<std::vector<std::string>>(&value.value); list && !list->empty())
            shown = calcWords(*list).join(u'\n');
        else if (std::holds_alternative<std::vector<trade::Step>>(value.value))
            shown = calcWords(value.text).replace(QStringLiteral(", "), QStringLiteral("\n"));
        told += label + QStringLiteral(" ") + calcWords(value.text);
        lines.push_back({.id = text(key), .title = label, .aside = shown});
    }
    results_.setLines(std::move(lines));
    if (result.answer) {
        const std::string word(verdict::word(*result.answer));
        verdict_ = *result.answer == verdict::Answer::TooClose ? QStringLiteral("undecided") : text(word);
        told += tr("verdict: %1").arg(calcWords(word));
        if (result.verdict)
            reason_ =
                tr("%1 sure to be within").arg(coreWords(verdict::percentText(result.verdict->probability)));
    }
    working_ = calcWords(result.working);
    cautions_ = calcWords(result.cautions);
    result_ = result;
    summary_ = told.join(QStringLiteral("; "));
}

QString CalcView::label() const {
    return input() == nullptr ? QString() : calcWords(input()->label);
}

QString CalcView::why() const {
    return input() == nullptr ? QString() : calcWords(input()->why);
}

QString CalcView::hint() const {
    const auto* one = input();
    if (one == nullptr)
        return {};
    QStringList words;
    if (one->kind == Kind::Quantity && std::isfinite(one->least) && std::isfinite(one->most))
        words += tr("from %1 to %2")
                     .arg(numberText(units::formatSignificant(one->least, 6)),
                          withUnit(numberText(units::formatSignificant(one->most, 6)), unitWords(one->unit)));
    if (!one->byDefault.empty() && one->kind != Kind::Choice)
        words += tr("%1 if left empty").arg(knownWords(one->byDefault));
    else if (!one->required)
        words += tr("may stay empty");
    return words.join(QStringLiteral("; "));
}

QString CalcView::kind() const {
    if (input() == nullptr)
        return {};
    switch (input()->kind) {
    case Kind::Quantity: return QStringLiteral("quantity");
    case Kind::Text: return QStringLiteral("text");
    case Kind::Date: return QStringLiteral("date");
    case Kind::Choice: break;
    }
    return QStringLiteral("choice");
}

bool CalcView::signs() const {
    return input() != nullptr && input()->kind == Kind::Quantity && input()->least < 0;
}

QStringList CalcView::units() const {
    QStringList all;
    if (input() != nullptr && input()->kind == Kind::Quantity)
        for (const units::Unit unit : units::unitsOf(input()->dimension))
            all += text(unit.symbol());
    return all.size() > 1 ? all : QStringList();
}

QStringList CalcView::choices() const {
    QStringList all;
    if (input() != nullptr)
        for (const trade::Choice& choice : input()->choices)
            all += calcWords(choice.label);
    return all;
}

QString CalcView::example() const {
    if (declaration() != nullptr)
        for (const auto& [key, typed] : declaration()->example.inputs)
            if (key == key_.toStdString())
                return text(typed);
    return {};
}

QString CalcView::value() const {
    return draft_ == nullptr || key_.isEmpty() ? QString() : draft_->text(key_);
}

QString CalcView::unit() const {
    return input() == nullptr || input()->kind != Kind::Quantity ? QString()
                                                                 : unitWords(symbol(*input()).toStdString());
}

int CalcView::choice() const {
    if (input() == nullptr)
        return -1;
    const std::string stands = typed(*input()).empty() ? input()->byDefault : typed(*input());
    for (std::size_t i = 0; i < input()->choices.size(); ++i)
        if (input()->choices[i].key == stands)
            return static_cast<int>(i);
    return -1;
}

QString CalcView::fault() const {
    return key_ == faultKey_ ? fault_ : QString();
}

void CalcView::open(const QString& key) {
    key_ = key;
    emit opened();
    emit worked();
}

void CalcView::setValue(const QString& typed) {
    if (draft_ != nullptr && !key_.isEmpty())
        draft_->set(key_, typed);
}

void CalcView::setUnit(int index) {
    if (draft_ != nullptr && index >= 0 && index < units().size())
        draft_->set(unitKey(key_), units().at(index));
}

void CalcView::setChoice(int index) {
    if (draft_ != nullptr && input() != nullptr && index >= 0 &&
        index < static_cast<int>(input()->choices.size()))
        draft_->set(key_, text(input()->choices[static_cast<std::size_t>(index)].key));
}

void CalcView::next() {
    bool after = false;
    QString first;
    for (const Line& line : inputs_.lines()) {
        if (line.mark == u"needed" && after) {
            open(line.id);
            return;
        }
        if (line.mark == u"needed" && first.isEmpty() && line.id != key_)
            first = line.id;
        after = after || line.id == key_;
    }
    open(first);
}

void CalcView::showExample() {
    if (draft_ == nullptr || declaration() == nullptr)
        return;
    const auto inputs = declaration()->example.inputs;
    for (const trade::Input& one : declaration()->inputs) {
        draft_->set(text(one.key), QString());
        draft_->set(unitKey(text(one.key)), QString());
    }
    for (const auto& [key, words] : inputs) {
        const trade::Input* one = declaration()->input(key);
        if (one == nullptr)
            continue;
        draft_->set(text(key), text(words));
        if (one->kind != Kind::Quantity)
            continue;
        if (const auto read = units::parseQuantity(words, one->dimension, one->declaredUnit())) {
            draft_->set(unitKey(text(key)), text(read->unit.symbol()));
            draft_->set(text(key), text(read->number.text));
        }
    }
}

void CalcView::keep() {
    if (snapshot() == nullptr || results_.count() == 0)
        return;
    QStringList given;
    for (const Line& line : inputs_.lines())
        if (line.mark == u"given" || line.mark == u"default")
            given += line.title + u' ' + line.aside;
    const SayOptions options{.undoText = tr("Kept: %1").arg(title()), .form = {}};
    const auto then = [self = QPointer(this)](const Entries& done) {
        if (done && self != nullptr)
            emit self->kept();
    };
    const QString from = given.join(QStringLiteral(", "));
    if (result_ && result_->verdict) {
        std::vector<journal::Draft> drafts;
        for (job::Reading& reading : readingsOf(*result_, tr("%1 (%2)").arg(title(), from))) {
            reading.id = session()->newId();
            drafts.push_back(journal::readingTaken(jobId(), reading));
        }
        session()->say(std::move(drafts), options, then);
        return;
    }
    job::Memo memo; // the rest is worth keeping in the job, not telling the owner
    memo.id = session()->newId();
    memo.text = tr("%1: %2 (from %3)").arg(title(), summary_, from).toStdString();
    session()->say({journal::memoKept(jobId(), memo)}, options, then);
}

} // namespace undercowl::ui
