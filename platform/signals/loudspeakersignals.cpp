#include "platform/signals/loudspeakersignals.h"

#include "platform/signals/tones.h"

#include <QAudioDevice>
#include <QAudioFormat>
#include <QAudioSink>
#include <QMediaDevices>

namespace undercowl::platform {

namespace {

// The sink ends when all was handed over, which is before all was heard: what is cut off then is silence.
constexpr int tail = toneRate * 3 / 10; // samples

} // namespace

LoudspeakerSignals::LoudspeakerSignals(QObject* parent) : Signaller(parent) {}

LoudspeakerSignals::~LoudspeakerSignals() {
    end();
}

void LoudspeakerSignals::give(Signal signal) {
    end();
    QAudioFormat format;
    format.setSampleRate(toneRate);
    format.setChannelCount(1);
    format.setSampleFormat(QAudioFormat::Int16);
    const QAudioDevice loudspeaker = QMediaDevices::defaultAudioOutput();
    if (loudspeaker.isNull() || !loudspeaker.isFormatSupported(format))
        return;
    std::vector<short> samples = toneOf(signal);
    samples.resize(samples.size() + tail);
    sound_.setData(QByteArray(reinterpret_cast<const char*>(samples.data()),
                              static_cast<qsizetype>(samples.size() * sizeof(short))));
    sound_.open(QIODevice::ReadOnly);
    sink_ = std::make_unique<QAudioSink>(loudspeaker, format);
    connect(sink_.get(), &QAudioSink::stateChanged, this, [this](QAudio::State state) {
        if (state == QAudio::IdleState) // all of it was handed over
            end();
    });
    sink_->start(&sound_);
}

void LoudspeakerSignals::end() {
    if (sink_ != nullptr) {
        sink_->disconnect(this);
        sink_->stop();
        sink_.release()->deleteLater(); // it may be what called us
    }
    sound_.close();
}

} // namespace undercowl::platform
