// The device's microphone and the ear of this system. Sound stays in memory and goes when it was heard.
#pragma once

#include "platform/listener/listener.h"
#include "platform/listener/utterances.h"

#include <QByteArray>
#include <QTimer>

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
    void setDeaf(bool deaf) override;

protected:
    void setHandsFree(bool on) override;

private:
    class Worker; // on its own thread: opens the ear and hears
    struct Result;

    [[nodiscard]] bool openMicrophone(); // else NoMicrophone
    void closeMicrophone();
    void take();
    void give(Samples samples, bool held);
    void answer(const Result& result, bool held);
    void sleepSoon(); // awake for some seconds more
    void rest();      // to where it is without anything being said

    std::unique_ptr<QThread> thread_;
    Worker* worker_{}; // owned by the thread's event loop
    std::unique_ptr<QAudioSource> source_;
    QIODevice* device_{}; // of the source
    QByteArray sound_;    // since the button is held
    Utterances utterances_;
    QTimer asleep_;
    QTimer hearing_; // until the device's own voice has died away
    bool held_{};
    bool handsFree_{};
    bool deaf_{};
};

} // namespace undercowl::platform
