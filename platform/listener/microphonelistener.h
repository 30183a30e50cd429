// The device's microphone and the ear of this system. Sound stays in memory and goes when it was heard.
#pragma once

#include "platform/listener/listener.h"

#include <QByteArray>

#include <memory>

class QAudioSource;
class QIODevice;
class QThread;

namespace undercowl::platform {

class MicrophoneListener : public Listener {
    Q_OBJECT

public:
    explicit MicrophoneListener(QObject* parent = nullptr);
    ~MicrophoneListener() override;

    void start() override;
    void stop() override;

private:
    class Worker; // on its own thread: opens the ear and hears

    void take();
    void hear(const QByteArray& sound);

    std::unique_ptr<QThread> thread_;
    Worker* worker_{}; // owned by the thread's event loop
    std::unique_ptr<QAudioSource> source_;
    QIODevice* device_{}; // of the source
    QByteArray sound_;
};

} // namespace undercowl::platform
