// All proofs of the job on one page: each is ticked by its own touch, what was ticked is said at once.
#pragma once

#include "core/job/proving.h"
#include "qml/shell/formdraft.h"
#include "qml/shell/jobscreen.h"
#include "qml/shell/linemodel.h"

#include <QStringList>
#include <QtQml/qqmlregistration.h>

#include <vector>

namespace undercowl::ui {

// guarded   brakes, wheels, steering, and what keeps the machine from riding or starting
// others    the rest that is open
// proved    what has its answer: by a reading, by wires read back, or said before; detail how
// apart     how many cannot be proved yet, since their part is not on again
// Lines: id, title what, detail what stands against it, mark "torque" or "wires" where a reading or reading
// back proves it, on: ticked.
class ProofsView : public undercowl::ui::JobScreen {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QStringList ticked READ ticked WRITE setTicked NOTIFY changed)
    Q_PROPERTY(int apart READ apart NOTIFY changed)
    Q_PROPERTY(undercowl::ui::LineModel* guarded READ guarded CONSTANT)
    Q_PROPERTY(undercowl::ui::LineModel* others READ others CONSTANT)
    Q_PROPERTY(undercowl::ui::LineModel* proved READ proved CONSTANT)

public:
    using JobScreen::JobScreen;

    // Ids of those that are ticked, as the form's draft keeps them; those that are not open are left out.
    [[nodiscard]] const QStringList& ticked() const { return ticked_; }
    void setTicked(const QStringList& ids);
    [[nodiscard]] int apart() const { return apart_; }
    [[nodiscard]] LineModel* guarded() { return &guarded_; }
    [[nodiscard]] LineModel* others() { return &others_; }
    [[nodiscard]] LineModel* proved() { return &proved_; }

    Q_INVOKABLE QStringList toggled(const QString& id) const; // 'ticked' with that one changed
    Q_INVOKABLE QString subjectOf(const QString& id) const;   // step or gathering
    // Those that are ticked are proved, with the words on how, which may be empty.
    Q_INVOKABLE void keep(undercowl::ui::FormDraft* draft);

signals:
    void kept();

protected:
    void show(const Snapshot& snapshot) override;

private:
    [[nodiscard]] const job::ToProve* find(const QString& id) const;

    std::vector<job::ToProve> open_;
    QStringList wanted_; // as the draft has them
    QStringList ticked_;
    int apart_{};
    LineModel guarded_, others_, proved_;
};

} // namespace undercowl::ui
