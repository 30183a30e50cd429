// The wiring read back on refit, one wire to a screen.
#pragma once

#include "core/wiring/readback.h"
#include "qml/shell/jobscreen.h"

#include <QPointF>
#include <QStringList>
#include <QVariantList>
#include <QtQml/qqmlregistration.h>

#include <map>

namespace undercowl::ui {

// gathering, half   what is read back; half is a code
// index, count      which wire of how many; index == count: all have been read
// base, tracer, words, place, details   the wire
// reads             which answer is read: "as found", "as it should be"
// mustChoose        the two answers differ: nothing may be confirmed before one was chosen
// other*            the other answer, while one must be chosen
// sentence, colourSentence   the wire as it is said aloud, English; the colour alone
// twin              what tells it from its twins; empty without a twin
// photo, marks, centre   the photo with the place marked
// checked           "matches", "does not match" or empty: what was said of it on an earlier pass
// mismatch          'does not match' was said of this wire just now: what next is asked
// matching, failing     how many match, and how many do not
class ReadBackView : public undercowl::ui::JobScreen {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QString gathering MEMBER gatheringId_ NOTIFY changed REQUIRED)
    Q_PROPERTY(QString half READ half WRITE setHalf NOTIFY changed)
    Q_PROPERTY(QString title READ title NOTIFY changed)
    Q_PROPERTY(int index READ index NOTIFY changed)
    Q_PROPERTY(int count READ count NOTIFY changed)
    Q_PROPERTY(bool over READ over NOTIFY changed)
    Q_PROPERTY(QString base READ base NOTIFY changed)
    Q_PROPERTY(QString tracer READ tracer NOTIFY changed)
    Q_PROPERTY(QString words READ wireWords NOTIFY changed)
    Q_PROPERTY(QString place READ place NOTIFY changed)
    Q_PROPERTY(QString details READ wireDetails NOTIFY changed)
    Q_PROPERTY(QString reads READ reads NOTIFY changed)
    Q_PROPERTY(QString source READ source NOTIFY changed)
    Q_PROPERTY(bool mustChoose READ mustChoose NOTIFY changed)
    Q_PROPERTY(QString otherBase READ otherBase NOTIFY changed)
    Q_PROPERTY(QString otherTracer READ otherTracer NOTIFY changed)
    Q_PROPERTY(QString otherWords READ otherWords NOTIFY changed)
    Q_PROPERTY(QString otherReads READ otherReads NOTIFY changed)
    Q_PROPERTY(QString sentence READ sentence NOTIFY changed)
    Q_PROPERTY(QString colourSentence READ colourSentence NOTIFY changed)
    Q_PROPERTY(QString twin READ twin NOTIFY changed)
    Q_PROPERTY(QUrl photo READ photo NOTIFY changed)
    Q_PROPERTY(QVariantList marks READ marks NOTIFY changed)
    Q_PROPERTY(QPointF centre READ centre NOTIFY changed)
    Q_PROPERTY(QString checked READ checked NOTIFY changed)
    Q_PROPERTY(bool mismatch READ mismatch NOTIFY changed)
    Q_PROPERTY(int matching READ matching NOTIFY changed)
    Q_PROPERTY(int failing READ failing NOTIFY changed)
    Q_PROPERTY(QStringList otherPlaces READ otherPlaces NOTIFY changed)
    Q_PROPERTY(bool saying READ saying NOTIFY changed)

public:
    using JobScreen::JobScreen;

    [[nodiscard]] QString half() const;
    void setHalf(const QString& code);
    [[nodiscard]] QString title() const;
    [[nodiscard]] int index() const { return index_; }
    [[nodiscard]] int count() const { return static_cast<int>(items_.size()); }
    [[nodiscard]] bool over() const { return !items_.empty() && index_ >= count(); }
    [[nodiscard]] QString base() const;
    [[nodiscard]] QString tracer() const;
    [[nodiscard]] QString wireWords() const;
    [[nodiscard]] QString place() const;
    [[nodiscard]] QString wireDetails() const;
    [[nodiscard]] QString reads() const;
    [[nodiscard]] QString source() const;
    [[nodiscard]] bool mustChoose() const;
    [[nodiscard]] QString otherBase() const;
    [[nodiscard]] QString otherTracer() const;
    [[nodiscard]] QString otherWords() const;
    [[nodiscard]] QString otherReads() const;
    [[nodiscard]] QString sentence() const;
    [[nodiscard]] QString colourSentence() const;
    [[nodiscard]] QString twin() const;
    [[nodiscard]] QUrl photo() const;
    [[nodiscard]] QVariantList marks() const;
    [[nodiscard]] QPointF centre() const;
    [[nodiscard]] QString checked() const;
    [[nodiscard]] bool mismatch() const { return mismatch_; }
    [[nodiscard]] int matching() const;
    [[nodiscard]] int failing() const;
    [[nodiscard]] QStringList otherPlaces() const; // with which this wire may be swapped
    [[nodiscard]] bool saying() const { return saying_; }

    Q_INVOKABLE void done();         // it matches: says the check and the answer 'as refitted', goes on
    Q_INVOKABLE void doesNotMatch(); // says so; then mismatch
    Q_INVOKABLE void swappedWith(int place); // index in otherPlaces: adds that to what was said
    Q_INVOKABLE void lookAgain();            // the same wire once more
    Q_INVOKABLE void goOn();                 // to the next wire, without a word
    Q_INVOKABLE void back();
    Q_INVOKABLE void again();            // from the first wire
    Q_INVOKABLE void choose(bool other); // which of two answers holds, where they differ

protected:
    void show(const Snapshot& snapshot) override;

private:
    [[nodiscard]] const wiring::Gathering* find() const;
    [[nodiscard]] const wiring::ReadBackItem* item() const; // null when over
    [[nodiscard]] const job::WireCheck* check(const wiring::PlaceKey& key) const;
    [[nodiscard]] int counted(job::MatchOutcome outcome) const;
    void say(std::vector<journal::Draft> drafts, const QString& undoText, bool goesOn);

    QString gatheringId_;
    wiring::Half half_{};
    std::vector<wiring::ReadBackItem> items_;
    std::map<wiring::PlaceKey, wiring::Answer> chosen_;
    int index_{};
    bool begun_{};
    bool mismatch_{};
    bool saying_{};
};

} // namespace undercowl::ui
