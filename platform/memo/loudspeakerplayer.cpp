#include "platform/memo/loudspeakerplayer.h"

#include "platform/memo/memosound.h"
#include "platform/memo/stretch.h"
#include "platform/threads/across.h"

#include <QAudioDevice>
#include <QAudioFormat>
#include <QAudioSink>
#include <QMediaDevices>
#include <QPointer>

#include <algorithm>

namespace undercowl::platform {

namespace {

constexpr int tickMs = 100;

} // namespace

// What is left to play, at its pace; prepared away from the touch thread.
struct LoudspeakerPlayer::Ready {
    QByteArray bytes;
    int rate{};
    int from{};
    double pace{1};
};

LoudspeakerPlayer::LoudspeakerPlayer(QObject* parent) : Player(parent) {
    ticks_.setInterval(tickMs);
    connect(&ticks_, &QTimer::timeout, this, [this] { tell(true, position()); });
}

LoudspeakerPlayer::~LoudspeakerPlayer() {
    stop();
}

int LoudspeakerPlayer::position() const {
    return sink_ == nullptr
               ? milliseconds()
               : from_ + static_cast<int>(static_cast<double>(sink_->processedUSecs()) / 1000 * pace_);
}

void LoudspeakerPlayer::begin(const QString& file, int fromMilliseconds, double pace) {
    stop();
    const int call = ++asked_;
    tell(true, fromMilliseconds);
    offTouch([self = QPointer(this), call, file, fromMilliseconds, pace] {
        const MemoSound sound = readMemo(file);
        const auto from =
            std::min(sound.samples.size(), static_cast<std::size_t>(std::max(fromMilliseconds, 0)) *
                                               static_cast<std::size_t>(sound.rate) / 1000);
        const auto left = stretched(std::span(sound.samples).subspan(from), sound.rate, pace);
        const Ready ready{QByteArray(reinterpret_cast<const char*>(left.data()),
                                     static_cast<qsizetype>(left.size() * sizeof(short))),
                          sound.rate, fromMilliseconds, pace};
        toTouch([self, call, ready] {
            if (self != nullptr && call == self->asked_)
                self->start(ready);
        });
    });
}

void LoudspeakerPlayer::start(const Ready& ready) {
    if (ready.bytes.isEmpty()) {
        end(ready.rate == 0
                ? tr("This memo's sound cannot be read. Its text and its place in the job are kept.")
                : QString());
        return;
    }
    QAudioFormat format;
    format.setSampleRate(ready.rate);
    format.setChannelCount(1);
    format.setSampleFormat(QAudioFormat::Int16);
    const QAudioDevice loudspeaker = QMediaDevices::defaultAudioOutput();
    if (loudspeaker.isNull() || !loudspeaker.isFormatSupported(format)) {
        end(tr("No loudspeaker answers. Connect one, or switch it on in the device's settings."));
        return;
    }
    from_ = ready.from;
    pace_ = ready.pace;
    sound_.setData(ready.bytes);
    sound_.open(QIODevice::ReadOnly);
    sink_ = std::make_unique<QAudioSink>(loudspeaker, format);
    connect(sink_.get(), &QAudioSink::stateChanged, this, [this](QAudio::State state) {
        if (state == QAudio::IdleState) // all of it was handed over
            end({});
    });
    sink_->start(&sound_);
    ticks_.start();
}

void LoudspeakerPlayer::end(const QString& problem) {
    const int at = problem.isEmpty() ? 0 : milliseconds();
    ticks_.stop();
    if (sink_ != nullptr) {
        sink_->disconnect(this);
        sink_->stop();
        sink_.release()->deleteLater(); // it may be what called us
    }
    sound_.close();
    tell(false, at, problem);
}

void LoudspeakerPlayer::stop() {
    ++asked_;
    const int at = position();
    end({});
    tell(false, at); // to go on from there
}

void LoudspeakerPlayer::outline(const QString& file) {
    offTouch([self = QPointer(this), file] {
        const MemoSound sound = readMemo(file);
        const int duration = sound.milliseconds();
        const QList<qreal> levels = outlineOf(sound, outlineParts);
        toTouch([self, file, duration, levels] {
            if (self != nullptr)
                emit self->outlined(file, duration, levels);
        });
    });
}

} // namespace undercowl::platform
