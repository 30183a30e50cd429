// Memos through the device's loudspeaker, by Qt Multimedia.
#pragma once

#include "platform/memo/player.h"

#include <QBuffer>
#include <QTimer>

#include <memory>

class QAudioSink;

namespace undercowl::platform {

class LoudspeakerPlayer : public Player {
    Q_OBJECT

public:
    explicit LoudspeakerPlayer(QObject* parent = nullptr);
    ~LoudspeakerPlayer() override;

    void stop() override;
    void outline(const QString& file) override;

protected:
    void begin(const QString& file, int fromMilliseconds, double pace) override;

private:
    struct Ready;
    void start(const Ready& ready);
    void end(const QString& problem);
    [[nodiscard]] int position() const;

    std::unique_ptr<QAudioSink> sink_;
    QBuffer sound_;
    QTimer ticks_;
    int asked_{}; // counts the calls of begin(): what an earlier one prepared comes too late
    int from_{};
    double pace_{1};
};

} // namespace undercowl::platform
