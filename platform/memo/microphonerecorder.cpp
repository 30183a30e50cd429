#include "platform/memo/microphonerecorder.h"

#include "platform/memo/level.h"

#include <QAudioDevice>
#include <QAudioFormat>
#include <QAudioSource>
#include <QMediaDevices>

namespace undercowl::platform {

MicrophoneRecorder::MicrophoneRecorder(QObject* parent) : SoundRecorder(parent) {}

MicrophoneRecorder::~MicrophoneRecorder() {
    stop();
}

QString MicrophoneRecorder::open() {
    QAudioFormat format;
    format.setSampleRate(memoRate);
    format.setChannelCount(1);
    format.setSampleFormat(QAudioFormat::Int16);
    const QAudioDevice microphone = QMediaDevices::defaultAudioInput();
    if (microphone.isNull() || !microphone.isFormatSupported(format))
        return tr("No microphone answers. Allow it in the device's settings, or type the memo.");
    source_ = std::make_unique<QAudioSource>(microphone, format);
    device_ = source_->start();
    if (device_ == nullptr) {
        source_.reset();
        return tr("The microphone does not open. Close other programs that use it, or type the memo.");
    }
    connect(device_, &QIODevice::readyRead, this, [this] { take(device_->readAll()); });
    return {};
}

void MicrophoneRecorder::close() {
    if (device_ == nullptr)
        return;
    take(device_->readAll());
    disconnect(device_, nullptr, this, nullptr);
    source_->stop();
    source_.release()->deleteLater(); // it may be what called us
    device_ = nullptr;
}

} // namespace undercowl::platform
