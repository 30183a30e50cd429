// The strip step under way: a draft until 'next step' says it. Also corrects a step that was said before.
#pragma once

#include "qml/shell/jobscreen.h"
#include "qml/shell/linemodel.h"
#include "qml/strip/stripdraft.h"

#include <QStringList>
#include <QtQml/qqmlregistration.h>

namespace undercowl::ui {

// corrects     id of a said step that is corrected; empty for the step under way
// number       of the step, from 1
// hardware     one line for each: title "2 × screw M5 × 16 mm"
// cautions     what to heed before this step, in words; others: those that may be added by touch
// tasks, task  titles, and the index of the step's task (-1: none)
// details      what goes by the names routing, ends, letOut, asFound;  detailText: all of them, a line each
// photos       of this step, newest first
// photo        the one that is shown, the newest unless another was chosen
// marks        where the hardware sits on it, for PhotoFrame
// piece        the hardware that is being placed on the photo; -1: none
// wires        gatherings of this step: title, detail
// steps        those said so far, newest first: id, title, detail hardware and bag, picture, on refitted
class StripView : public undercowl::ui::JobScreen {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QString corrects MEMBER corrects_ NOTIFY changed)
    Q_PROPERTY(bool begun READ begun NOTIFY changed)
    Q_PROPERTY(int number READ number NOTIFY changed)
    Q_PROPERTY(QString title READ title NOTIFY changed)
    Q_PROPERTY(QString bag READ bag NOTIFY changed)
    Q_PROPERTY(QString note READ note NOTIFY changed)
    Q_PROPERTY(QString holds READ holds NOTIFY changed)
    Q_PROPERTY(QStringList cautions READ cautions NOTIFY changed)
    Q_PROPERTY(QStringList otherCautions READ otherCautions NOTIFY changed)
    Q_PROPERTY(QStringList tasks READ tasks NOTIFY changed)
    Q_PROPERTY(int task READ task NOTIFY changed)
    Q_PROPERTY(QUrl photo READ photo NOTIFY changed)
    Q_PROPERTY(QVariantMap details READ details NOTIFY changed)
    Q_PROPERTY(QString detailText READ detailText NOTIFY changed)
    Q_PROPERTY(QVariantList marks READ marks NOTIFY changed)
    Q_PROPERTY(int piece READ piece WRITE setPiece NOTIFY changed)
    Q_PROPERTY(QString placed READ placed NOTIFY changed)
    Q_PROPERTY(QString bagsInUse READ bagsInUse NOTIFY changed)
    Q_PROPERTY(bool saying READ saying NOTIFY changed)
    Q_PROPERTY(undercowl::ui::LineModel* hardware READ hardware CONSTANT)
    Q_PROPERTY(undercowl::ui::LineModel* photos READ photos CONSTANT)
    Q_PROPERTY(undercowl::ui::LineModel* wires READ wires CONSTANT)
    Q_PROPERTY(undercowl::ui::LineModel* steps READ steps CONSTANT)

public:
    using JobScreen::JobScreen;

    [[nodiscard]] bool begun() const { return begun_; } // the draft has been read
    [[nodiscard]] int number() const;
    [[nodiscard]] QString title() const;
    [[nodiscard]] QString bag() const;
    [[nodiscard]] QString note() const;
    [[nodiscard]] QString holds() const { return hardwareText(draft_.step); }
    [[nodiscard]] QStringList cautions() const;
    [[nodiscard]] QStringList otherCautions() const;
    [[nodiscard]] QStringList tasks() const;
    [[nodiscard]] int task() const;
    [[nodiscard]] QUrl photo() const;
    [[nodiscard]] QVariantMap details() const;
    [[nodiscard]] QString detailText() const;
    [[nodiscard]] QVariantList marks() const;
    [[nodiscard]] int piece() const { return piece_; }
    void setPiece(int piece);
    [[nodiscard]] QString placed() const;    // "2 × screw M5: 1 of 2 on the photo"; empty without a piece
    [[nodiscard]] QString bagsInUse() const; // "7, 8": of steps that are not refitted; empty if none
    [[nodiscard]] bool saying() const { return saying_; }
    [[nodiscard]] LineModel* hardware() { return &hardware_; }
    [[nodiscard]] LineModel* photos() { return &photos_; }
    [[nodiscard]] LineModel* wires() { return &wires_; }
    [[nodiscard]] LineModel* steps() { return &steps_; }

    // The step's id for photos and gatherings that are taken before it is said; keeps the draft from now on.
    Q_INVOKABLE QString claim();

    Q_INVOKABLE void setTitle(const QString& title);
    Q_INVOKABLE void setNote(const QString& note);
    Q_INVOKABLE void setDetail(const QString& name, const QString& text);
    // The piece sits there, in parts of the photo; a touch on one of its marks takes that one away. No more
    // than there are of it: errors.place.
    Q_INVOKABLE void place(qreal x, qreal y);
    Q_INVOKABLE void otherPhoto(); // shows the one before, after the oldest the newest
    Q_INVOKABLE void setBag(const QString& bag);
    Q_INVOKABLE void addHardware(int count, const QString& what, const QString& thread, const QString& length,
                                 const QString& torque);
    Q_INVOKABLE void removeHardware(int index);
    Q_INVOKABLE void addCaution(int index); // of otherCautions
    Q_INVOKABLE void chooseTask(int index); // of tasks; -1 for none
    Q_INVOKABLE void nameTask(const QString& title);
    Q_INVOKABLE void keep(); // says the step; errors by field name: title

signals:
    void kept();

protected:
    void show(const Snapshot& snapshot) override;

private:
    [[nodiscard]] QString form() const;
    void begin(const Snapshot& snapshot);
    void restore(const QByteArray& json);
    void changedDraft();
    void showDraft();

    QString corrects_;
    StripDraft draft_;
    int shownPhoto_{}; // index into photos
    int piece_{-1};
    bool begun_{};
    bool asked_{};
    bool saying_{};
    LineModel hardware_, photos_, wires_, steps_;
};

} // namespace undercowl::ui
