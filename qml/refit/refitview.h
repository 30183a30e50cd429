// Refitting: the strip steps backwards. The next one fills the screen.
#pragma once

#include "qml/shell/jobscreen.h"
#include "qml/shell/linemodel.h"

#include <QStringList>
#include <QtQml/qqmlregistration.h>

namespace undercowl::ui {

// step         id of the step on the screen: the chosen one, otherwise the next to do; empty: none
// position     "3 / 12": which one in refit order
// details      routing, ends, adjustment as found, fluids let out: a line each
// marks        where the hardware sits on the photo; pieces: what the numbers in the rings stand for
// holds        hardware and bag; torques: "screw M5: 9.3 N.m", one line each
// behind       what has to go on first, in words; empty when nothing is in the way
// waitsFor     what its task waits for; waiting says that it does
// finished     all is refitted;  stalled: what is left waits
// isLine       it is a hose, vent or cable, which can be read back; lines: how many such there are in all
// wiresLeft    "tail plug: place 5 does not match; not read back: place 2", for each gathering of the step
//              that has any left: refitting it asks first
// notRight     what is not as it should be though all is on again: wires that do not match, parts not fitted
// wires        gatherings of this step: id, title, detail how far it was read back
// sentence     the step as it is read aloud, in English, by core/talk
// spokenTorques   its torques alone
// steps        all, in refit order: id, title, detail hardware, aside what it waits for, picture, on refitted
class RefitView : public undercowl::ui::JobScreen {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QString step READ step WRITE choose NOTIFY changed)
    Q_PROPERTY(QString position READ position NOTIFY changed)
    Q_PROPERTY(QString title READ title NOTIFY changed)
    Q_PROPERTY(QString holds READ holds NOTIFY changed)
    Q_PROPERTY(QStringList torques READ torques NOTIFY changed)
    Q_PROPERTY(QString note READ note NOTIFY changed)
    Q_PROPERTY(QString details READ details NOTIFY changed)
    Q_PROPERTY(QVariantList marks READ marks NOTIFY changed)
    Q_PROPERTY(QStringList pieces READ pieces NOTIFY changed)
    Q_PROPERTY(QStringList cautions READ cautions NOTIFY changed)
    Q_PROPERTY(QUrl photo READ photo NOTIFY changed)
    Q_PROPERTY(QString behind READ behind NOTIFY changed)
    Q_PROPERTY(QStringList wiresLeft READ wiresLeft NOTIFY changed)
    Q_PROPERTY(QStringList notRight READ notRight NOTIFY changed)
    Q_PROPERTY(bool waiting READ waiting NOTIFY changed)
    Q_PROPERTY(QString waitsFor READ waitsFor NOTIFY changed)
    Q_PROPERTY(bool done READ done NOTIFY changed)
    Q_PROPERTY(bool finished READ finished NOTIFY changed)
    Q_PROPERTY(bool stalled READ stalled NOTIFY changed)
    Q_PROPERTY(bool saying READ saying NOTIFY changed)
    Q_PROPERTY(bool isLine READ isLine NOTIFY changed)
    Q_PROPERTY(int lines READ lines NOTIFY changed)
    Q_PROPERTY(QString sentence READ sentence NOTIFY changed)
    Q_PROPERTY(QString spokenTorques READ spokenTorques NOTIFY changed)
    Q_PROPERTY(undercowl::ui::LineModel* wires READ wires CONSTANT)
    Q_PROPERTY(undercowl::ui::LineModel* steps READ steps CONSTANT)

public:
    using JobScreen::JobScreen;

    [[nodiscard]] QString step() const { return step_.id; }
    [[nodiscard]] QString position() const { return step_.position; }
    [[nodiscard]] QString title() const { return step_.title; }
    [[nodiscard]] QString holds() const { return step_.holds; }
    [[nodiscard]] QStringList torques() const { return step_.torques; }
    [[nodiscard]] QString note() const { return step_.note; }
    [[nodiscard]] QString details() const { return step_.details; }
    [[nodiscard]] QVariantList marks() const { return step_.marks; }
    [[nodiscard]] QStringList pieces() const { return step_.pieces; }
    [[nodiscard]] QStringList cautions() const { return step_.cautions; }
    [[nodiscard]] QUrl photo() const { return step_.photo; }
    [[nodiscard]] QString behind() const { return step_.behind; }
    [[nodiscard]] QStringList wiresLeft() const { return step_.wiresLeft; }
    [[nodiscard]] const QStringList& notRight() const { return notRight_; }
    [[nodiscard]] bool waiting() const { return step_.waiting; }
    [[nodiscard]] QString waitsFor() const { return step_.waitsFor; }
    [[nodiscard]] bool done() const { return step_.done; }
    [[nodiscard]] bool finished() const { return finished_; }
    [[nodiscard]] bool stalled() const { return stalled_; }
    [[nodiscard]] bool saying() const { return saying_; }
    [[nodiscard]] bool isLine() const { return step_.line; }
    [[nodiscard]] int lines() const { return lines_; }
    [[nodiscard]] QString sentence() const { return step_.sentence; }
    [[nodiscard]] QString spokenTorques() const { return step_.spokenTorques; }
    [[nodiscard]] LineModel* wires() { return &wires_; }
    [[nodiscard]] LineModel* steps() { return &steps_; }

    Q_INVOKABLE void choose(const QString& step); // empty: the next to do
    Q_INVOKABLE void goOn();                     // shows the next one in refit order; nothing is said of this
    Q_INVOKABLE void back();                     // the one before
    Q_INVOKABLE bool chooseBag(int number);      // the step whose parts lie there; false if there is none
    Q_INVOKABLE void refit(const QString& note); // the step on the screen is on again; then the next one
    Q_INVOKABLE void takeOff();                  // it is not: that was said by mistake
    Q_INVOKABLE void resume();                   // its task waits no more
    // The step changes places with the open one before or after it. errors.order says what forbids it.
    Q_INVOKABLE void reorder(const QString& step, bool earlier);

protected:
    void show(const Snapshot& snapshot) override;

private:
    void move(int by);

    struct Shown {
        QString id, position, title, holds, note, details, behind, waitsFor, sentence, spokenTorques;
        QStringList torques, cautions, pieces, wiresLeft;
        QVariantList marks;
        QUrl photo;
        bool waiting{}, done{}, line{};
    };

    QString chosen_;
    QStringList notRight_;
    int lines_{};
    Shown step_;
    bool finished_{};
    bool stalled_{};
    bool saying_{};
    LineModel wires_, steps_;
};

} // namespace undercowl::ui
