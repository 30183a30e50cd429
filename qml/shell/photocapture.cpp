#include "qml/shell/photocapture.h"

#include "core/journal/fold.h"
#include "qml/shell/pendingphotos.h"
#include "qml/shell/words.h"

#include <QFile>

namespace undercowl::ui {

using State = platform::Camera::State;

void PhotoCapture::componentComplete() {
    connect(session(), &ShopSession::diskFullChanged, this, &PhotoCapture::stateChanged);
    CameraHolder::componentComplete();
}

void PhotoCapture::hookUp(platform::Camera& camera) {
    connect(&camera, &platform::Camera::captured, this, [this](const QString& file) {
        if (file != asked_)
            return;
        asked_.clear();
        --busy_;
        keep(file, true);
    });
    connect(&camera, &platform::Camera::captureFailed, this, [this](const QString& file, const QString& why) {
        if (file != asked_)
            return;
        asked_.clear();
        --busy_;
        QFile::remove(file); // nothing usable is in it
        session()->report({store::Fault::NotFound, why.toStdString()});
        emit stateChanged();
    });
}

bool PhotoCapture::ready() const {
    return camera() != nullptr && camera()->state() == State::Ready && busy_ == 0 && !session()->diskFull();
}

QString PhotoCapture::stateWords() const {
    if (camera() == nullptr)
        return tr("There is no camera here. Take the photo from a file.");
    switch (camera()->state()) {
    case State::Off:
    case State::Starting: return tr("The camera is starting.");
    case State::NoCamera: return tr("There is no camera here. Take the photo from a file.");
    case State::Denied:
        return camera()->problem().isEmpty() ? tr("This app may not use the camera. Allow it in the system's "
                                                  "settings, or take the photo from a file.")
                                             : camera()->problem();
    case State::Failed: return camera()->problem();
    case State::Ready:
    case State::Busy: break;
    }
    return session()->diskFull()
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
    const QString folder = takenFolder(*session());
    if (folder.isEmpty()) {
        session()->report({store::Fault::InputOutput, "no folder for photos can be made beside the store"});
        return;
    }
    ++busy_;
    emit stateChanged();
    const QString file = takenName(folder, wanted({}, true), session()->newId());
    asked_ = file;
    camera()->capture(file);
}

void PhotoCapture::keepFile(const QString& file) {
    keep(file, false);
}

void PhotoCapture::keep(const QString& file, bool ours) {
    ++busy_;
    emit stateChanged();
    session()->keepPhoto(wanted(file, ours), {.undoText = tr("Photo saved"), .form = {}},
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
                                           .picture = session()->mediaUrl(text(journal::mediaNamed(entry)))});
                             taken_.setLines(std::move(lines));
                             emit kept(text(entry.subject));
                         });
}

} // namespace undercowl::ui
