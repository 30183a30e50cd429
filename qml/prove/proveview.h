// What the job disturbed is proved, one thing after the other.
#pragma once

#include "core/job/proving.h"
#include "qml/rounds/checkwalk.h"

#include <vector>

namespace undercowl::ui {

// The proof's 'against' in words of the language, in one line.
[[nodiscard]] QString againstWords(const job::ToProve& proof);
// "torque" or "wires" where its own reading or reading wires back proves it.
[[nodiscard]] QString ownCheck(const job::ToProve& proof);

// seconds: what another pair of eyes can sign: title what, detail who signed, on: signed.
// apart: how many cannot be proved yet, since their part is not on again.
// against: what stands against the one that is asked; while there is any it is not proved
// way: "torque" or "wires" where measuring or reading back proves the one that is asked
// unanswered: how many of the owner's complaints and of what did not work have no answer yet
// subject: its step or gathering
class ProveView : public undercowl::ui::CheckWalk {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(undercowl::ui::LineModel* seconds READ seconds CONSTANT)
    Q_PROPERTY(int toSign READ toSign NOTIFY changed)
    Q_PROPERTY(int apart READ apart NOTIFY changed)
    Q_PROPERTY(int unanswered READ unanswered NOTIFY changed)
    Q_PROPERTY(QString against READ against NOTIFY changed)
    Q_PROPERTY(QString way READ way NOTIFY changed)
    Q_PROPERTY(QString subject READ subject NOTIFY changed)

public:
    using CheckWalk::CheckWalk;

    [[nodiscard]] LineModel* seconds() { return &seconds_; }
    [[nodiscard]] int toSign() const; // of 'seconds', how many nobody has signed
    [[nodiscard]] int apart() const { return apart_; }
    [[nodiscard]] int unanswered() const { return unanswered_; }
    [[nodiscard]] QString against() const;
    [[nodiscard]] QString way() const;
    [[nodiscard]] QString subject() const;

    Q_INVOKABLE void
    proved(const QString& how); // may be empty, save for a torque; refused while 'against' stands
    Q_INVOKABLE void leaveOut(const QString& reason);     // refused without one
    Q_INVOKABLE void second(int line, const QString& by); // refused without a name

signals:
    void saidSo(); // the sync has returned

protected:
    void show(const Snapshot& snapshot) override;

private:
    [[nodiscard]] const job::ToProve* asked() const; // null while the list is shown
    void answer(bool leftOut, const std::string& note, const QString& undoText);

    std::vector<job::ToProve> due_; // one for each check of the walk
    std::vector<job::ToProve> forEyes_;
    LineModel seconds_;
    int apart_{};
    int unanswered_{};
};

} // namespace undercowl::ui
