// Whether the device may put its screen out, as narrow as the shell needs it. What a device offers is behind
// it; tests use one that only remembers.
#pragma once

#include <QObject>
#include <QString>

namespace undercowl::platform {

class Screen : public QObject {
    Q_OBJECT
    Q_PROPERTY(bool awake READ awake WRITE setAwake NOTIFY changed)
    Q_PROPERTY(QString problem READ problem NOTIFY changed)

public:
    using QObject::QObject;

    [[nodiscard]] bool awake() const { return awake_; } // what is wanted
    // Asks the system to leave the screen on, until it is called with false or this ends. Returns at once:
    // the system answers later, and a refusal is in problem().
    void setAwake(bool awake);
    [[nodiscard]] QString problem() const {
        return problem_;
    } // why the screen may go out all the same; else empty

signals:
    void changed();

protected:
    virtual void keep(bool awake) = 0; // once for each change
    void tell(const QString& problem);

private:
    bool awake_{};
    QString problem_;
};

} // namespace undercowl::platform
