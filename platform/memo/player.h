// Playing a memo, as narrow as its screen needs it. What a device offers is behind it; tests use one that
// only remembers.
#pragma once

#include <QList>
#include <QObject>
#include <QString>

namespace undercowl::platform {

class Player : public QObject {
    Q_OBJECT
    Q_PROPERTY(bool playing READ playing NOTIFY changed)
    Q_PROPERTY(int milliseconds READ milliseconds NOTIFY changed)
    Q_PROPERTY(QString problem READ problem NOTIFY changed)

public:
    using QObject::QObject;

    [[nodiscard]] bool playing() const { return playing_; }
    [[nodiscard]] int milliseconds() const { return milliseconds_; } // of the memo, not of the clock
    [[nodiscard]] const QString& file() const { return file_; }      // that is played, or was last
    // Why it cannot be heard, and what to do; else empty.
    [[nodiscard]] QString problem() const { return problem_; }

    // From there, in place of what is being played; pace 1.5 is half as fast again, with the voice's own
    // pitch.
    void play(const QString& file, int fromMilliseconds, double pace) {
        file_ = file;
        begin(file, fromMilliseconds, pace);
    }
    virtual void stop() = 0; // 'milliseconds' stays, to go on from there
    // Reads the file on another thread; then outlined().
    virtual void outline(const QString& file) = 0;

signals:
    void changed();
    // How loud it is along the way, 0 to 1 as level.h counts, in at most 'outlineParts' parts; empty for a
    // file that cannot be read.
    void outlined(const QString& file, int milliseconds, const QList<qreal>& levels);

protected:
    virtual void begin(const QString& file, int fromMilliseconds, double pace) = 0;
    void tell(bool playing, int milliseconds, const QString& problem = {});

private:
    bool playing_{};
    int milliseconds_{};
    QString problem_;
    QString file_;
};

inline constexpr int outlineParts = 60;

} // namespace undercowl::platform
