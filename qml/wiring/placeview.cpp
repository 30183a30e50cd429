#include "qml/wiring/placeview.h"

#include "core/journal/say.h"
#include "core/units/parse.h"
#include "core/wiring/din72552.h"
#include "qml/wiring/placekeys.h"
#include "qml/wiring/words.h"

#include <QCoreApplication>
#include <QLocale>

#include <algorithm>
#include <array>

namespace undercowl::ui {

namespace {

using wiring::TerminalKind;

constexpr std::array kinds{TerminalKind::Unknown, TerminalKind::Blade,        TerminalKind::Receptacle,
                           TerminalKind::Bullet,  TerminalKind::BulletSocket, TerminalKind::Ring,
                           TerminalKind::Fork,    TerminalKind::Pin,          TerminalKind::Socket,
                           TerminalKind::Splice,  TerminalKind::Bare};
constexpr double largestMm = 50;
constexpr double largestMm2 = 120;

// A measure as it was typed, with comma or point; nothing when it is none, or not above 0 and up to 'most'.
std::optional<double> measure(const QString& typed, double most) {
    const auto number = units::parseNumber(utf8(typed), units::Comma::Decimal);
    if (!number || number->value <= 0 || number->value > most)
        return std::nullopt;
    return number->value;
}

QString howWords(wiring::HowKnown how) {
    switch (how) {
    case wiring::HowKnown::Read:
        return QCoreApplication::translate("Wiring", "read from the photo, confirmed");
    case wiring::HowKnown::RunnerUp:
        return QCoreApplication::translate("Wiring", "second choice of the reader, confirmed");
    case wiring::HowKnown::Picked: return QCoreApplication::translate("Wiring", "picked by hand");
    case wiring::HowKnown::Typed: return QCoreApplication::translate("Wiring", "typed");
    case wiring::HowKnown::Heard: return QCoreApplication::translate("Wiring", "heard");
    }
    return {};
}

} // namespace

void PlaceView::setPlace(const QString& place) {
    place_ = place;
    emit changed();
}

QString PlaceView::which() const {
    return text(wiring::code(which_));
}

void PlaceView::setWhich(const QString& code) {
    const auto which = wiring::answerFromCode(code.toStdString());
    if (!which || *which == which_ || *which == wiring::Answer::AsRefitted)
        return;
    which_ = *which;
    setErrors({});
    emit changed();
}

std::optional<wiring::PlaceKey> PlaceView::key() const {
    const auto half = wiring::halfFromCode(halfCode_.toStdString());
    return half ? keyOf(place_, *half) : std::nullopt;
}

const wiring::Place* PlaceView::held() const {
    const auto now = snapshot();
    const auto* known = now == nullptr ? nullptr : job::findGathering(now->job, gatheringId_.toStdString());
    const auto place = key();
    return known == nullptr || !place ? nullptr : known->find(*place);
}

const wiring::PlaceAnswer* PlaceView::current() const {
    const auto* place = held();
    return place != nullptr && place->answer(which_) ? &*place->answer(which_) : nullptr;
}

bool PlaceView::empty() const {
    const auto* place = held();
    return place != nullptr && place->saidEmpty(which_);
}

QString PlaceView::title() const {
    const auto place = key();
    return place ? tr("%1, %2").arg(words(*place), words(place->half)) : QString();
}

QVariantMap PlaceView::answer(wiring::Answer which) const {
    const auto* place = held();
    if (place != nullptr && place->saidEmpty(which))
        return {{QStringLiteral("words"), emptyWords()}};
    if (place == nullptr || !place->answer(which))
        return {};
    const wiring::PlaceAnswer& known = *place->answer(which);
    return {{QStringLiteral("base"), baseCode(known.wire.colour)},
            {QStringLiteral("tracer"), tracerCode(known.wire.colour)},
            {QStringLiteral("words"), words(known.wire.colour)},
            {QStringLiteral("details"), details(known.wire)},
            {QStringLiteral("how"), howWords(known.how)},
            {QStringLiteral("source"), text(known.source)}};
}

bool PlaceView::differs() const {
    const auto* place = held();
    if (place == nullptr)
        return false;
    const auto& found = place->answer(wiring::Answer::AsFound);
    const auto& should = place->answer(wiring::Answer::AsItShouldBe);
    return found && should && found->wire.colour != should->wire.colour;
}

int PlaceView::terminal() const {
    const auto* known = current();
    if (known == nullptr)
        return 0;
    return static_cast<int>(std::ranges::find(kinds, known->wire.terminal.kind) - kinds.begin());
}

QString PlaceView::size() const {
    const auto* known = current();
    return known == nullptr || !known->wire.terminal.sizeMm
               ? QString()
               : QLocale().toString(*known->wire.terminal.sizeMm, 'g', 4);
}

QString PlaceView::wireSize() const {
    const auto* known = current();
    return known == nullptr || !known->wire.sizeMm2 ? QString()
                                                    : QLocale().toString(*known->wire.sizeMm2, 'g', 4);
}

QString PlaceView::purpose() const {
    const auto* known = current();
    return known == nullptr ? QString() : text(known->wire.function);
}

int PlaceView::designation() const {
    const auto* known = current();
    if (known == nullptr || known->wire.din.empty())
        return -1;
    const auto all = wiring::din72552();
    const auto found = std::ranges::find(all, known->wire.din, &wiring::Designation::number);
    return found == all.end() ? -1 : static_cast<int>(found - all.begin());
}

QString PlaceView::tag() const {
    const auto* place = held();
    return place == nullptr ? QString() : text(place->tag);
}

QStringList PlaceView::terminals() const {
    QStringList all;
    for (const TerminalKind kind : kinds)
        all += words(kind);
    return all;
}

QStringList PlaceView::designations() const {
    QStringList all;
    for (const auto& [number, meaning] : wiring::din72552())
        all += QStringLiteral("%1: %2").arg(text(number), coreWords(meaning));
    return all;
}

void PlaceView::show(const Snapshot& /*snapshot*/) {}

void PlaceView::say(wiring::PlaceAnswer answer, const QString& undoText) {
    const auto place = key();
    if (!place || jobId().empty())
        return;
    setErrors({});
    session()->say({journal::wireAnswered(jobId(), gatheringId_.toStdString(), *place, which_, answer)},
                   {.undoText = undoText, .form = {}});
}

bool PlaceView::lacks(const QString& source) {
    if (which_ != wiring::Answer::AsItShouldBe || !utf8(source).empty())
        return false;
    setErrors(
        {{QStringLiteral("source"), tr("Say where that is known from, such as \"manual, page 7-12\".")}});
    return true;
}

wiring::PlaceAnswer PlaceView::begun() const {
    if (const auto* known = current())
        return *known;
    wiring::PlaceAnswer answer;
    if (const auto* place = held(); place != nullptr && place->answer(wiring::Answer::AsFound))
        answer.wire.terminal = place->answer(wiring::Answer::AsFound)->wire.terminal;
    return answer;
}

void PlaceView::pick(const QString& base, const QString& tracer, const QString& source) {
    const auto wire = wireColour(base, tracer);
    if (!wire)
        return;
    if (lacks(source))
        return;
    wiring::PlaceAnswer answer = begun();
    answer.wire.colour = *wire;
    answer.how = wiring::HowKnown::Picked;
    answer.probability = 1;
    if (which_ == wiring::Answer::AsItShouldBe)
        answer.source = utf8(source);
    say(std::move(answer), tr("%1: %2").arg(words(which_), words(*wire)));
}

void PlaceView::setTerminal(int kind, const QString& size) {
    const auto* known = current();
    if (known == nullptr || kind < 0 || kind >= static_cast<int>(kinds.size()))
        return;
    wiring::PlaceAnswer answer = *known;
    answer.wire.terminal = {kinds.at(static_cast<std::size_t>(kind)), std::nullopt};
    if (!size.trimmed().isEmpty()) {
        answer.wire.terminal.sizeMm = measure(size, largestMm);
        if (!answer.wire.terminal.sizeMm) {
            setErrors({{QStringLiteral("size"), tr("Give the size in millimetres, such as 6.3.")}});
            return;
        }
    }
    if (answer.wire.terminal == known->wire.terminal)
        return;
    const QString undoText = tr("Terminal: %1").arg(words(answer.wire.terminal));
    say(std::move(answer), undoText);
}

void PlaceView::setWireSize(const QString& mm2) {
    const auto* known = current();
    if (known == nullptr)
        return;
    wiring::PlaceAnswer answer = *known;
    answer.wire.sizeMm2 = mm2.trimmed().isEmpty() ? std::nullopt : measure(mm2, largestMm2);
    if (!mm2.trimmed().isEmpty() && !answer.wire.sizeMm2) {
        setErrors({{QStringLiteral("wireSize"), tr("Give the size in square millimetres, such as 0.75.")}});
        return;
    }
    if (answer.wire.sizeMm2 != known->wire.sizeMm2)
        say(std::move(answer), tr("Wire size kept"));
}

void PlaceView::setFunction(const QString& function) {
    const auto* known = current();
    if (known == nullptr || known->wire.function == utf8(function))
        return;
    wiring::PlaceAnswer answer = *known;
    answer.wire.function = utf8(function);
    say(std::move(answer), tr("Function: %1").arg(function.trimmed()));
}

void PlaceView::setDesignation(int index) {
    const auto* known = current();
    const auto all = wiring::din72552();
    if (known == nullptr || index >= static_cast<int>(all.size()))
        return;
    wiring::PlaceAnswer answer = *known;
    answer.wire.din = index < 0 ? std::string{} : std::string(all[static_cast<std::size_t>(index)].number);
    if (answer.wire.din != known->wire.din)
        say(std::move(answer), tr("DIN number kept"));
}

void PlaceView::setTag(const QString& tag) {
    const auto place = key();
    if (!place || jobId().empty() || this->tag() == tag.trimmed())
        return;
    session()->say({journal::wireTagged(jobId(), gatheringId_.toStdString(), *place, utf8(tag))},
                   {.undoText = tr("Tag kept"), .form = {}});
}

void PlaceView::setEmpty() {
    const auto place = key();
    if (!place || empty())
        return;
    session()->say({journal::placeEmpty(jobId(), gatheringId_.toStdString(), *place, which_, true)},
                   {.undoText = tr("%1: nothing there").arg(words(which_)), .form = {}});
}

} // namespace undercowl::ui
