#include "platform/camera/multimediacamera.h"

#include "platform/threads/across.h"

#include <QCamera>
#include <QCameraDevice>
#include <QImageCapture>
#include <QMediaCaptureSession>
#include <QMediaDevices>
#include <QPointer>
#include <QVideoFrame>
#include <QVideoSink>

#include <algorithm>

namespace undercowl::platform {

namespace {

constexpr int previewWidth = 1024;
constexpr int burst = 3; // of which the slowness of a device may leave one: who asks for them measures it

// A place of the upright picture, where it lies in the frame as the device gives it.
QPointF inFrame(QPointF upright, int turned) {
    switch (turned) {
    case 90: return {upright.y(), 1 - upright.x()};
    case 180: return {1 - upright.x(), 1 - upright.y()};
    case 270: return {1 - upright.y(), upright.x()};
    default: return upright;
    }
}

} // namespace

struct MultimediaCamera::Session {
    explicit Session(const QCameraDevice& device) : camera(device) {
        capture.setFileFormat(QImageCapture::JPEG);
        capture.setQuality(QImageCapture::VeryHighQuality);
        joined.setCamera(&camera);
        joined.setImageCapture(&capture);
        joined.setVideoSink(&sink);
    }
    QCamera camera;
    QImageCapture capture;
    QVideoSink sink;
    QMediaCaptureSession joined; // last: it lets go of the others before they end
    QString file;
};

MultimediaCamera::MultimediaCamera(QObject* parent)
    : Camera(parent), converting_(std::make_shared<std::atomic_bool>(false)) {}

MultimediaCamera::~MultimediaCamera() = default;

void MultimediaCamera::start() {
    if (session_ != nullptr)
        return;
    setState(State::Starting);
    QCameraDevice device = QMediaDevices::defaultVideoInput();
    for (const auto& other : QMediaDevices::videoInputs()) {
        if (other.position() == QCameraDevice::BackFace)
            device = other; // the work is in front of the phone, not the mechanic
    }
    if (device.isNull()) {
        setState(State::NoCamera);
        return;
    }
    session_ = std::make_unique<Session>(device);
    connect(&session_->camera, &QCamera::errorOccurred, this, [this](QCamera::Error, const QString& why) {
        setState(State::Failed, tr("The camera does not answer: %1. Close other programs that use it, or "
                                   "take the photo from a file.")
                                    .arg(why));
    });
    connect(&session_->capture, &QImageCapture::readyForCaptureChanged, this, [this](bool ready) {
        if (ready && state() == State::Starting)
            setState(State::Ready);
    });
    connect(&session_->capture, &QImageCapture::imageSaved, this, [this](int, const QString& file) {
        setState(State::Ready);
        emit captured(file);
    });
    connect(&session_->capture, &QImageCapture::errorOccurred, this,
            [this](int, QImageCapture::Error, const QString& why) {
                setState(State::Ready);
                emit captureFailed(session_->file, tr("The photo was not taken: %1. Try again.").arg(why));
            });
    connect(&session_->sink, &QVideoSink::videoFrameChanged, this, &MultimediaCamera::show);
    connect(&session_->camera, &QCamera::supportedFeaturesChanged, this, &MultimediaCamera::learnAbilities);
    connect(&session_->camera, &QCamera::maximumZoomFactorChanged, this, &MultimediaCamera::learnAbilities);
    session_->camera.setFlashMode(QCamera::FlashOff); // its burst of light washes out the colours of wires
    session_->camera.start();
    learnAbilities();
    if (session_->capture.isReadyForCapture())
        setState(State::Ready);
}

void MultimediaCamera::stop() {
    setTorch(false); // not left to how a system ends the session
    session_.reset();
    setState(State::Off);
}

void MultimediaCamera::capture(const QString& file) {
    if (state() != State::Ready)
        return;
    setState(State::Busy);
    session_->file = file;
    session_->capture.captureToFile(file);
}

void MultimediaCamera::learnAbilities() {
    const QCamera& camera = session_->camera;
    setAbilities({.focus = camera.supportedFeatures().testFlag(QCamera::Feature::CustomFocusPoint),
                  .torch = camera.isTorchModeSupported(QCamera::TorchOn),
                  .mostZoom = std::max(1.0, static_cast<double>(camera.maximumZoomFactor())),
                  .burst = burst});
}

void MultimediaCamera::aimFocus(QPointF at) {
    QCamera& camera = session_->camera;
    // Near: the work is at arm's length.
    for (const auto mode : {QCamera::FocusModeAutoNear, QCamera::FocusModeAuto})
        if (camera.isFocusModeSupported(mode)) {
            camera.setFocusMode(mode);
            break;
        }
    camera.setCustomFocusPoint(inFrame(at, turned_));
}

void MultimediaCamera::switchTorch(bool on) {
    session_->camera.setTorchMode(on ? QCamera::TorchOn : QCamera::TorchOff);
}

void MultimediaCamera::moveZoom(double factor) {
    session_->camera.setZoomFactor(static_cast<float>(factor));
}

// Turning a frame into a picture takes milliseconds: it is done elsewhere, one at a time.
void MultimediaCamera::show(const QVideoFrame& frame) {
    turned_ = frame.rotationAngle();
    if (converting_->exchange(true))
        return;
    offTouch([frame, busy = converting_, camera = QPointer(this)] {
        QImage picture = frame.toImage();
        if (picture.width() > previewWidth)
            picture = picture.scaledToWidth(previewWidth);
        *busy = false;
        toTouch([camera, picture] {
            if (camera != nullptr)
                emit camera->frame(picture);
        });
    });
}

} // namespace undercowl::platform
