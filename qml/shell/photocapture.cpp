#include "qml/shell/photocapture.h"

#include "core/journal/fold.h"
#include "platform/threads/across.h"
#include "qml/shell/burst.h"
#include "qml/shell/pendingphotos.h"
#include "qml/shell/words.h"

#include <QFile>

#include <utility>

namespace undercowl::ui {

using State = platform::Camera::State;

namespace {

// All pictures of one touch are taken within this: longer than that nobody holds still for a photo, and a
// machine with a slow camera gets one (common practice, no source).
constexpr int touchTime = 1000; // ms

} // namespace

PhotoCapture::PhotoCapture(QObject* parent) : CameraHolder(parent) {
    enough_.setSingleShot(true);
    enough_.setInterval(touchTime);
    connect(&enough_, &QTimer::timeout, this, &PhotoCapture::endTouch);
}

PhotoCapture::~PhotoCapture() {
    if (!shots_.isEmpty())
        endTouch();
}

void PhotoCapture::componentComplete() {
    connect(session(), &ShopSession::diskFullChanged, this, &PhotoCapture::stateChanged);
    connect(session(), &ShopSession::jobChanged, this, &PhotoCapture::showTaken);
    connect(this, &CameraHolder::released, this, [this] {
        const bool waits = !std::exchange(asked_, {}).isEmpty();
        if (!shots_.isEmpty())
            endTouch();
        else if (waits)
            --busy_; // if the device writes the file after all, the next start finds it
        emit stateChanged();
    });
    CameraHolder::componentComplete();
}

void PhotoCapture::hookUp(platform::Camera& camera) {
    connect(&camera, &platform::Camera::captured, this, [this](const QString& file) {
        if (file == asked_)
            took(file);
    });
    connect(&camera, &platform::Camera::stateChanged, this, [this] {
        if (another_ && this->camera()->state() == State::Ready)
            take();
    });
    connect(&camera, &platform::Camera::captureFailed, this, [this](const QString& file, const QString& why) {
        if (file != asked_)
            return;
        asked_.clear();
        QFile::remove(file); // nothing usable is in it
        if (!shots_.isEmpty())
            return endTouch(); // the photo is there
        --busy_;
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
    first_ = takenName(folder, wanted({}, true), session()->newId());
    sinceTouch_.start();
    take();
}

void PhotoCapture::take() {
    another_ = false;
    enough_.stop();
    const QString file = shots_.isEmpty() ? first_ : burstName(first_, static_cast<int>(shots_.size()) + 1);
    asked_ = file;
    sinceAsked_.start();
    camera()->capture(file); // a name of its own: the answer may come at once, and forgets what was asked
}

void PhotoCapture::took(const QString& file) {
    asked_.clear();
    shots_ << file;
    another_ = shots_.size() < camera()->abilities().burst && !session()->diskFull() &&
               sinceTouch_.elapsed() + sinceAsked_.elapsed() <= touchTime;
    if (!another_)
        endTouch();
    else if (camera()->state() == State::Ready)
        take();
    else
        enough_.start();
}

void PhotoCapture::endTouch() {
    another_ = false;
    enough_.stop();
    const QStringList shots = std::exchange(shots_, {});
    if (shots.size() == 1) {
        --busy_;
        keep(shots.front(), true);
        return;
    }
    platform::offTouch(
        [shots, self = QPointer(this), shop = QPointer(session()), photo = wanted({}, true)]() mutable {
            const QString sharpest = sharpestOf(shots);
            photo.file = sharpest.isEmpty() ? shots.front() : sharpest;
            for (const QString& file : shots)
                if (file != photo.file)
                    QFile::remove(file);
            platform::toTouch([self, shop, photo] {
                if (self != nullptr) {
                    --self->busy_;
                    self->keep(photo.file, true);
                } else if (shop != nullptr) {
                    shop->keepPhoto(photo, {.undoText = tr("Photo saved"), .form = {}});
                }
            });
        });
}

void PhotoCapture::showTaken() {
    const auto job = session()->job();
    std::vector<Line> lines;
    for (const Line& line : lines_)
        if (job == nullptr || text(job->id) != jobId_ ||
            std::ranges::any_of(job->photos,
                                [&line](const job::Photo& photo) { return text(photo.id) == line.id; }))
            lines.push_back(line);
    taken_.setLines(std::move(lines));
}

void PhotoCapture::keepFile(const QString& file) {
    keep(file, false);
}

void PhotoCapture::keep(const QString& file, bool ours) {
    ++busy_;
    emit stateChanged();
    session()->keepPhoto(
        wanted(file, ours), {.undoText = tr("Photo saved"), .form = {}},
        [this, alive = QPointer(this)](const Entries& said) {
            if (alive == nullptr)
                return;
            --busy_;
            emit stateChanged();
            if (!said || said->empty())
                return;
            const auto& entry = said->front();
            lines_.insert(lines_.begin(), {.id = text(entry.subject),
                                           .title = tr("Photo"),
                                           .picture = session()->mediaUrl(text(journal::mediaNamed(entry)))});
            showTaken();
            emit kept(text(entry.subject));
        });
}

} // namespace undercowl::ui
