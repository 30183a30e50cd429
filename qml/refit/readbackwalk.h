// What is read back on refit, one to a screen: the wires of a connector, or hoses, vents and cables.
#pragma once

#include "qml/shell/jobscreen.h"

#include <QStringList>
#include <QtQml/qqmlregistration.h>

#include <optional>
#include <vector>

namespace undercowl::ui {

// index, count      which one of how many; index == count: all have been read
// over              they have;  open: there is one on the screen
// place             its name in words: "place 3", "throttle cable"
// sentence          it as it is said aloud, English; when over, how many match
// briefSentence     what matters most of it alone
// mustChoose        nothing may be confirmed before one of two answers was chosen
// checked           "matches", "does not match" or empty: what was said of it on an earlier pass
// mismatch          'does not match' was said of this one just now: what next is asked
// matching, failing     how many match, and how many do not
// failingPlaces, openPlaces   their names, and of those that nothing was said of
// otherPlaces       with which this one may be swapped
class ReadBackWalk : public undercowl::ui::JobScreen {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("The two walks derive from it")
    Q_PROPERTY(int index READ index NOTIFY changed)
    Q_PROPERTY(int count READ count NOTIFY changed)
    Q_PROPERTY(bool over READ over NOTIFY changed)
    Q_PROPERTY(bool open READ open NOTIFY changed)
    Q_PROPERTY(QString place READ place NOTIFY changed)
    Q_PROPERTY(QString sentence READ sentence NOTIFY changed)
    Q_PROPERTY(QString briefSentence READ briefSentence NOTIFY changed)
    Q_PROPERTY(bool mustChoose READ mustChoose NOTIFY changed)
    Q_PROPERTY(QString checked READ checked NOTIFY changed)
    Q_PROPERTY(bool mismatch READ mismatch NOTIFY changed)
    Q_PROPERTY(int matching READ matching NOTIFY changed)
    Q_PROPERTY(int failing READ failing NOTIFY changed)
    Q_PROPERTY(QString failingPlaces READ failingPlaces NOTIFY changed)
    Q_PROPERTY(QString openPlaces READ openPlaces NOTIFY changed)
    Q_PROPERTY(QStringList otherPlaces READ otherPlaces NOTIFY changed)
    Q_PROPERTY(bool saying READ saying NOTIFY changed)

public:
    using JobScreen::JobScreen;

    [[nodiscard]] int index() const { return index_; }
    [[nodiscard]] virtual int count() const = 0;
    [[nodiscard]] bool over() const { return count() > 0 && index_ >= count(); }
    [[nodiscard]] bool open() const { return index_ >= 0 && index_ < count(); }
    [[nodiscard]] QString place() const { return open() ? named(index_) : QString(); }
    [[nodiscard]] QString sentence() const;
    [[nodiscard]] virtual QString briefSentence() const = 0;
    [[nodiscard]] virtual bool mustChoose() const { return false; }
    [[nodiscard]] QString checked() const;
    [[nodiscard]] bool mismatch() const { return mismatch_; }
    [[nodiscard]] int matching() const { return counted(job::MatchOutcome::Matches); }
    [[nodiscard]] int failing() const { return counted(job::MatchOutcome::DoesNotMatch); }
    [[nodiscard]] QString failingPlaces() const { return namesOf(job::MatchOutcome::DoesNotMatch); }
    [[nodiscard]] QString openPlaces() const { return namesOf(std::nullopt); }
    [[nodiscard]] QStringList otherPlaces() const;
    [[nodiscard]] bool saying() const { return saying_; }

    Q_INVOKABLE void done();                 // it matches: says so, goes on
    Q_INVOKABLE void doesNotMatch();         // says so; then mismatch
    Q_INVOKABLE void swappedWith(int place); // index in otherPlaces: adds that to what was said
    Q_INVOKABLE void lookAgain();            // the same one once more
    Q_INVOKABLE void goOn();                 // to the next one, without a word
    Q_INVOKABLE void back();
    Q_INVOKABLE void again(); // from the first one

signals:
    void stays(); // what was said of the one on the screen was undone: it is there as before

protected:
    // What was said of the one in that place before; nothing when nothing was.
    [[nodiscard]] virtual std::optional<job::MatchOutcome> outcome(int index) const = 0;
    [[nodiscard]] virtual QString named(int index) const = 0;
    // The one on the screen as it is said aloud.
    [[nodiscard]] virtual QString spoken() const = 0;
    // With what tells it from the others: "place 3: green".
    [[nodiscard]] virtual QString offered(int index) const { return named(index); }
    [[nodiscard]] virtual std::vector<journal::Draft> saysMatch() const = 0;
    [[nodiscard]] virtual std::vector<journal::Draft> saysMismatch(const std::string& note) const = 0;

    void goTo(int index); // within what there is; nothing is said
    void beginAnew();     // others are read back now
    // Each show() ends with it: undoing what was said leads back to where it was said.
    void followUndo();

private:
    [[nodiscard]] int counted(std::optional<job::MatchOutcome> outcome) const;
    [[nodiscard]] QString namesOf(std::optional<job::MatchOutcome> outcome) const;
    void say(std::vector<journal::Draft> drafts, const QString& undoText, bool goesOn);

    struct Said {
        int index{};
        std::optional<job::MatchOutcome> outcome;
    };

    int index_{};
    std::vector<Said> said_; // in this order
    bool mismatch_{};
    bool saying_{};
};

} // namespace undercowl::ui
