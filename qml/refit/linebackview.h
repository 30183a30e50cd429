// Hoses, vents and control cables read back on refit, one to a screen: photo, routing, ends.
#pragma once

#include "core/job/lines.h"
#include "qml/refit/readbackwalk.h"

#include <QVariantList>
#include <QtQml/qqmlregistration.h>

namespace undercowl::ui {

// step           where it begins; empty: with the first that was not read back
// details        routing, ends, adjustment as found, fluids let out, the note: a line each; says so when
// nobody wrote
//                how it runs
// refitted       its step is on again
// photo, marks   of the strip step, with the places of its hardware
// briefSentence  where its ends sit
class LineBackView : public undercowl::ui::ReadBackWalk {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QString step MEMBER wanted_ NOTIFY changed)
    Q_PROPERTY(QString stepId READ stepId NOTIFY changed)
    Q_PROPERTY(QString details READ details NOTIFY changed)
    Q_PROPERTY(bool refitted READ refitted NOTIFY changed)
    Q_PROPERTY(QUrl photo READ photo NOTIFY changed)
    Q_PROPERTY(QVariantList marks READ marks NOTIFY changed)

public:
    using ReadBackWalk::ReadBackWalk;

    [[nodiscard]] int count() const override { return static_cast<int>(lines_.size()); }
    [[nodiscard]] QString briefSentence() const override;
    [[nodiscard]] QString stepId() const;
    [[nodiscard]] QString details() const;
    [[nodiscard]] bool refitted() const;
    [[nodiscard]] QUrl photo() const;
    [[nodiscard]] QVariantList marks() const;

protected:
    void show(const Snapshot& snapshot) override;
    [[nodiscard]] std::optional<job::MatchOutcome> outcome(int index) const override;
    [[nodiscard]] QString named(int index) const override;
    [[nodiscard]] QString spoken() const override;
    [[nodiscard]] std::vector<journal::Draft> saysMatch() const override;
    [[nodiscard]] std::vector<journal::Draft> saysMismatch(const std::string& note) const override;

private:
    [[nodiscard]] const job::RefitStep* line() const; // null when over

    QString wanted_;
    SnapshotPtr shown_; // the lines point into it
    std::vector<job::RefitStep> lines_;
    bool begun_{};
};

} // namespace undercowl::ui
