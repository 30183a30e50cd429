// A spoken memo that is kept: how it looks along the way, and playing it.
#pragma once

#include "platform/memo/player.h"
#include "qml/shell/jobscreen.h"

#include <QList>
#include <QPointer>
#include <QtQml/qqmlregistration.h>

namespace undercowl::ui {

// player     the device's; null where there is none
// memo       id of the memo
// playing, place (0 to 1), time "0:03 / 0:12"
// levels     0 to 1 along the way;  marks: places, 0 to 1
// pace       1, or 1.5
// problem    why it cannot be heard, and what to do; else empty
class MemoPlayback : public undercowl::ui::JobScreen {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(undercowl::platform::Player* player READ player WRITE setPlayer NOTIFY changed)
    Q_PROPERTY(QString memo READ memo WRITE setMemo NOTIFY changed)
    Q_PROPERTY(bool playing READ playing NOTIFY moved)
    Q_PROPERTY(double place READ place NOTIFY moved)
    Q_PROPERTY(QString time READ time NOTIFY moved)
    Q_PROPERTY(QString problem READ problem NOTIFY moved)
    Q_PROPERTY(QList<qreal> levels READ levels NOTIFY changed)
    Q_PROPERTY(QList<qreal> marks READ marks NOTIFY changed)
    Q_PROPERTY(double pace READ pace WRITE setPace NOTIFY moved)

public:
    using JobScreen::JobScreen;
    ~MemoPlayback() override; // silences what it plays

    [[nodiscard]] platform::Player* player() const { return player_; }
    void setPlayer(platform::Player* player);
    [[nodiscard]] QString memo() const { return memo_; }
    void setMemo(const QString& memo);
    [[nodiscard]] bool playing() const { return ours() && player_->playing(); }
    [[nodiscard]] double place() const;
    [[nodiscard]] QString time() const;
    [[nodiscard]] QString problem() const { return ours() ? player_->problem() : QString(); }
    [[nodiscard]] QList<qreal> levels() const { return levels_; }
    [[nodiscard]] QList<qreal> marks() const;
    [[nodiscard]] double pace() const { return pace_; }
    void setPace(double pace); // goes on from where it is

    Q_INVOKABLE void toggle();         // plays on, or pauses
    Q_INVOKABLE void go(double place); // plays from there
    Q_INVOKABLE void toNextMark();     // plays from the mark after this place, or from the first
    Q_INVOKABLE void mark();           // marks this place

signals:
    void moved();

protected:
    void show(const Snapshot& snapshot) override;

private:
    [[nodiscard]] const job::Memo* find() const;
    [[nodiscard]] QString file() const;
    [[nodiscard]] bool ours() const {
        return player_ != nullptr && !file_.isEmpty() && player_->file() == file_;
    }
    [[nodiscard]] int at() const { return ours() ? player_->milliseconds() : 0; }
    void ask();

    QPointer<platform::Player> player_;
    QString memo_;
    QString file_;
    double pace_{1};
    int duration_{};
    QList<qreal> levels_;
};

} // namespace undercowl::ui
