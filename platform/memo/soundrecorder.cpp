#include "platform/memo/soundrecorder.h"

#include "platform/memo/level.h"
#include "platform/threads/across.h"

#include <QThread>

#include <sndfile.h>

#include <cstring>
#include <vector>

namespace undercowl::platform {

namespace {

constexpr qsizetype sampleBytes = sizeof(short);
constexpr qsizetype stretch = memoRate / 10;
constexpr qint64 longest = qint64{memoRate} * 60 * 30; // half an hour is no memo any more

std::vector<short> samplesOf(const QByteArray& sound) {
    std::vector<short> samples(static_cast<std::size_t>(sound.size() / sampleBytes));
    if (!samples.empty())
        std::memcpy(samples.data(), sound.constData(), samples.size() * sizeof(short));
    return samples;
}

} // namespace

class SoundRecorder::Writer : public QObject {
public:
    Writer() = default;
    Writer(const Writer&) = delete;
    Writer& operator=(const Writer&) = delete;
    ~Writer() override { close(); }

    // Empty, or why not.
    QString open(const QString& file) {
        close();
        SF_INFO info{};
        info.samplerate = memoRate;
        info.channels = 1;
        info.format = SF_FORMAT_WAV | SF_FORMAT_PCM_16;
        file_ = sf_open(file.toLocal8Bit().constData(), SFM_WRITE, &info);
        if (file_ == nullptr)
            return QString::fromLocal8Bit(sf_strerror(nullptr));
        // The head always says how much is there: what was written so far can be read after a cut.
        sf_command(file_, SFC_SET_UPDATE_HEADER_AUTO, nullptr, SF_TRUE);
        unsynced_ = 0;
        return {};
    }

    QString write(const QByteArray& sound) {
        const std::vector<short> samples = samplesOf(sound);
        const auto wanted = static_cast<sf_count_t>(samples.size());
        if (file_ == nullptr || sf_write_short(file_, samples.data(), wanted) != wanted)
            return file_ == nullptr ? QStringLiteral("-") : QString::fromLocal8Bit(sf_strerror(file_));
        unsynced_ += wanted;
        if (unsynced_ >= memoRate) {
            sf_write_sync(file_);
            unsynced_ = 0;
        }
        return {};
    }

    void close() {
        if (file_ == nullptr)
            return;
        sf_write_sync(file_);
        sf_close(file_);
        file_ = nullptr;
    }

private:
    SNDFILE* file_{};
    sf_count_t unsynced_{};
};

SoundRecorder::SoundRecorder(QObject* parent) : Recorder(parent) {}

SoundRecorder::~SoundRecorder() {
    if (thread_ != nullptr) {
        thread_->quit();
        thread_->wait();
    }
}

void SoundRecorder::start(const QString& file) {
    if (state() == State::Recording)
        return;
    if (thread_ == nullptr) {
        thread_ = std::make_unique<QThread>();
        writer_ = new Writer;
        writer_->moveToThread(thread_.get());
        connect(thread_.get(), &QThread::finished, writer_, &QObject::deleteLater);
        thread_->start();
    }
    if (const QString problem = open(); !problem.isEmpty()) {
        setState(State::NoMicrophone, problem);
        return;
    }
    file_ = file;
    untold_.clear();
    samples_ = 0;
    across(writer_, [this, writer = writer_, file] {
        const QString why = writer->open(file);
        if (!why.isEmpty())
            across(this, [this, why] { failed(why); });
    });
    tell(0, 0);
    setState(State::Recording);
}

void SoundRecorder::take(const QByteArray& sound) {
    if (state() != State::Recording || sound.isEmpty())
        return;
    across(writer_, [this, writer = writer_, sound] {
        const QString why = writer->write(sound);
        if (!why.isEmpty())
            across(this, [this, why] { failed(why); });
    });
    untold_ += sound;
    while (untold_.size() >= stretch * sampleBytes && state() == State::Recording) {
        const std::vector<short> samples = samplesOf(untold_.first(stretch * sampleBytes));
        untold_.remove(0, stretch * sampleBytes);
        samples_ += stretch;
        tell(platform::level(samples), static_cast<int>(samples_ * 1000 / memoRate));
    }
    if (samples_ >= longest)
        stop();
}

void SoundRecorder::failed(const QString& why) {
    if (state() != State::Recording)
        return;
    close();
    end();
    setState(State::Failed,
             tr("The memo cannot be written any further (%1). What was said until then is kept; make "
                "room, then go on in another one.")
                 .arg(why));
}

void SoundRecorder::stop() {
    if (state() != State::Recording)
        return;
    close();
    end();
    setState(State::Idle);
}

void SoundRecorder::end() {
    across(writer_, [this, writer = writer_, file = file_] {
        writer->close();
        across(this, [this, file] { emit finished(file); });
    });
}

} // namespace undercowl::platform
