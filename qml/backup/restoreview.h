// A shop brought back from a backup into a folder of its own, or an earlier one gone back to.
#pragma once

#include "core/store/backup.h"
#include "core/store/salvage.h"
#include "core/store/shops.h"
#include "qml/backup/places.h"
#include "qml/backup/shopswitch.h"
#include "qml/shell/linemodel.h"
#include "qml/shell/session.h"

#include <QObject>
#include <QPointer>
#include <QQmlParserStatus>
#include <QtQml/qqmlregistration.h>

#include <atomic>
#include <functional>
#include <memory>
#include <optional>
#include <vector>

namespace undercowl::ui {

// Not the session's store but the files beside it are what this works on: it needs no shop that can be
// opened.
//
// backups: of all places, newest first: id path, title when it was made, detail name, place and size, mark
// "sealed", "wrong" where it cannot be read. earlier: the other shops of this device: id folder, detail
// folder and size. step: what is to be done now. chosen: the backup or shop, in words. problem: why it could
// not be brought back. result: what came back of a damaged one. damaged: the present shop can only be looked
// at, or not even that: salvage() makes a new one of what can be read. here: the folder that the present shop
// stays in; goesOnWith: the folder of the other.
class RestoreView : public QObject, public QQmlParserStatus {
    Q_OBJECT
    QML_ELEMENT
    Q_INTERFACES(QQmlParserStatus)
    Q_PROPERTY(undercowl::ui::ShopSession* session MEMBER session_ REQUIRED)
    Q_PROPERTY(undercowl::ui::ShopSwitch* shops READ shops WRITE setShops)
    Q_PROPERTY(undercowl::ui::LineModel* backups READ backups CONSTANT)
    Q_PROPERTY(undercowl::ui::LineModel* earlier READ earlier CONSTANT)
    Q_PROPERTY(bool looking READ looking NOTIFY looked)
    Q_PROPERTY(Step step READ step NOTIFY changed)
    Q_PROPERTY(QString chosen READ chosen NOTIFY changed)
    Q_PROPERTY(QString chosenDetail READ chosenDetail NOTIFY changed)
    Q_PROPERTY(bool sealed READ sealed NOTIFY changed)
    Q_PROPERTY(bool removable READ removable NOTIFY changed)
    Q_PROPERTY(bool damaged READ damaged NOTIFY changed)
    Q_PROPERTY(QString passphraseError READ passphraseError NOTIFY changed)
    Q_PROPERTY(QString problem READ problem NOTIFY changed)
    Q_PROPERTY(QString result READ result NOTIFY changed)
    Q_PROPERTY(QString here READ here NOTIFY changed)
    Q_PROPERTY(QString goesOnWith READ goesOnWith NOTIFY changed)
    Q_PROPERTY(double progress READ progress NOTIFY progressed)

public:
    enum class Step {
        Choose,  // a backup or a shop
        Backup,  // bringBack(passphrase, false)
        Damaged, // bringBack(passphrase, true) would take what can be read
        Working, // cancel()
        Partly,  // goOn(): what could be read is there
        Shop,    // goOn(): the earlier shop; askToRemove()
        Remove,  // remove(): the earlier shop, for good
        Removing,
        Switching // the app is about to begin anew
    };
    Q_ENUM(Step)

    explicit RestoreView(QObject* parent = nullptr) : QObject(parent) {}
    ~RestoreView() override;

    void classBegin() override {}
    void componentComplete() override; // begins to look

    [[nodiscard]] ShopSwitch* shops() const { return shops_; }
    void setShops(ShopSwitch* shops) { shops_ = shops; }
    [[nodiscard]] LineModel* backups() { return &backups_; }
    [[nodiscard]] LineModel* earlier() { return &earlier_; }
    [[nodiscard]] bool looking() const { return looking_ > 0; }
    [[nodiscard]] Step step() const { return step_; }
    [[nodiscard]] const QString& chosen() const { return chosen_.title; }
    [[nodiscard]] const QString& chosenDetail() const { return chosen_.detail; }
    [[nodiscard]] bool sealed() const { return chosen_.mark == QStringLiteral("sealed"); }
    [[nodiscard]] bool removable() const { return step_ == Step::Shop && !chosen_.on; }
    [[nodiscard]] bool damaged() const;
    [[nodiscard]] const QString& passphraseError() const { return passphraseError_; }
    [[nodiscard]] const QString& problem() const { return problem_; }
    [[nodiscard]] const QString& result() const { return result_; }
    [[nodiscard]] QString here() const;
    [[nodiscard]] QString goesOnWith() const;                   // empty until it is known
    [[nodiscard]] double progress() const { return progress_; } // 0 to 1

    Q_INVOKABLE void choose(const QString& file);       // a backup, wherever it lies
    Q_INVOKABLE void chooseShop(const QString& folder); // one of 'earlier'
    Q_INVOKABLE void chooseOther();                     // back to the lists
    Q_INVOKABLE void retype();                          // the passphrase is being typed again
    // Into a new folder, and on with it when nothing of it is wanting. incomplete: what can be read of a
    // damaged one; goOn() then goes on with that.
    Q_INVOKABLE void bringBack(const QString& passphrase, bool incomplete);
    // A new shop of what can be read of the present one and of the copies of its database beside it.
    Q_INVOKABLE void salvage();
    // The earlier shop that was chosen leaves this device: nothing but a backup brings it back. Never the
    // present one.
    Q_INVOKABLE void askToRemove();
    Q_INVOKABLE void remove();
    Q_INVOKABLE void cancel();
    Q_INVOKABLE void goOn();

signals:
    void looked();
    void changed();
    void progressed();

private:
    struct Outcome { // of one attempt
        std::filesystem::path folder;
        std::optional<store::Result<store::Salvaged>> salvaged; // that was wanted
        bool passphraseFits{true};
        std::size_t wanting{}; // earlier backups that are not there
        store::Result<store::Restored> restored = store::failed(store::Fault::NotFound, {});
    };
    [[nodiscard]] std::filesystem::path home() const;
    void goTo(Step step);
    [[nodiscard]] bool busy() const;
    void lookForShops();
    // Off the touch thread, with progress; then(outcome) on it.
    void work(std::function<Outcome(const store::Progress&)> work, std::function<void(const Outcome&)> then);
    void salvaged(const Outcome& outcome);
    void ended(const Outcome& outcome, bool incomplete);
    void refused(const Outcome& outcome, bool incomplete);

    ShopSession* session_{};
    QPointer<ShopSwitch> shops_;
    LineModel backups_, earlier_;
    int looking_{};
    Step step_{Step::Choose};
    Line chosen_;
    QString passphraseError_, problem_, result_;
    std::filesystem::path goesOnWith_;
    double progress_{};
    std::shared_ptr<std::atomic_bool> cancelled_;
};

} // namespace undercowl::ui
