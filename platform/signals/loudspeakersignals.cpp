#include "platform/signals/loudspeakersignals.h"

#include "platform/signals/tones.h"

#include <QAudioDevice>
#include <QAudioFormat>
#include <QAudioSink>
#include <QMediaDevices>
#include <QTimer>

#include <chrono>

namespace undercowl::platform {

namespace {

constexpr int tail = toneRate * 3 / 10; // samples of silence: some servers drop the end of a stream
// From the last sample handed over to the last one heard, at most: a busy server keeps two seconds back.
constexpr auto longest = std::chrono::milliseconds(4000);

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
    // The sink is idle when all was handed over, which may be long before all was heard.
    connect(sink_.get(), &QAudioSink::stateChanged, sink_.get(),
            [this, playing = sink_.get()](QAudio::State state) {
                if (state == QAudio::IdleState)
                    QTimer::singleShot(longest, playing, [this, playing] {
                        if (sink_.get() == playing)
                            end();
                    });
            });
    sink_->start(&sound_);
}

void LoudspeakerSignals::end() {
    if (sink_ != nullptr) {
        sink_->disconnect();
        sink_->stop();
        sink_.release()->deleteLater(); // it may be what called us
    }
    sound_.close();
}

} // namespace undercowl::platform
