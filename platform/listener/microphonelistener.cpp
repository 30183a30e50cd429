#include "platform/listener/microphonelistener.h"

#include <QAudioDevice>
#include <QAudioFormat>
#include <QAudioSource>
#include <QMediaDevices>
#include <QThread>

#include <cstring>

namespace undercowl::platform {

namespace {

QAudioFormat format() {
    QAudioFormat wanted;
    wanted.setSampleRate(earRate);
    wanted.setChannelCount(1);
    wanted.setSampleFormat(QAudioFormat::Int16);
    return wanted;
}

Samples samplesOf(const QByteArray& sound) {
    Samples samples(static_cast<std::size_t>(sound.size()) / sizeof(qint16));
    for (std::size_t i = 0; i < samples.size(); ++i) {
        qint16 value = 0;
        std::memcpy(&value, sound.constData() + i * sizeof value, sizeof value);
        samples[i] = static_cast<float>(value) / 32768;
    }
    return samples;
}

constexpr qsizetype longestBytes =
    qsizetype{longestSeconds} * earRate * static_cast<qsizetype>(sizeof(qint16));

} // namespace

class MicrophoneListener::Worker : public QObject {
public:
    struct Result {
        Heard heard;
        QString problem; // the ear cannot be opened
    };

    // The ear is opened by the first call and kept.
    Result hear(const QByteArray& sound) {
        Result result;
        if (open(result.problem))
            result.heard = ear_->hear(samplesOf(sound));
        return result;
    }

    bool open(QString& problem) {
        if (ear_ != nullptr)
            return true;
        auto opened = openEar();
        if (!opened) {
            problem = QString::fromStdString(opened.error());
            return false;
        }
        ear_ = std::move(*opened);
        return true;
    }

private:
    std::unique_ptr<Ear> ear_;
};

MicrophoneListener::MicrophoneListener(QObject* parent) : Listener(parent) {}

MicrophoneListener::~MicrophoneListener() {
    if (thread_ != nullptr) {
        thread_->quit();
        thread_->wait();
    }
}

void MicrophoneListener::start() {
    if (state() == State::Listening || state() == State::Thinking)
        return;
    const QAudioDevice microphone = QMediaDevices::defaultAudioInput();
    if (microphone.isNull() || !microphone.isFormatSupported(format())) {
        setState(State::NoMicrophone,
                 tr("No microphone answers. Allow it in the device's settings, or use the buttons."));
        return;
    }
    if (thread_ == nullptr) {
        thread_ = std::make_unique<QThread>();
        worker_ = new Worker;
        worker_->moveToThread(thread_.get());
        connect(thread_.get(), &QThread::finished, worker_, &QObject::deleteLater);
        thread_->start();
        // While the first sentence is spoken the ear is opened.
        QMetaObject::invokeMethod(worker_, [worker = worker_] {
            QString ignored; // told by hear()
            (void)worker->open(ignored);
        });
    }
    sound_.clear();
    source_ = std::make_unique<QAudioSource>(microphone, format());
    device_ = source_->start();
    if (device_ == nullptr) {
        source_.reset();
        setState(State::NoMicrophone,
                 tr("The microphone does not open. Close other programs that use it, or use the buttons."));
        return;
    }
    connect(device_, &QIODevice::readyRead, this, &MicrophoneListener::take);
    setState(State::Listening);
}

void MicrophoneListener::take() {
    sound_ += device_->readAll();
    if (sound_.size() >= longestBytes)
        stop();
}

void MicrophoneListener::stop() {
    if (state() != State::Listening)
        return;
    sound_ += device_->readAll();
    disconnect(device_, nullptr, this, nullptr);
    source_->stop();
    source_.release()->deleteLater(); // it may be what called us
    device_ = nullptr;
    setState(State::Thinking);
    hear(sound_.left(longestBytes));
    sound_.clear();
}

void MicrophoneListener::hear(const QByteArray& sound) {
    QMetaObject::invokeMethod(worker_, [this, worker = worker_, sound] {
        const Worker::Result result = worker->hear(sound);
        // Dropped with this object if it goes first.
        QMetaObject::invokeMethod(this, [this, result] {
            if (!result.problem.isEmpty()) {
                setState(State::Failed, result.problem);
                return;
            }
            setState(State::Idle);
            emit heard(result.heard);
        });
    });
}

} // namespace undercowl::platform
