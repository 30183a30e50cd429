// What the screens say aloud, through whatever voice the device has.
#pragma once

#include "platform/speaker/speaker.h"

#include <QObject>
#include <QPointer>
#include <QtQml/qqmlregistration.h>

namespace undercowl::ui {

// speaker    the device's voice; null where there is none, and then nothing is said
// sentence   said as soon as it becomes another one; an empty one silences the voice
// slowness   0 as the voice speaks, to 1
// problem    why nothing can be heard, and what to do; else empty
class Voice : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(undercowl::platform::Speaker* speaker READ speaker WRITE setSpeaker NOTIFY changed)
    Q_PROPERTY(QString sentence READ sentence WRITE setSentence NOTIFY changed)
    Q_PROPERTY(double slowness MEMBER slowness_ NOTIFY changed)
    Q_PROPERTY(QString problem READ problem NOTIFY changed)

public:
    explicit Voice(QObject* parent = nullptr) : QObject(parent) {}
    ~Voice() override;

    [[nodiscard]] platform::Speaker* speaker() const { return speaker_; }
    void setSpeaker(platform::Speaker* speaker);
    [[nodiscard]] QString sentence() const { return sentence_; }
    void setSentence(const QString& sentence);
    [[nodiscard]] bool speaking() const { return speaker_ != nullptr && speaker_->speaking(); }
    [[nodiscard]] QString problem() const { return speaker_ == nullptr ? QString() : speaker_->problem(); }

    Q_INVOKABLE void say(const QString& sentence); // once, whatever 'sentence' is
    void hush();                                   // stops what is being said

signals:
    void changed();

private:
    QPointer<platform::Speaker> speaker_;
    QString sentence_;
    double slowness_{};
};

} // namespace undercowl::ui
