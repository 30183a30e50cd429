#include "platform/memo/devicememo.h"

#include "platform/plugins/plugin.h"

namespace undercowl::platform {

namespace {

const MemoMaker* maker(QString& problem) {
    return pluginFor<MemoMaker>(QStringLiteral("memo"), problem);
}

} // namespace

void DeviceRecorder::start(const QString& file) {
    if (driver_ == nullptr) {
        QString problem;
        const MemoMaker* made = maker(problem);
        if (made == nullptr) {
            setState(State::Failed, problem);
            return;
        }
        driver_ = made->microphone();
        connect(driver_.get(), &Recorder::stateChanged, this,
                [this] { setState(driver_->state(), driver_->problem()); });
        connect(driver_.get(), &Recorder::heard, this,
                [this] { tell(driver_->level(), driver_->milliseconds()); });
        connect(driver_.get(), &Recorder::finished, this, &Recorder::finished);
    }
    driver_->start(file);
}

void DeviceRecorder::stop() {
    if (driver_ != nullptr)
        driver_->stop();
}

bool DevicePlayer::load() {
    if (driver_ != nullptr)
        return true;
    QString problem;
    const MemoMaker* made = maker(problem);
    if (made == nullptr) {
        tell(false, 0, problem);
        return false;
    }
    driver_ = made->loudspeaker();
    connect(driver_.get(), &Player::changed, this,
            [this] { tell(driver_->playing(), driver_->milliseconds(), driver_->problem()); });
    connect(driver_.get(), &Player::outlined, this, &Player::outlined);
    return true;
}

void DevicePlayer::begin(const QString& file, int fromMilliseconds, double pace) {
    if (load())
        driver_->play(file, fromMilliseconds, pace);
}

void DevicePlayer::stop() {
    if (driver_ != nullptr)
        driver_->stop();
}

void DevicePlayer::outline(const QString& file) {
    if (load())
        driver_->outline(file);
}

} // namespace undercowl::platform
