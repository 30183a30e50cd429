// What all screens share: the open job, saying something, undo, drafts.
//
// The session lives on the touch thread and never waits there: the store is owned by a worker thread. What is
// said is appended by the worker; when the append has returned, hence after the sync, the session publishes a
// new snapshot of the open job, and only then does 'saving' become Saved.
//
// Handed to every view model and screen as 'session'. Not for use from other threads.
#pragma once

#include "core/job/standing.h"
#include "platform/threads/across.h"
#include "qml/shell/shopstore.h"
#include "qml/shell/worker.h"

#include <QObject>
#include <QPointer>
#include <QString>
#include <QTimer>
#include <QUrl>
#include <QVariantMap>
#include <QtQml/qqmlregistration.h>

#include <functional>
#include <map>
#include <memory>
#include <span>
#include <type_traits>
#include <utility>
#include <vector>

namespace undercowl::ui {

// The open job as it was at one moment. Immutable: a change gives a new one.
struct Snapshot {
    job::Job job;
    job::Machine machine;
    job::Owner owner;
    job::Standing standing;
};
using SnapshotPtr = std::shared_ptr<const Snapshot>;

using Entries = Result<std::vector<journal::Entry>>;

struct SayOptions {
    QString undoText; // what the undo line says, "Finding kept"; empty: no undo is offered
    QString form;     // draft that is dropped once the entries are safe; empty: none
    bool withdraws{}; // the entries take back, or bring back, what was said: no step of their own
};

struct PhotoToKeep {
    QString file; // JPEG or PNG; read by the worker, never altered
    Id job;
    job::PhotoPurpose purpose{};
    Id about; // finding, step or gathering
    QString note;
    bool ours{}; // a file that the camera wrote for us: deleted once its content is safe in the store
};

// A draft that waits to be continued.
struct WaitingDraft {
    QString form;  // "finding/JOB"
    QString title; // "finding"
    Id job;
    job::TimeMs at{};
};

class ShopSession : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("The shell hands the session to each screen")
    Q_PROPERTY(State state READ state NOTIFY stateChanged)
    Q_PROPERTY(QString problem READ problem NOTIFY problemChanged)
    Q_PROPERTY(bool readOnly READ readOnly NOTIFY stateChanged)
    Q_PROPERTY(bool diskFull READ diskFull NOTIFY diskFullChanged)
    Q_PROPERTY(QString mechanicName READ mechanicName NOTIFY mechanicChanged)
    Q_PROPERTY(QString jobId READ jobId NOTIFY jobChanged)
    Q_PROPERTY(bool opening READ opening NOTIFY openingChanged)
    Q_PROPERTY(Saving saving READ saving NOTIFY savingChanged)
    Q_PROPERTY(int savedCount READ savedCount NOTIFY savingChanged)
    Q_PROPERTY(QString undoText READ undoText NOTIFY undoChanged)
    Q_PROPERTY(QString takeBackText READ takeBackText NOTIFY stepsChanged)

public:
    enum class State { Opening, NoMechanic, Ready, Failed };
    Q_ENUM(State)
    enum class Saving { Idle, Underway, Saved, Failed };
    Q_ENUM(Saving)

    // 'folder' is where the store lies: media are shown from it, and long work opens its own store on it.
    ShopSession(OpenShop open, std::filesystem::path folder, store::WallClock clock = store::systemClock(),
                QObject* parent = nullptr);
    ~ShopSession() override; // writes drafts that wait, finishes what was given to the worker

    [[nodiscard]] State state() const { return state_; }
    [[nodiscard]] QString problem() const { return problem_; } // of the last failure, with its remedy
    [[nodiscard]] bool readOnly() const { return readOnly_; }  // damaged or too new: for looking only
    // Something was refused for want of room, and there is none yet: no photos are taken meanwhile.
    [[nodiscard]] bool diskFull() const { return diskFull_; }
    [[nodiscard]] QString mechanicName() const;
    [[nodiscard]] QString jobId() const;
    [[nodiscard]] bool opening() const { return opening_; }
    [[nodiscard]] Saving saving() const { return saving_; }
    [[nodiscard]] int savedCount() const { return savedCount_; } // says that were saved since the start
    [[nodiscard]] QString undoText() const { return undoText_; } // empty: nothing to undo just now
    // What takeBack() takes back; empty: nothing of the open job was said since it was opened.
    [[nodiscard]] QString takeBackText() const;

    [[nodiscard]] SnapshotPtr snapshot() const { return snapshot_; } // null while no job is open
    [[nodiscard]] std::shared_ptr<const job::Job> job() const;       // null while no job is open
    [[nodiscard]] const std::vector<job::Mechanic>& mechanics() const { return mechanics_; }
    [[nodiscard]] Id mechanic() const { return mechanic_; }
    [[nodiscard]] QString mechanicName(const Id& id) const; // empty for an unknown one
    [[nodiscard]] const std::filesystem::path& folder() const { return folder_; }
    [[nodiscard]] Id newId() const;
    [[nodiscard]] job::TimeMs now() const { return clock_(); }

    // --- saying something. 'then' runs on the touch thread, after the new snapshot was published; on failure
    // the problem is shown, the form's draft stays, and nothing was written.
    void say(std::vector<journal::Draft> drafts, SayOptions options = {},
             std::function<void(const Entries&)> then = {});
    // The same where what is said depends on what the store holds: 'make' runs on the worker.
    using MakeEntries = std::function<Entries(ShopStore&)>;
    void sayFrom(MakeEntries make, SayOptions options = {}, std::function<void(const Entries&)> then = {});
    // Reads the file, keeps its content and says the photo, all on the worker. The id is that of the photo.
    Id keepPhoto(PhotoToKeep photo, SayOptions options = {}, std::function<void(const Entries&)> then = {});

    // --- anything else that needs the store: work(ShopStore&) runs on the worker, then(result) on the touch
    // thread if 'receiver' still lives. Neither runs when the store could not be opened.
    template<typename Work, typename Then>
    void ask(QObject* receiver, Work work, Then then) {
        using Answer = std::invoke_result_t<Work, ShopStore&>;
        worker_.give([this, alive = QPointer<QObject>(receiver), work = std::move(work),
                      then = std::move(then)](std::unique_ptr<ShopStore>& store) {
            if (store == nullptr)
                return;
            auto answer = std::make_shared<Answer>(work(*store));
            platform::across(this, [alive, answer, then] {
                if (alive != nullptr)
                    then(*answer);
            });
        });
    }

    // --- drafts: what is being entered and not yet said. Written within 200 ms of a change.
    void keepDraft(const WaitingDraft& draft, const QByteArray& json);
    void dropDraft(const QString& form);
    // Answers on the touch thread; empty if there is none.
    void restoreDraft(QObject* receiver, const QString& form, std::function<void(const QByteArray&)> then);
    [[nodiscard]] const std::vector<WaitingDraft>& waitingDrafts() const { return waiting_; } // newest first

    // --- settings of this device
    [[nodiscard]] QString
    setting(const QString& name) const; // of those named in session.cpp; empty: never set
    Q_INVOKABLE void set(const QString& name, const QString& value);

    Q_INVOKABLE void openJob(const QString& id);
    Q_INVOKABLE void closeJob();
    Q_INVOKABLE void nameMechanic(const QString& name); // adds and chooses one
    Q_INVOKABLE void chooseMechanic(const QString& id);
    Q_INVOKABLE void undoLast(); // what happened last: after an undo it brings back
    // What was said last and still stands; repeated, what was said before that, as far back as the job was
    // opened.
    Q_INVOKABLE void takeBack();
    Q_INVOKABLE void flush();    // writes drafts that wait, now
    Q_INVOKABLE void tryAgain(); // opens the store again
    Q_INVOKABLE void clearProblem();
    Q_INVOKABLE QUrl mediaUrl(const QString& name) const; // empty for a name that cannot be one
    void report(const store::Problem& problem);           // shows a failure with its remedy
    void tell(const QString& failure);                    // the same, in words of one's own

signals:
    void stateChanged();
    void diskFullChanged();
    void problemChanged();
    void mechanicChanged();
    void jobChanged();  // another snapshot, another job or none
    void jobsChanged(); // the list of jobs may read otherwise now
    void openingChanged();
    void savingChanged();
    void undoChanged();
    void stepsChanged(); // takeBackText
    void draftsChanged();
    void settingsChanged();
    void languageChanged(); // words that were made before are to be made again

private:
    struct Opened;
    void start();
    void opened(const Opened& opened);
    void appended(const Entries& entries, const SayOptions& options, const SnapshotPtr& snapshot,
                  const std::function<void(const Entries&)>& then);
    void publish(SnapshotPtr snapshot);
    void setSaving(Saving saving);
    void setState(State state);
    void setDiskFull(bool full);
    void lookForRoom();
    void forgetDraft(const QString& form);
    struct Step {
        QString text;
        std::vector<journal::Entry> entries;
    };
    // Takes the step's entries back; 'then' is told whether that was saved.
    void withdraw(const Step& step, const QString& undoText, std::function<void(bool)> then);
    void stands(const std::optional<Step>& step); // again
    void forgetSteps();

    OpenShop open_;
    std::filesystem::path folder_;
    store::WallClock clock_;
    State state_{State::Opening};
    QString problem_;
    bool readOnly_{};
    bool diskFull_{};
    QTimer roomAgain_;
    Id mechanic_;
    std::vector<job::Mechanic> mechanics_;
    std::map<QString, QString> settings_;
    SnapshotPtr snapshot_;
    Id wanted_; // the job to be open: an answer for another one came too late
    bool opening_{};
    Saving saving_{Saving::Idle};
    int underway_{};
    int savedCount_{};
    QString undoText_;
    std::vector<journal::Entry> undoEntries_;
    std::vector<Step> steps_;       // of the open job, as they were said, without those taken back
    std::optional<Step> takenBack_; // last: stands again when it is brought back
    std::vector<WaitingDraft> waiting_;
    std::map<QString, QByteArray> unwritten_;
    QTimer writeSoon_;
    Worker worker_; // last: it ends first, while everything that its work refers to is alive
};

} // namespace undercowl::ui
