// The wiring read back on refit, one wire to a screen.
#pragma once

#include "core/wiring/readback.h"
#include "qml/refit/readbackwalk.h"

#include <QPointF>
#include <QVariantList>
#include <QtQml/qqmlregistration.h>

#include <map>

namespace undercowl::ui {

// gathering, half   what is read back; half is a code
// base, tracer, words, details   the wire
// reads             which answer is read: "as found", "as it should be"; mustChoose: the two differ
// other*            the other answer, while one must be chosen
// briefSentence     the colour alone
// twin              what tells it from its twins; empty without a twin
// photo, marks, centre   the photo with the place marked
class ReadBackView : public undercowl::ui::ReadBackWalk {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QString gathering MEMBER gatheringId_ NOTIFY changed REQUIRED)
    Q_PROPERTY(QString half READ half WRITE setHalf NOTIFY changed)
    Q_PROPERTY(QString title READ title NOTIFY changed)
    Q_PROPERTY(QString base READ base NOTIFY changed)
    Q_PROPERTY(QString tracer READ tracer NOTIFY changed)
    Q_PROPERTY(QString words READ wireWords NOTIFY changed)
    Q_PROPERTY(QString details READ wireDetails NOTIFY changed)
    Q_PROPERTY(QString reads READ reads NOTIFY changed)
    Q_PROPERTY(QString source READ source NOTIFY changed)
    Q_PROPERTY(QString otherBase READ otherBase NOTIFY changed)
    Q_PROPERTY(QString otherTracer READ otherTracer NOTIFY changed)
    Q_PROPERTY(QString otherWords READ otherWords NOTIFY changed)
    Q_PROPERTY(QString otherReads READ otherReads NOTIFY changed)
    Q_PROPERTY(QString twin READ twin NOTIFY changed)
    Q_PROPERTY(QUrl photo READ photo NOTIFY changed)
    Q_PROPERTY(QVariantList marks READ marks NOTIFY changed)
    Q_PROPERTY(QPointF centre READ centre NOTIFY changed)

public:
    using ReadBackWalk::ReadBackWalk;

    [[nodiscard]] QString half() const;
    void setHalf(const QString& code);
    [[nodiscard]] QString title() const;
    [[nodiscard]] int count() const override { return static_cast<int>(items_.size()); }
    [[nodiscard]] QString base() const;
    [[nodiscard]] QString tracer() const;
    [[nodiscard]] QString wireWords() const;
    [[nodiscard]] QString wireDetails() const;
    [[nodiscard]] QString reads() const;
    [[nodiscard]] QString source() const;
    [[nodiscard]] bool mustChoose() const override;
    [[nodiscard]] QString otherBase() const;
    [[nodiscard]] QString otherTracer() const;
    [[nodiscard]] QString otherWords() const;
    [[nodiscard]] QString otherReads() const;
    [[nodiscard]] QString briefSentence() const override;
    [[nodiscard]] QString twin() const;
    [[nodiscard]] QUrl photo() const;
    [[nodiscard]] QVariantList marks() const;
    [[nodiscard]] QPointF centre() const;

    Q_INVOKABLE void choose(bool other); // which of two answers holds, where they differ

protected:
    void show(const Snapshot& snapshot) override;
    [[nodiscard]] std::optional<job::MatchOutcome> outcome(int index) const override;
    [[nodiscard]] QString named(int index) const override;
    [[nodiscard]] QString spoken() const override;
    [[nodiscard]] QString offered(int index) const override;
    [[nodiscard]] std::vector<journal::Draft> saysMatch() const override;
    [[nodiscard]] std::vector<journal::Draft> saysMismatch(const std::string& note) const override;

private:
    [[nodiscard]] const wiring::Gathering* find() const;
    [[nodiscard]] const wiring::ReadBackItem* item() const; // null when over
    [[nodiscard]] job::WireCheck checkOf(const wiring::ReadBackItem& item, job::MatchOutcome outcome) const;

    QString gatheringId_;
    wiring::Half half_{};
    std::vector<wiring::ReadBackItem> items_;
    std::map<wiring::PlaceKey, wiring::Answer> chosen_;
    bool begun_{};
};

} // namespace undercowl::ui
