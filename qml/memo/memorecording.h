// A spoken memo while it is recorded.
#pragma once

#include "platform/memo/level.h"
#include "platform/memo/recorder.h"
#include "qml/shell/jobscreen.h"

#include <QList>
#include <QPointer>
#include <QtQml/qqmlregistration.h>

#include <memory>
#include <vector>

namespace undercowl::ui {

// recorder    the device's; null where there is none
// about       step, photo or finding that is open: what is attached is what it was when the memo began
// bySilence   it ends by itself once it has been quiet for three seconds after speech
// recording   it runs;  time "0:12", level 0 to 1, levels of the last six seconds
// marks       how many were set
// problem     why nothing is recorded, and what to do; else empty
//
// It goes on when the screen is left, and is kept whoever ends it.
class MemoRecording : public undercowl::ui::JobScreen {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(undercowl::platform::Recorder* recorder READ recorder WRITE setRecorder NOTIFY changed)
    Q_PROPERTY(QString about MEMBER about_ NOTIFY changed)
    Q_PROPERTY(bool bySilence MEMBER bySilence_ NOTIFY changed)
    Q_PROPERTY(bool recording READ recording NOTIFY changed)
    Q_PROPERTY(QString problem READ problem NOTIFY changed)
    Q_PROPERTY(QString time READ time NOTIFY heard)
    Q_PROPERTY(double level READ level NOTIFY heard)
    Q_PROPERTY(QList<qreal> levels READ levels NOTIFY heard)
    Q_PROPERTY(int marks READ marks NOTIFY heard)

public:
    using JobScreen::JobScreen;
    ~MemoRecording() override; // ends a memo that it began; it is kept

    [[nodiscard]] platform::Recorder* recorder() const { return recorder_; }
    void setRecorder(platform::Recorder* recorder);
    [[nodiscard]] bool recording() const;
    [[nodiscard]] QString problem() const;
    [[nodiscard]] QString time() const;
    [[nodiscard]] double level() const;
    [[nodiscard]] QList<qreal> levels() const { return levels_; }
    [[nodiscard]] int marks() const;

    Q_INVOKABLE void start();
    Q_INVOKABLE void stop();
    Q_INVOKABLE void mark(); // here is something to find again

signals:
    void heard();
    void kept();

protected:
    void show(const Snapshot& snapshot) override;

private:
    void listen();

    QPointer<platform::Recorder> recorder_;
    QString about_;
    bool bySilence_{};
    bool ours_{};
    QList<qreal> levels_;
    platform::SilenceWatch silence_;
    std::shared_ptr<std::vector<int>> marks_{std::make_shared<std::vector<int>>()};
};

// "0:12", "12:05".
[[nodiscard]] QString minutesAndSeconds(int milliseconds);

} // namespace undercowl::ui
