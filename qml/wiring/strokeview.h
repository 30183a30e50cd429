// Reading the wires of one half of a gathering off a photo. The reader proposes; the mechanic confirms. Each
// confirmed wire is said at once as 'as found', and calibrates the light for what is read later.
//
// What is proposed and not yet confirmed lives in a draft of the store, so that it survives leaving the
// screen.
#pragma once

#include "qml/shell/jobscreen.h"
#include "qml/wiring/photoreader.h"
#include "qml/wiring/wirerows.h"

#include <QVariantList>
#include <QVariantMap>
#include <QtQml/qqmlregistration.h>

#include <map>
#include <optional>

namespace undercowl::ui {

// gathering, half    which wires; half is a code ("loom", "unit")
// photo              what is stroked on; empty: there is none yet
// rows, current      the wires in order of place; index of the one in question, -1 for none
// wire               of the current row: place, base, tracer, words, sureness, reason, sure, found,
// confirmed,
//                    empty, shares, choices (list of base, tracer, words: what else it may be)
// path, across       centre line of the current wire, parts of the photo; its width, a part of the photo's
// width named              a tap named the wire that is shown: step() goes to the next beside it level it
// lies more level than steep: the next wires are above and below it finding            wires were proposed
// without a stroke, or a stroke is asked for: see `findNote` outlines           those wires: points, across,
// accepted, perhaps (it may be another one again) acceptedCount      how many of them marks              for
// PhotoFrame: the current wire, and place 1 waitsForEnd        the first wire was tapped: the last one is
// asked for asksForCard        the next tap names white paper in the picture, which tells the light note what
// does not fit: "5 wires for 6 places"; empty if nothing canBringBack       a stroke replaced rows that were
// worked on
class StrokeView : public undercowl::ui::JobScreen {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QString gathering MEMBER gatheringId_ NOTIFY changed REQUIRED)
    Q_PROPERTY(QString half READ half WRITE setHalf NOTIFY changed)
    Q_PROPERTY(QString title READ title NOTIFY changed)
    Q_PROPERTY(QUrl photo READ photo NOTIFY changed)
    Q_PROPERTY(undercowl::ui::WireRows* rows READ rows CONSTANT)
    Q_PROPERTY(undercowl::ui::PhotoReader* reader READ reader CONSTANT)
    Q_PROPERTY(int current READ current WRITE setCurrent NOTIFY currentChanged)
    Q_PROPERTY(QVariantMap wire READ wire NOTIFY currentChanged)
    Q_PROPERTY(QVariantList path READ path NOTIFY currentChanged)
    Q_PROPERTY(qreal across READ across NOTIFY currentChanged)
    Q_PROPERTY(bool named READ named NOTIFY currentChanged)
    Q_PROPERTY(bool level READ level NOTIFY currentChanged)
    Q_PROPERTY(bool finding READ finding NOTIFY currentChanged)
    Q_PROPERTY(QVariantList outlines READ outlines NOTIFY currentChanged)
    Q_PROPERTY(int acceptedCount READ acceptedCount NOTIFY currentChanged)
    Q_PROPERTY(QString findNote READ findNote NOTIFY currentChanged)
    Q_PROPERTY(QVariantList marks READ marks NOTIFY currentChanged)
    Q_PROPERTY(bool waitsForEnd READ waitsForEnd NOTIFY currentChanged)
    Q_PROPERTY(bool asksForCard READ asksForCard NOTIFY currentChanged)
    Q_PROPERTY(QString note READ note NOTIFY currentChanged)
    Q_PROPERTY(bool canBringBack READ canBringBack NOTIFY currentChanged)

public:
    explicit StrokeView(QObject* parent = nullptr);

    [[nodiscard]] QString half() const;
    void setHalf(const QString& code);
    [[nodiscard]] QString title() const;
    [[nodiscard]] QUrl photo() const;
    [[nodiscard]] WireRows* rows() { return &rows_; }
    [[nodiscard]] PhotoReader* reader() { return &reader_; }
    [[nodiscard]] int current() const { return current_; }
    void setCurrent(int row);
    [[nodiscard]] QVariantMap wire() const;
    [[nodiscard]] QVariantList path() const;
    [[nodiscard]] qreal across() const;
    [[nodiscard]] bool named() const;
    [[nodiscard]] bool level() const;
    [[nodiscard]] bool finding() const { return proposal_.has_value(); }
    [[nodiscard]] QVariantList outlines() const;
    [[nodiscard]] int acceptedCount() const;
    [[nodiscard]] QString findNote() const;
    [[nodiscard]] QVariantList marks() const;
    [[nodiscard]] bool waitsForEnd() const { return firstTap_.has_value(); }
    [[nodiscard]] bool asksForCard() const { return asksForCard_; }
    [[nodiscard]] QString note() const;
    [[nodiscard]] bool canBringBack() const { return !previous_.empty(); }

    // Places are parts of the photo. A stroke across the wires, place 1 first.
    // While wires are proposed: the mouth of the connector, whose wires alone are proposed then.
    Q_INVOKABLE void stroke(const QVariantList& points);
    // Before there are rows: the first and then the last wire. Later: this wire is looked at again.
    // While wires are proposed: accepts the one that is touched, or no longer.
    Q_INVOKABLE void tap(qreal x, qreal y);
    Q_INVOKABLE void step(bool forward); // to the wire right of, or below, the one that was named; or back
    Q_INVOKABLE void findAll();          // proposes the wires without a stroke
    Q_INVOKABLE void acceptAll();        // but those that may be another one again
    Q_INVOKABLE void takeAccepted();     // they become the rows
    Q_INVOKABLE void stopFinding();
    Q_INVOKABLE void askForCard(bool ask);
    Q_INVOKABLE void lookAgain(); // at the current wire, with what was confirmed meanwhile

    Q_INVOKABLE void confirm();        // the proposal is right
    Q_INVOKABLE void take(int choice); // it is one of wire.choices
    Q_INVOKABLE void pick(const QString& base, const QString& tracer, bool heard = false); // or it was said
    Q_INVOKABLE void confirmSure(); // all that are proposed as sure
    Q_INVOKABLE void takeBack();    // the current one is not confirmed any more

    Q_INVOKABLE void reverse();
    Q_INVOKABLE void removeWire();
    Q_INVOKABLE void insertWire(bool after); // beside the current one, to be tapped or picked
    Q_INVOKABLE void setEmpty();             // nothing is in this place
    Q_INVOKABLE void share();                // second wire in the place before, or in one of its own again
    Q_INVOKABLE void bringBack();

signals:
    void currentChanged();

protected:
    void show(const Snapshot& snapshot) override;

private:
    // None: the place was said to be empty.
    using Answers = std::map<wiring::PlaceKey, std::optional<wiring::PlaceAnswer>>;

    [[nodiscard]] const wiring::Gathering* gathering() const; // of the snapshot; null if unknown
    [[nodiscard]] QString form() const;
    [[nodiscard]] std::string photoId() const;
    void begin();
    void restore(const QByteArray& draft);
    [[nodiscard]] std::vector<WireRow> rowsFromJournal() const;
    void keep();
    void swept(const std::vector<sight::WireReading>& readings);
    void answered(const sight::WireReading& reading); // to a tap or a step
    void reread(const sight::WireReading& reading);
    void accept(QPointF at);
    [[nodiscard]] const WireRow* shown() const; // the wire that is outlined; null for none
    [[nodiscard]] WireRow rowFrom(const sight::WireReading& reading) const;
    // By value: the row that is settled is replaced, and its candidates with it.
    void settle(int row, colour::WireColour wire, wiring::HowKnown how, double probability);
    void settleCurrent(colour::WireColour wire, wiring::HowKnown how, double probability);
    void sayChanges(const QString& undoText);
    void remember();  // before a change that undo may take back
    void reconcile(); // follow what undo did to the journal
    [[nodiscard]] Answers answersInJournal() const;
    void photoOpened(); // tells the reader the confirmed wires; reads again where a card was named
    void goOn();        // to the next open row
    void changedRows(); // keep and tell

    QString gatheringId_;
    wiring::Half half_{};
    WireRows rows_;
    PhotoReader reader_;
    int current_{-1};
    int asked_{-1};  // the row that a tap was asked for
    int named_{-1};  // the row whose wire a tap named
    bool stepped_{}; // what is asked for is the wire beside it
    std::optional<QPointF> firstTap_;
    WireRow first_;      // the wire that the first tap named
    bool asksForLast_{}; // the last tap is being looked at
    std::optional<sight::Proposal> proposal_;
    bool fromMouth_ = false;     // it is of the wires that come from there alone
    std::vector<bool> accepted_; // of its wires
    QList<QPointF> along_;       // the last stroke
    bool asksForCard_{};
    bool sweepAgain_{}; // once the photo is open with the card
    std::vector<WireRow> previous_;
    Answers said_; // what the journal holds of these rows
    std::vector<WireRow> rowsBefore_;
    Answers saidBefore_; // the state before the last change: undo leads there
    int underway_{};
    bool begun_{};
    bool fed_{}; // the reader knows the confirmed wires
};

} // namespace undercowl::ui
