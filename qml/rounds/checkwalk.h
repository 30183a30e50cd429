// Checks that are gone through one at a time, each with its answer: what the rounds, the function checks and
// the guided photos share.
#pragma once

#include "core/journal/rounds.h"
#include "qml/shell/jobscreen.h"
#include "qml/shell/linemodel.h"

#include <QtQml/qqmlregistration.h>

#include <vector>

namespace undercowl::ui {

// One check of the walk as it stands.
struct WalkedCheck {
    QString group;
    QString text;
    QString answer{};  // in words; empty: not come to yet
    QString mark{};    // its code
    std::string key{}; // as the job keeps it; 'text' is what the language makes of it
};

// The title of a round: of the lists that it was put together from.
[[nodiscard]] QString roundTitle(const std::string& title);

// lines: all checks: id its place, title, detail group, more answer, mark the answer's code.
class CheckWalk : public undercowl::ui::JobScreen {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Each walk is one of its kinds")
    Q_PROPERTY(int count READ count NOTIFY changed)
    Q_PROPERTY(int open READ open NOTIFY changed)
    Q_PROPERTY(int current READ current NOTIFY changed)
    Q_PROPERTY(bool finished READ finished NOTIFY changed)
    Q_PROPERTY(QString group READ group NOTIFY changed)
    Q_PROPERTY(QString check READ check NOTIFY changed)
    Q_PROPERTY(QString key READ key NOTIFY changed)
    Q_PROPERTY(QString answered READ answered NOTIFY changed)
    Q_PROPERTY(undercowl::ui::LineModel* lines READ lines CONSTANT)

public:
    using JobScreen::JobScreen;

    [[nodiscard]] int count() const { return static_cast<int>(checks_.size()); }
    [[nodiscard]] int open() const;                      // checks without an answer
    [[nodiscard]] int current() const { return place_; } // from 0; -1 while the list is shown
    [[nodiscard]] bool finished() const { return place_ < 0; }
    [[nodiscard]] QString group() const;
    [[nodiscard]] QString check() const;
    [[nodiscard]] QString key() const;      // what the job keeps the check as
    [[nodiscard]] QString answered() const; // the answer that it has already
    [[nodiscard]] LineModel* lines() { return &lines_; }

    Q_INVOKABLE void goTo(int place); // shown even when it is answered; -1: the list
    Q_INVOKABLE void back();          // the one before
    Q_INVOKABLE void on();            // the next one that is open, else the list

protected:
    // The checks as they stand now. When the one that was asked has got its answer, the next open one comes.
    void walk(std::vector<WalkedCheck> checks);
    // Asks the store for the shop's list, and shows the job once it is there.
    void readList(journal::RoundUse use);
    [[nodiscard]] const std::vector<job::RoundCheck>& list() const { return list_; }

private:
    [[nodiscard]] int nextOpen(int from) const;

    std::vector<WalkedCheck> checks_;
    std::vector<job::RoundCheck> list_;
    int place_{-1};
    bool begun_{};
    bool looking_{}; // at one that has its answer
    LineModel lines_;
};

} // namespace undercowl::ui
