#include "platform/listener/microphonelistener.h"

#include "platform/threads/across.h"

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

constexpr int awakeMs = 8000;
constexpr int echoMs = 300;

} // namespace

struct MicrophoneListener::Result {
    std::optional<Heard> heard; // nothing: it was not meant for us
    bool woken{};
    QString problem; // the ear cannot be opened
};

class MicrophoneListener::Worker : public QObject {
public:
    // The ear is opened by the first call and kept.
    Result hear(const Samples& samples) {
        Result result;
        if (open(result.problem))
            result.heard = ear_->hear(samples);
        return result;
    }

    // Hands-free. What follows the wake phrase is heard though the touch thread does not know of it yet.
    Result attend(const Samples& samples) {
        Result result;
        if (!open(result.problem))
            return result;
        if (awake)
            result.heard = ear_->hear(samples);
        else
            result.woken = awake = ear_->called(samples);
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

    bool awake{}; // on its own thread alone

private:
    std::unique_ptr<Ear> ear_;
};

MicrophoneListener::MicrophoneListener(QObject* parent) : Listener(parent) {
    asleep_.setSingleShot(true);
    asleep_.setInterval(awakeMs);
    connect(&asleep_, &QTimer::timeout, this, [this] {
        across(worker_, [worker = worker_] { worker->awake = false; });
        if (!held_)
            rest();
    });
    hearing_.setSingleShot(true);
    hearing_.setInterval(echoMs);
    connect(&hearing_, &QTimer::timeout, this, [this] { deaf_ = false; });
}

MicrophoneListener::~MicrophoneListener() {
    if (thread_ != nullptr) {
        thread_->quit();
        thread_->wait();
    }
}

bool MicrophoneListener::openMicrophone() {
    if (device_ != nullptr)
        return true;
    const QAudioDevice microphone = QMediaDevices::defaultAudioInput();
    if (microphone.isNull() || !microphone.isFormatSupported(format())) {
        setState(State::NoMicrophone,
                 tr("No microphone answers. Allow it in the device's settings, or use the buttons."));
        return false;
    }
    if (thread_ == nullptr) {
        thread_ = std::make_unique<QThread>();
        worker_ = new Worker;
        worker_->moveToThread(thread_.get());
        connect(thread_.get(), &QThread::finished, worker_, &QObject::deleteLater);
        thread_->start();
        // While the first sentence is spoken the ear is opened.
        across(worker_, [worker = worker_] {
            QString ignored; // told by what is heard
            (void)worker->open(ignored);
        });
    }
    source_ = std::make_unique<QAudioSource>(microphone, format());
    device_ = source_->start();
    if (device_ == nullptr) {
        source_.reset();
        setState(State::NoMicrophone,
                 tr("The microphone does not open. Close other programs that use it, or use the buttons."));
        return false;
    }
    connect(device_, &QIODevice::readyRead, this, &MicrophoneListener::take);
    return true;
}

void MicrophoneListener::closeMicrophone() {
    if (device_ == nullptr)
        return;
    disconnect(device_, nullptr, this, nullptr);
    source_->stop();
    source_.release()->deleteLater(); // it may be what called us
    device_ = nullptr;
}

void MicrophoneListener::start() {
    if (held_ || state() == State::Thinking || !openMicrophone())
        return;
    (void)device_->readAll(); // what came before belongs to nobody
    sound_.clear();
    utterances_.forget();
    held_ = true;
    setState(State::Listening);
}

void MicrophoneListener::stop() {
    if (!held_)
        return;
    take();
    held_ = false;
    if (!handsFree_)
        closeMicrophone();
    setState(State::Thinking);
    give(samplesOf(sound_.left(longestBytes)), true);
    sound_.clear();
}

void MicrophoneListener::setHandsFree(bool on) {
    if (on == handsFree_ || (on && !openMicrophone()))
        return;
    handsFree_ = on;
    utterances_.forget();
    asleep_.stop();
    if (worker_ != nullptr)
        across(worker_, [worker = worker_] { worker->awake = false; });
    if (held_ || state() == State::Thinking)
        return; // that comes first; then rest()
    if (!on)
        closeMicrophone();
    setState(on ? State::Waiting : State::Idle);
}

void MicrophoneListener::setDeaf(bool deaf) {
    if (deaf) {
        hearing_.stop();
        deaf_ = true;
        utterances_.forget();
    } else if (deaf_) {
        hearing_.start();
    }
}

void MicrophoneListener::take() {
    if (device_ == nullptr)
        return;
    const QByteArray sound = device_->readAll();
    if (held_) {
        sound_ += sound;
        if (sound_.size() >= longestBytes && state() == State::Listening) {
            QMetaObject::invokeMethod(this, &MicrophoneListener::stop, Qt::QueuedConnection);
        }
        return;
    }
    if (!handsFree_ || deaf_)
        return;
    for (Samples& one : utterances_.take(samplesOf(sound)))
        give(std::move(one), false);
}

void MicrophoneListener::give(Samples samples, bool held) {
    across(worker_, [this, worker = worker_, samples = std::move(samples), held] {
        const Result result = held ? worker->hear(samples) : worker->attend(samples);
        // Dropped with this object if it goes first.
        across(this, [this, result, held] { answer(result, held); });
    });
}

void MicrophoneListener::answer(const Result& result, bool held) {
    if (!result.problem.isEmpty()) {
        handsFree_ = false;
        closeMicrophone();
        setState(State::Failed, result.problem);
        return;
    }
    if (!held && !handsFree_)
        return; // switched off meanwhile
    if (result.woken) {
        sleepSoon();
        if (!held_)
            setState(State::Listening);
        emit woken();
        return;
    }
    if (!result.heard)
        return;
    // What others say within hearing keeps nothing awake.
    if (handsFree_ && result.heard->accepted() && asleep_.isActive())
        sleepSoon();
    if (held && !held_)
        rest();
    emit heard(*result.heard);
}

void MicrophoneListener::sleepSoon() {
    asleep_.start();
}

void MicrophoneListener::rest() {
    if (!handsFree_)
        closeMicrophone();
    setState(!handsFree_ ? State::Idle : asleep_.isActive() ? State::Listening : State::Waiting);
}

} // namespace undercowl::platform
