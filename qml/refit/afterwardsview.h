// What is still to be adjusted, bled or tried after parts went on again, and what the machine must not do
// until then.
#pragma once

#include "qml/shell/jobscreen.h"
#include "qml/shell/linemodel.h"

#include <QStringList>
#include <QtQml/qqmlregistration.h>

namespace undercowl::ui {

// open    lines: title what is to be done, detail after which step, more step id, mark "ride" or "start"
//         when it keeps the machine from it
// left    the same for what was left out: aside the reason
// bans    "Do not ride: rear wheel is not on again", one line each
class AfterwardsView : public undercowl::ui::JobScreen {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(undercowl::ui::LineModel* open READ open CONSTANT)
    Q_PROPERTY(undercowl::ui::LineModel* left READ left CONSTANT)
    Q_PROPERTY(QStringList bans READ bans NOTIFY changed)

public:
    using JobScreen::JobScreen;

    [[nodiscard]] LineModel* open() { return &open_; }
    [[nodiscard]] LineModel* left() { return &left_; }
    [[nodiscard]] QStringList bans() const { return bans_; }

    Q_INVOKABLE void done(const QString& step, const QString& what);
    // Refused with errors.reason while the reason is empty.
    Q_INVOKABLE void leaveOut(const QString& step, const QString& what, const QString& reason);

signals:
    void saidSo();

protected:
    void show(const Snapshot& snapshot) override;

private:
    void say(journal::Draft draft, const QString& undoText);
    // What the step keeps the work as that is shown in these words.
    [[nodiscard]] std::string keptAs(const QString& step, const QString& shown) const;

    LineModel open_, left_;
    QStringList bans_;
};

// "Do not ride: rear wheel is not on again."; one line for each ban and step, shared by the job's page.
[[nodiscard]] QStringList banWords(const job::Job& job);

} // namespace undercowl::ui
