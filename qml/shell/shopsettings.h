// How the shop looks and where its pictures come from, on this device.
#pragma once

#include "qml/shell/session.h"

#include <QObject>
#include <QQmlParserStatus>
#include <QtQml/qqmlregistration.h>

namespace undercowl::ui {

class ShopSettings : public QObject, public QQmlParserStatus {
    Q_OBJECT
    QML_ELEMENT
    Q_INTERFACES(QQmlParserStatus)
    Q_PROPERTY(undercowl::ui::ShopSession* session MEMBER session_ REQUIRED)
    Q_PROPERTY(QString theme READ theme WRITE setTheme NOTIFY changed)
    Q_PROPERTY(double textScale READ textScale WRITE setTextScale NOTIFY changed)
    Q_PROPERTY(bool leftHanded READ leftHanded WRITE setLeftHanded NOTIFY changed)
    Q_PROPERTY(double slowness READ slowness WRITE setSlowness NOTIFY changed)
    Q_PROPERTY(bool voice READ voice WRITE setVoice NOTIFY changed)
    Q_PROPERTY(bool handsFree READ handsFree WRITE setHandsFree NOTIFY changed)
    Q_PROPERTY(bool memoEndsBySilence READ memoEndsBySilence WRITE setMemoEndsBySilence NOTIFY changed)
    Q_PROPERTY(bool keepsLocation READ keepsLocation WRITE setKeepsLocation NOTIFY changed)
    Q_PROPERTY(int vision READ vision WRITE setVision NOTIFY changed)
    Q_PROPERTY(bool slightVision READ slightVision WRITE setSlightVision NOTIFY changed)
    Q_PROPERTY(QStringList languages READ languages NOTIFY changed)
    Q_PROPERTY(int language READ language WRITE setLanguage NOTIFY changed)
    Q_PROPERTY(bool english READ english NOTIFY changed)
    Q_PROPERTY(bool staysOn READ staysOn WRITE setStaysOn NOTIFY changed)
    Q_PROPERTY(double dimAfter READ dimAfter WRITE setDimAfter NOTIFY changed)
    Q_PROPERTY(bool sounds READ sounds WRITE setSounds NOTIFY changed)
    Q_PROPERTY(bool calm READ calm WRITE setCalm NOTIFY changed)

public:
    explicit ShopSettings(QObject* parent = nullptr) : QObject(parent) {}

    void classBegin() override {}
    void componentComplete() override {
        connect(session_, &ShopSession::settingsChanged, this, &ShopSettings::changed);
        connect(session_, &ShopSession::languageChanged, this, &ShopSettings::changed);
        emit changed();
    }

    [[nodiscard]] QString theme() const; // "night", "day" or "sun"; empty until one is chosen
    void setTheme(const QString& theme) { session_->set(QStringLiteral("theme"), theme); }
    [[nodiscard]] double textScale() const; // 1 to 2
    void setTextScale(double scale) { session_->set(QStringLiteral("text-scale"), QString::number(scale)); }
    [[nodiscard]] bool leftHanded() const { return setting("hand") == u"left"; }
    void setLeftHanded(bool left) {
        session_->set(QStringLiteral("hand"), left ? QStringLiteral("left") : QStringLiteral("right"));
    }
    [[nodiscard]] double slowness() const; // of the voice, 0 to 1
    void setSlowness(double slowness) {
        session_->set(QStringLiteral("slowness"), QString::number(slowness));
    }
    // The screens at the lift have the button that is held for speaking.
    [[nodiscard]] bool voice() const { return setting("voice") == u"on"; }
    void setVoice(bool on) {
        session_->set(QStringLiteral("voice"), on ? QStringLiteral("on") : QStringLiteral("off"));
    }
    // The screens at the lift listen for the wake phrase; off until it is switched on.
    [[nodiscard]] bool handsFree() const { return setting("hands-free") == u"on"; }
    void setHandsFree(bool on) {
        session_->set(QStringLiteral("hands-free"), on ? QStringLiteral("on") : QStringLiteral("off"));
    }
    [[nodiscard]] bool memoEndsBySilence() const { return setting("memo-end") == u"silence"; }
    void setMemoEndsBySilence(bool ends) {
        session_->set(QStringLiteral("memo-end"), ends ? QStringLiteral("silence") : QStringLiteral("touch"));
    }
    // The screen is not put out while a job is open; on until it is switched off.
    [[nodiscard]] bool staysOn() const { return setting("screen") != u"as the device"; }
    void setStaysOn(bool on) {
        session_->set(QStringLiteral("screen"),
                      on ? QStringLiteral("stays on") : QStringLiteral("as the device"));
    }
    [[nodiscard]] double dimAfter() const; // minutes without a touch; 0, as until it is chosen: never
    void setDimAfter(double minutes) { session_->set(QStringLiteral("dim-after"), QString::number(minutes)); }
    // Tones and vibration for what the eye misses; on until they are switched off.
    [[nodiscard]] bool sounds() const { return setting("sounds") != u"off"; }
    void setSounds(bool on) {
        session_->set(QStringLiteral("sounds"), on ? QStringLiteral("on") : QStringLiteral("off"));
    }
    [[nodiscard]] bool calm() const { return setting("motion") == u"none"; } // no movement on the screen
    void setCalm(bool calm) {
        session_->set(QStringLiteral("motion"), calm ? QStringLiteral("none") : QStringLiteral("some"));
    }
    // How the mechanic sees colours: 0 as most do, 1 red weak, 2 green weak, 3 blue weak
    // (colour::Deficiency).
    [[nodiscard]] int vision() const;
    void setVision(int deficiency);
    [[nodiscard]] bool slightVision() const { return setting("vision-degree") == u"slight"; }
    void setSlightVision(bool slight) {
        session_->set(QStringLiteral("vision-degree"),
                      slight ? QStringLiteral("slight") : QStringLiteral("strong"));
    }
    // Each in its own words, after "as the device" at 0.
    [[nodiscard]] static QStringList languages();
    [[nodiscard]] int language() const; // index into languages()
    void setLanguage(int language);
    [[nodiscard]] static bool english(); // the app speaks English just now
    // Photos keep where they were taken, and tell it to whoever gets them.
    [[nodiscard]] bool keepsLocation() const { return setting("location") == u"kept"; }
    void setKeepsLocation(bool keeps) {
        session_->set(QStringLiteral("location"),
                      keeps ? QStringLiteral("kept") : QStringLiteral("left out"));
    }

signals:
    void changed();

private:
    [[nodiscard]] QString setting(const char* name) const {
        return session_ == nullptr ? QString() : session_->setting(QString::fromLatin1(name));
    }

    ShopSession* session_{};
};

} // namespace undercowl::ui
