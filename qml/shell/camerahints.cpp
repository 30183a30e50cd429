#include "qml/shell/camerahints.h"

#include "platform/threads/across.h"
#include "qml/shell/previewpixels.h"

namespace undercowl::ui {

namespace {

constexpr int sharpAt = 1024; // pixels of the longer side: what sight::sharpEnough was chosen for
constexpr int movedAt = 160;
constexpr qint64 pause = 100;   // ms between two looks: a phone has other things to do
constexpr qint64 tooLong = 600; // ms: two frames that far apart say nothing of a steady hand
constexpr int holds = 300;      // ms that a judgement holds before it is said, and before it is taken back
// A thirtieth of a second smears a photo of 4000 pixels by five at this speed (common practice: exposures in
// a workshop, no source).
constexpr double fastest = 0.04; // widths a second

} // namespace

CameraHints::CameraHints(QObject* parent) : QObject(parent) {
    hold_.setSingleShot(true);
    hold_.setInterval(holds);
    connect(&hold_, &QTimer::timeout, this, [this] {
        // One picture and then another, and nothing after: that was no hand that trembles.
        if (next_ != Hint::HoldStill || sinceLook_.elapsed() < holds)
            show(next_);
    });
}

CameraHints::~CameraHints() {
    if (active_ && level_ != nullptr)
        level_->stop();
}

void CameraHints::setCamera(platform::Camera* camera) {
    if (camera_ == camera)
        return;
    if (camera_ != nullptr)
        camera_->disconnect(this);
    camera_ = camera;
    if (camera_ != nullptr) {
        connect(camera_, &platform::Camera::frame, this, &CameraHints::look);
        connect(camera_, &platform::Camera::abilitiesChanged, this, &CameraHints::hintChanged);
        connect(camera_, &platform::Camera::stateChanged, this, [this] {
            using State = platform::Camera::State;
            if (camera_->state() != State::Ready && camera_->state() != State::Busy)
                forget();
        });
    }
    forget();
    emit cameraChanged();
}

void CameraHints::setLevel(platform::Level* level) {
    if (level_ == level)
        return;
    if (active_ && level_ != nullptr)
        level_->stop();
    level_ = level;
    if (active_ && level_ != nullptr)
        level_->start();
    emit levelChanged();
}

void CameraHints::setActive(bool active) {
    if (active_ == active)
        return;
    active_ = active;
    if (level_ != nullptr)
        active_ ? level_->start() : level_->stop();
    if (!active_)
        forget();
    emit activeChanged();
}

QString CameraHints::words() const {
    switch (hint_) {
    case Hint::None: break;
    case Hint::HoldStill: return tr("Hold still.");
    case Hint::OutOfFocus:
        if (camera_ == nullptr || !camera_->canFocus())
            return tr("Too close or out of focus: move back a little.");
        return wires_ ? tr("Too close or out of focus: tap the wire.")
                      : tr("Too close or out of focus: tap what must be sharp.");
    case Hint::NoWhite: return tr("Lay white paper beside the wires.");
    }
    return {};
}

void CameraHints::look(const QImage& picture) {
    if (!active_ || looking_ || picture.isNull() || (sinceLook_.isValid() && sinceLook_.elapsed() < pause))
        return;
    looking_ = true;
    const qint64 apart = sinceLook_.isValid() ? sinceLook_.elapsed() : 0;
    sinceLook_.start();
    platform::offTouch([self = QPointer(this), run = run_, picture, apart, before = before_] {
        auto seen = std::make_shared<Look>();
        const PreviewPixels pixels(picture, sharpAt);
        const sight::Preview preview = pixels.preview();
        seen->small = sight::greyOf(preview, movedAt);
        seen->sharpness = sight::sharpness(sight::middleOf(sight::greyOf(preview, sharpAt)));
        seen->white = sight::whiteInView(preview);
        if (before != nullptr && apart > 0 && apart < tooLong && before->small.width == seen->small.width &&
            before->small.height == seen->small.height)
            seen->moved = sight::moved(before->small, seen->small) * 1000 / static_cast<double>(apart);
        platform::toTouch([self, run, seen] {
            if (self == nullptr)
                return;
            self->looking_ = false;
            if (self->run_ == run)
                self->judge(seen);
        });
    });
}

void CameraHints::judge(const std::shared_ptr<const Look>& look) {
    before_ = look;
    const Hint hint = look->moved > fastest                              ? Hint::HoldStill
                      : look->sharpness.value_or(1) < sight::sharpEnough ? Hint::OutOfFocus
                      : wires_ && !look->white                           ? Hint::NoWhite
                                                                         : Hint::None;
    if (hint == hint_) {
        hold_.stop();
        next_ = hint;
    } else if (hint != next_ || !hold_.isActive()) {
        next_ = hint;
        hold_.start();
    }
}

void CameraHints::show(Hint hint) {
    if (hint_ == hint)
        return;
    hint_ = hint;
    emit hintChanged();
}

void CameraHints::forget() {
    ++run_;
    before_.reset();
    sinceLook_.invalidate();
    hold_.stop();
    next_ = Hint::None;
    show(Hint::None);
}

} // namespace undercowl::ui
