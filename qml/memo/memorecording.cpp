#include "qml/memo/memorecording.h"

#include "qml/memo/pendingmemos.h"

namespace undercowl::ui {

namespace {

constexpr qsizetype mostLevels = 60;
constexpr int stretchMs = 100; // between two levels

} // namespace

MemoRecording::~MemoRecording() {
    stop();
}

void MemoRecording::setRecorder(platform::Recorder* recorder) {
    if (recorder == recorder_)
        return;
    if (recorder_ != nullptr)
        disconnect(recorder_, nullptr, this, nullptr);
    recorder_ = recorder;
    if (recorder_ != nullptr) {
        connect(recorder_, &platform::Recorder::stateChanged, this, &MemoRecording::changed);
        connect(recorder_, &platform::Recorder::heard, this, &MemoRecording::listen);
    }
    emit changed();
}

bool MemoRecording::recording() const {
    return ours_ && recorder_ != nullptr && recorder_->state() == platform::Recorder::State::Recording;
}

QString MemoRecording::problem() const {
    return recorder_ == nullptr ? QString() : recorder_->problem();
}

QString MemoRecording::time() const {
    return minutesAndSeconds(recording() ? recorder_->milliseconds() : 0);
}

double MemoRecording::level() const {
    return recording() ? recorder_->level() : 0;
}

int MemoRecording::marks() const {
    return static_cast<int>(marks_->size());
}

void MemoRecording::start() {
    if (recorder_ == nullptr || session() == nullptr || jobId().empty() || recording())
        return;
    MemoToKeep memo{.file = {}, .job = jobId(), .about = about_.toStdString()};
    memo.file = memoName(*session(), memo);
    if (memo.file.isEmpty()) {
        session()->report({store::Fault::InputOutput, "no folder for memos can be made beside the store"});
        return;
    }
    levels_.clear();
    silence_ = platform::SilenceWatch{};
    marks_ = std::make_shared<std::vector<int>>();
    ours_ = true;
    recorder_->start(memo.file);
    if (!recording()) {
        ours_ = false;
        emit changed();
        return;
    }
    // The session outlives the screen: what was said is kept whatever becomes of this.
    auto once = std::make_shared<QMetaObject::Connection>();
    *once = connect(recorder_, &platform::Recorder::finished, session(),
                    [once, memo, marks = marks_, session = session(),
                     self = QPointer(this)](const QString& file) mutable {
                        if (file != memo.file)
                            return;
                        QObject::disconnect(*once);
                        memo.marks = *marks;
                        keepMemo(*session, memo, [self](bool done) {
                            if (self != nullptr && done)
                                emit self->kept();
                        });
                    });
    emit changed();
    emit heard();
}

void MemoRecording::stop() {
    if (recording())
        recorder_->stop();
    ours_ = false;
}

void MemoRecording::mark() {
    if (!recording())
        return;
    marks_->push_back(recorder_->milliseconds());
    emit heard();
}

void MemoRecording::listen() {
    if (!recording())
        return;
    levels_ += recorder_->level();
    if (levels_.size() > mostLevels)
        levels_.removeFirst();
    emit heard();
    if (silence_.over(recorder_->level(), stretchMs) && bySilence_)
        stop();
}

void MemoRecording::show(const Snapshot& /*snapshot*/) {}

QString minutesAndSeconds(int milliseconds) {
    const int seconds = milliseconds / 1000;
    return QStringLiteral("%1:%2").arg(seconds / 60).arg(seconds % 60, 2, 10, QLatin1Char('0'));
}

} // namespace undercowl::ui
