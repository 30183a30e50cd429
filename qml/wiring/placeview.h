// One place of a gathering: the three answers, kept apart, and what is known of its wire.
#pragma once

#include "qml/shell/jobscreen.h"

#include <QStringList>
#include <QVariantMap>
#include <QtQml/qqmlregistration.h>

namespace undercowl::ui {

// gathering, half, place   which one; place as "3/1"
// found, should, refitted  each: base, tracer, words, details, how, source; empty while nothing is known
// terminal, size, wireSize, purpose, designation   of the answer that 'which' names
// which                    code of the answer that is edited: "as found" or "as it should be"
// terminals, designations  what may be chosen, in words
class PlaceView : public undercowl::ui::JobScreen {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QString gathering MEMBER gatheringId_ NOTIFY changed REQUIRED)
    Q_PROPERTY(QString half MEMBER halfCode_ NOTIFY changed REQUIRED)
    Q_PROPERTY(QString place READ place WRITE setPlace NOTIFY changed)
    Q_PROPERTY(QString which READ which WRITE setWhich NOTIFY changed)
    Q_PROPERTY(QString title READ title NOTIFY changed)
    Q_PROPERTY(QVariantMap found READ found NOTIFY changed)
    Q_PROPERTY(QVariantMap should READ should NOTIFY changed)
    Q_PROPERTY(QVariantMap refitted READ refitted NOTIFY changed)
    Q_PROPERTY(bool differs READ differs NOTIFY changed)
    Q_PROPERTY(bool known READ known NOTIFY changed)
    Q_PROPERTY(bool empty READ empty NOTIFY changed)
    Q_PROPERTY(int terminal READ terminal NOTIFY changed)
    Q_PROPERTY(QString size READ size NOTIFY changed)
    Q_PROPERTY(QString wireSize READ wireSize NOTIFY changed)
    Q_PROPERTY(QString purpose READ purpose NOTIFY changed)
    Q_PROPERTY(int designation READ designation NOTIFY changed)
    Q_PROPERTY(QString tag READ tag NOTIFY changed)
    Q_PROPERTY(QStringList terminals READ terminals CONSTANT)
    Q_PROPERTY(QStringList designations READ designations CONSTANT)

public:
    using JobScreen::JobScreen;

    [[nodiscard]] QString place() const { return place_; }
    void setPlace(const QString& place);
    [[nodiscard]] QString which() const;
    void setWhich(const QString& code);
    [[nodiscard]] QString title() const; // "place 3, loom half"
    [[nodiscard]] QVariantMap found() const { return answer(wiring::Answer::AsFound); }
    [[nodiscard]] QVariantMap should() const { return answer(wiring::Answer::AsItShouldBe); }
    [[nodiscard]] QVariantMap refitted() const { return answer(wiring::Answer::AsRefitted); }
    [[nodiscard]] bool differs() const; // 'as found' and 'as it should be' are of different colours
    [[nodiscard]] bool empty() const;   // the edited answer was said to be: no wire there
    [[nodiscard]] bool known() const { return current() != nullptr; } // the edited answer has a wire
    [[nodiscard]] int terminal() const;                               // index in terminals
    [[nodiscard]] QString size() const;                               // of the terminal, mm
    [[nodiscard]] QString wireSize() const;                           // mm2
    [[nodiscard]] QString purpose() const;                            // what the wire is for
    [[nodiscard]] int designation() const;                            // index in designations, -1 for none
    [[nodiscard]] QString tag() const;
    [[nodiscard]] QStringList terminals() const;
    [[nodiscard]] QStringList designations() const;

    // 'as it should be' wants a source: errors.source says so when there is none.
    Q_INVOKABLE void pick(const QString& base, const QString& tracer, const QString& source);
    // The wire as it was said: colour, and terminal (its kind by wiring::text) and function where they were
    // said; what was not said stays. Remark is English, for the voice: what contradicts it, else empty.
    Q_INVOKABLE void hear(const QString& base, const QString& tracer, const QString& terminal,
                          const QString& size, const QString& function, const QString& source);
    [[nodiscard]] Q_INVOKABLE QString remark() const { return remark_; }
    Q_INVOKABLE void setTerminal(int kind, const QString& size);
    Q_INVOKABLE void setWireSize(const QString& mm2);
    Q_INVOKABLE void setFunction(const QString& function);
    Q_INVOKABLE void setDesignation(int index); // -1 takes it off
    Q_INVOKABLE void setTag(const QString& tag);
    Q_INVOKABLE void setEmpty();

protected:
    void show(const Snapshot& snapshot) override;

private:
    [[nodiscard]] const wiring::Place* held() const;
    [[nodiscard]] const wiring::PlaceAnswer* current() const;
    [[nodiscard]] QVariantMap answer(wiring::Answer which) const;
    [[nodiscard]] std::optional<wiring::PlaceKey> key() const;
    [[nodiscard]] bool lacks(const QString& source); // then errors.source says so
    [[nodiscard]] wiring::PlaceAnswer begun() const; // what is known before the colour is
    void say(wiring::PlaceAnswer answer, const QString& undoText);

    QString gatheringId_;
    QString halfCode_;
    QString place_;
    wiring::Answer which_{};
    QString remark_;
};

} // namespace undercowl::ui
