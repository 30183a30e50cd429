// Writes a memo from samples that somebody hands over: the microphone, or a test.
#pragma once

#include "platform/memo/recorder.h"

#include <QByteArray>

#include <memory>

class QThread;

namespace undercowl::platform {

// The file is written on a thread of its own: the touch thread never waits for the disk.
class SoundRecorder : public Recorder {
    Q_OBJECT

public:
    explicit SoundRecorder(QObject* parent = nullptr);
    ~SoundRecorder() override; // ends the file first

    void start(const QString& file) override;
    void stop() override;

protected:
    // Opens the source; the problem in words where that fails. 'open' is called once the file can be begun.
    [[nodiscard]] virtual QString open() = 0;
    virtual void close() = 0;
    // 16 bit samples of one channel at memoRate, as they come.
    void take(const QByteArray& sound);

private:
    class Writer;
    void end();
    void failed(const QString& why);

    std::unique_ptr<QThread> thread_;
    Writer* writer_{}; // owned by the thread's event loop
    QString file_;
    QByteArray untold_; // less than a tenth of a second
    qint64 samples_{};
};

} // namespace undercowl::platform
