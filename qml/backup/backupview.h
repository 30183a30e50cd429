// The whole shop written into one file: where to, sealed or not, how far it is.
#pragma once

#include "core/store/backup.h"
#include "qml/backup/places.h"
#include "qml/shell/session.h"

#include <QObject>
#include <QQmlParserStatus>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

#include <atomic>
#include <memory>
#include <vector>

namespace undercowl::ui {

// lastCopy: when the database was last copied beside itself, in words; places: names of where a backup may
// go; place: which of them is chosen; here: how many backups lie there already; result: what was written, or
// empty.
class BackupView : public QObject, public QQmlParserStatus {
    Q_OBJECT
    QML_ELEMENT
    Q_INTERFACES(QQmlParserStatus)
    Q_PROPERTY(undercowl::ui::ShopSession* session MEMBER session_ REQUIRED)
    Q_PROPERTY(QString lastCopy READ lastCopy NOTIFY changed)
    Q_PROPERTY(QStringList places READ places NOTIFY changed)
    Q_PROPERTY(int place READ place WRITE setPlace NOTIFY changed)
    Q_PROPERTY(int here READ here NOTIFY changed)
    Q_PROPERTY(bool writing READ writing NOTIFY progressed)
    Q_PROPERTY(double progress READ progress NOTIFY progressed)
    Q_PROPERTY(QString result READ result NOTIFY progressed)

public:
    explicit BackupView(QObject* parent = nullptr) : QObject(parent) {}
    ~BackupView() override;

    void classBegin() override {}
    void componentComplete() override;

    [[nodiscard]] QString lastCopy() const { return lastCopy_; }
    [[nodiscard]] QStringList places() const;
    [[nodiscard]] int place() const { return place_; }
    void setPlace(int place);
    [[nodiscard]] int here() const { return static_cast<int>(earlier_.size()); }
    [[nodiscard]] bool writing() const { return writing_; }
    [[nodiscard]] double progress() const { return progress_; } // 0 to 1, of writing and verifying
    [[nodiscard]] QString result() const { return result_; }

    // Writes and verifies off the touch thread. An empty passphrase: not sealed. onlyNew: photos that a
    // backup in the same place has are not written again.
    Q_INVOKABLE void write(const QString& passphrase, bool onlyNew);
    Q_INVOKABLE void cancel();
    // What keeps the passphrase from being used, typed twice; empty when nothing does.
    Q_INVOKABLE QString passphraseProblem(const QString& first, const QString& second) const;

signals:
    void changed();
    void progressed();

private:
    struct Seen { // of the device's disks
        std::vector<BackupPlace> places;
        QString lastCopy;
    };
    void show(const Seen& seen);
    void lookThere();
    void ended(const store::Result<store::BackupMade>& made, const QString& file);

    ShopSession* session_{};
    std::vector<BackupPlace> places_;
    int place_{};
    std::vector<std::filesystem::path> earlier_;
    QString lastCopy_;
    bool writing_{};
    double progress_{};
    QString result_;
    std::shared_ptr<std::atomic_bool> cancelled_;
};

} // namespace undercowl::ui
