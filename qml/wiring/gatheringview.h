// One gathering: what it is, the map of its places, its twins.
#pragma once

#include "qml/shell/formdraft.h"
#include "qml/shell/jobscreen.h"
#include "qml/shell/linemodel.h"

#include <QVariantList>
#include <QtQml/qqmlregistration.h>

namespace undercowl::ui {

// gathering    id; empty while it is not described yet
// step         strip step that a new one belongs to
// replaces     the gathering in whose place this new part came; of a new one set by the screen
// condition    as found and what was done about it, in words
// half         code of the half that 'places' and 'twins' show
// places       every place: id "3/1", title the wire in words, detail terminal and function, more what is not
// as
//              it should be, aside "place 3", mark the wire's code "GN/WH" (empty: nothing known), on
//              refitted
// twins        id number and slot of each "2/1 5/1", title the advice, on settled
// tags         of the places that have a twin: id "2/1", title "place 2", detail the tag
// first        of PhotoFrame's marks: place 1
class GatheringView : public undercowl::ui::JobScreen {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QString gathering READ gathering WRITE setGathering NOTIFY changed)
    Q_PROPERTY(QString step MEMBER step_ NOTIFY changed)
    Q_PROPERTY(QString draftName READ draftName NOTIFY changed)
    Q_PROPERTY(QString stepOf READ stepOf NOTIFY changed)
    Q_PROPERTY(QString replaces READ replaces WRITE setReplaces NOTIFY changed)
    Q_PROPERTY(QString condition READ condition NOTIFY changed)
    Q_PROPERTY(QString half READ half WRITE setHalf NOTIFY changed)
    Q_PROPERTY(bool known READ known NOTIFY changed)
    Q_PROPERTY(QString title READ title NOTIFY changed)
    Q_PROPERTY(QString description READ description NOTIFY changed)
    Q_PROPERTY(QUrl photo READ photo NOTIFY changed)
    Q_PROPERTY(QVariantList first READ first NOTIFY changed)
    Q_PROPERTY(int found READ found NOTIFY changed)
    Q_PROPERTY(undercowl::ui::LineModel* places READ places CONSTANT)
    Q_PROPERTY(undercowl::ui::LineModel* twins READ twins CONSTANT)
    Q_PROPERTY(undercowl::ui::LineModel* tags READ tags CONSTANT)

public:
    using JobScreen::JobScreen;

    [[nodiscard]] QString gathering() const { return id_; }
    void setGathering(const QString& id);
    // What tells its draft from those of other gatherings. One property, since a binding that reads two of
    // them while a page is being made is taken for a loop.
    [[nodiscard]] QString draftName() const { return id_.isEmpty() ? step_ + replaces_ : id_; }
    [[nodiscard]] QString stepOf() const; // the strip step that it belongs to
    [[nodiscard]] QString replaces() const;
    void setReplaces(const QString& id);
    [[nodiscard]] QString condition() const;
    [[nodiscard]] QString half() const;
    void setHalf(const QString& code);
    [[nodiscard]] bool known() const { return find() != nullptr; }
    [[nodiscard]] QString title() const;
    [[nodiscard]] QString description() const;
    [[nodiscard]] QUrl photo() const;
    [[nodiscard]] QVariantList first() const;
    [[nodiscard]] int found() const; // wires confirmed as found in this half
    [[nodiscard]] LineModel* places() { return &places_; }
    [[nodiscard]] LineModel* twins() { return &twins_; }
    [[nodiscard]] LineModel* tags() { return &tags_; }

    // Says what the draft's values describe: title, kind, places, rows, side, latch, condition, treated.
    // Errors by these names.
    Q_INVOKABLE void describe(undercowl::ui::FormDraft* draft);
    Q_INVOKABLE QVariantMap values() const;          // of the known gathering, for the draft of a correction
    Q_INVOKABLE void markFirst(qreal x, qreal y);    // place 1 on the photo, in parts of it
    Q_INVOKABLE void tagTwins(const QString& twins); // an id of 'twins': letters for those without a tag
    Q_INVOKABLE void tag(const QString& place, const QString& tag); // "2/1"; an empty tag takes it off

signals:
    void described(const QString& id);

protected:
    void show(const Snapshot& snapshot) override;

private:
    [[nodiscard]] const wiring::Gathering* find() const;

    QString id_;
    QString step_;
    QString replaces_;
    wiring::Half half_{};
    LineModel places_, twins_, tags_;
};

// The gatherings of a strip step, or of the whole job when 'step' is empty.
// lines: title, detail what it is, more how far it is read.
class GatheringList : public undercowl::ui::JobScreen {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QString step MEMBER step_ NOTIFY changed)
    Q_PROPERTY(undercowl::ui::LineModel* lines READ lines CONSTANT)

public:
    using JobScreen::JobScreen;

    [[nodiscard]] LineModel* lines() { return &lines_; }

protected:
    void show(const Snapshot& snapshot) override;

private:
    QString step_;
    LineModel lines_;
};

} // namespace undercowl::ui
