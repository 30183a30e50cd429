// A voice, as narrow as the read-back needs it. What a device offers is behind it; tests use one that only
// remembers.
#pragma once

#include <QObject>
#include <QString>

namespace undercowl::platform {

class Speaker : public QObject {
    Q_OBJECT
    Q_PROPERTY(bool speaking READ speaking NOTIFY changed)
    Q_PROPERTY(QString problem READ problem NOTIFY changed)

public:
    using QObject::QObject;

    [[nodiscard]] bool speaking() const { return speaking_; }
    [[nodiscard]] QString problem() const {
        return problem_;
    } // why nothing can be said, and what to do; else empty

    // Says the sentence in place of what is being said. 'slowness' is 0 as the voice speaks, up to 1 as
    // slowly as it can. The first call opens the device's voice: nothing is loaded before.
    virtual void say(const QString& sentence, double slowness) = 0;
    virtual void stop() = 0;

signals:
    void changed();

protected:
    void tell(bool speaking, const QString& problem = {});

private:
    bool speaking_{};
    QString problem_;
};

} // namespace undercowl::platform
