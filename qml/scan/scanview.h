// Scanning: what the camera sees is looked through for codes. A bag's label opens its step, a part's number
// the part.
#pragma once

#include "core/handover/labels.h"
#include "qml/shell/cameraholder.h"
#include "qml/shell/linemodel.h"

#include <QImage>
#include <QtQml/qqmlregistration.h>

#include <functional>

namespace undercowl::ui {

// parts: those with the number that was scanned, in all jobs that are open: id the part, title name, detail
// numbers and state, more machine.
class ScanView : public undercowl::ui::CameraHolder {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QString code READ code NOTIFY scanned)
    Q_PROPERTY(QString answer READ answer NOTIFY scanned)
    Q_PROPERTY(undercowl::ui::LineModel* parts READ parts CONSTANT)

public:
    using CameraHolder::CameraHolder;

    [[nodiscard]] const QString& code() const { return code_; }     // read last
    [[nodiscard]] const QString& answer() const { return answer_; } // what it is, in words
    [[nodiscard]] LineModel* parts() { return &parts_; }

    Q_INVOKABLE void readFile(const QString& file); // a picture on the device
    Q_INVOKABLE void look(const QString& code);     // as if it had been scanned: typed by hand
    Q_INVOKABLE void openPart(const QString& part); // opens its job; answered by partFound()

signals:
    void scanned();
    void bagFound(const QString& job, const QString& step); // its job is being opened
    void partFound(const QString& part);

protected:
    void hookUp(platform::Camera& camera) override;

private:
    // Off the touch thread: 'picture' decodes there, or says in words why it cannot.
    void read(std::function<QImage(QString&)> picture, bool fromFile);
    void look(const handover::BagCode& bag);
    void lookForParts(const QString& number);
    void tell(const QString& answer);

    bool reading_{};
    QString code_, answer_;
    LineModel parts_;
    std::vector<Id> partJobs_;
};

} // namespace undercowl::ui
