#include "qml/shell/photocapture.h"

#include "core/journal/fold.h"
#include "qml/shell/pendingphotos.h"
#include "qml/shell/words.h"

#include <QFile>

namespace undercowl::ui {

using State = platform::Camera::State;

PhotoCapture::~PhotoCapture() {
    setActive(false);
}

void PhotoCapture::componentComplete() {
    connect(session_, &ShopSession::diskFullChanged, this, &PhotoCapture::stateChanged);
    if (active_ && camera_ != nullptr)
        camera_->start();
}

void PhotoCapture::setCamera(platform::Camera* camera) {
    if (camera_ == camera)
        return;
    if (camera_ != nullptr)
        camera_->disconnect(this);
    camera_ = camera;
    if (camera_ != nullptr) {
        connect(camera_, &platform::Camera::stateChanged, this, &PhotoCapture::stateChanged);
        connect(camera_, &platform::Camera::captured, this, [this](const QString& file) {
            if (file != asked_)
                return;
            asked_.clear();
            --busy_;
            keep(file, true);
        });
        connect(camera_, &platform::Camera::captureFailed, this,
                [this](const QString& file, const QString& why) {
                    if (file != asked_)
                        return;
                    asked_.clear();
                    --busy_;
                    QFile::remove(file); // nothing usable is in it
                    session_->report({store::Fault::NotFound, why.toStdString()});
                    emit stateChanged();
                });
    }
    emit cameraChanged();
    emit stateChanged();
}

void PhotoCapture::setActive(bool active) {
    if (active_ == active)
        return;
    active_ = active;
    if (camera_ != nullptr && session_ != nullptr)
        active_ ? camera_->start() : camera_->stop();
    emit activeChanged();
}

bool PhotoCapture::hasCamera() const {
    return camera_ != nullptr && camera_->state() != State::NoCamera && camera_->state() != State::Denied &&
           camera_->state() != State::Failed;
}

bool PhotoCapture::ready() const {
    return camera_ != nullptr && camera_->state() == State::Ready && busy_ == 0 && !session_->diskFull();
}

QString PhotoCapture::stateWords() const {
    if (camera_ == nullptr)
        return tr("There is no camera here. Take the photo from a file.");
    switch (camera_->state()) {
    case State::Off:
    case State::Starting: return tr("The camera is starting.");
    case State::NoCamera: return tr("There is no camera here. Take the photo from a file.");
    case State::Denied:
        return camera_->problem().isEmpty() ? tr("This app may not use the camera. Allow it in the system's "
                                                 "settings, or take the photo from a file.")
                                            : camera_->problem();
    case State::Failed: return camera_->problem();
    case State::Ready:
    case State::Busy: break;
    }
    return session_->diskFull()
               ? tr("The disk is full: make room before you take more photos. Those that were "
                    "taken are still here and are kept as soon as there is room.")
               : QString();
}

PhotoToKeep PhotoCapture::wanted(const QString& file, bool ours) const {
    return {.file = file,
            .job = jobId_.toStdString(),
            .purpose = job::photoPurposeFromCode(purpose_.toStdString()).value_or(job::PhotoPurpose::Other),
            .about = about_.toStdString(),
            .note = note_,
            .ours = ours};
}

void PhotoCapture::shoot() {
    if (!ready())
        return;
    const QString folder = takenFolder(*session_);
    if (folder.isEmpty()) {
        session_->report({store::Fault::InputOutput, "no folder for photos can be made beside the store"});
        return;
    }
    ++busy_;
    emit stateChanged();
    const QString file = takenName(folder, wanted({}, true), session_->newId());
    asked_ = file;
    camera_->capture(file);
}

void PhotoCapture::keepFile(const QString& file) {
    keep(file, false);
}

void PhotoCapture::keep(const QString& file, bool ours) {
    ++busy_;
    emit stateChanged();
    session_->keepPhoto(wanted(file, ours), {.undoText = tr("Photo saved"), .form = {}},
                        [this, alive = QPointer(this)](const Entries& said) {
                            if (alive == nullptr)
                                return;
                            --busy_;
                            emit stateChanged();
                            if (!said || said->empty())
                                return;
                            const auto& entry = said->front();
                            auto lines = taken_.lines();
                            lines.insert(lines.begin(),
                                         {.id = text(entry.subject),
                                          .title = tr("Photo"),
                                          .picture = session_->mediaUrl(text(journal::mediaNamed(entry)))});
                            taken_.setLines(std::move(lines));
                            emit kept(text(entry.subject));
                        });
}

} // namespace undercowl::ui
