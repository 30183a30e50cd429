// Handing over: what speaks against it, what the owner will read, and the files.
#pragma once

#include "qml/shell/jobscreen.h"
#include "qml/shell/linemodel.h"

#include <QStringList>
#include <QtQml/qqmlregistration.h>

#include <atomic>
#include <memory>

namespace undercowl::ui {

// warnings: title what is open, mark "unsafe" for what stops the hand-over, more the page to see to it, id
// the gathering or step for pages that need one.
// stops: how many of the warnings stop it.
// asks: what the hand-over names and asks a second touch for, a line each; empty: nothing.
// asking: it was touched once, and named what asks; the next touch hands over.
// signedBy: who signed, with the day; empty: nobody yet.
// outdated: something was said since the files were made; handing over makes them anew by itself.
// record: title a heading (mark "section") or a line of the record (mark "plain", "strong" or "caution").
class HandOverView : public undercowl::ui::JobScreen {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(undercowl::ui::LineModel* warnings READ warnings CONSTANT)
    Q_PROPERTY(undercowl::ui::LineModel* record READ record CONSTANT)
    Q_PROPERTY(bool stopped READ stopped NOTIFY changed)
    Q_PROPERTY(bool handedOver READ handedOver NOTIFY changed)
    Q_PROPERTY(int stops READ stops NOTIFY changed)
    Q_PROPERTY(QStringList asks READ asks NOTIFY changed)
    Q_PROPERTY(bool asking READ asking NOTIFY changed)
    Q_PROPERTY(QString signedBy READ signedBy NOTIFY changed)
    Q_PROPERTY(bool outdated READ outdated NOTIFY progressed)
    Q_PROPERTY(QStringList languages READ languages CONSTANT)
    Q_PROPERTY(int language READ language WRITE setLanguage NOTIFY languageChanged)
    Q_PROPERTY(bool writing READ writing NOTIFY progressed)
    Q_PROPERTY(double progress READ progress NOTIFY progressed)
    Q_PROPERTY(QString folder READ folder NOTIFY progressed)
    Q_PROPERTY(QStringList files READ files NOTIFY progressed)

public:
    using JobScreen::JobScreen;
    ~HandOverView() override;

    [[nodiscard]] LineModel* warnings() { return &warnings_; }
    [[nodiscard]] LineModel* record() { return &record_; }
    [[nodiscard]] bool stopped() const { return stopped_; } // job::mayLeave() says no
    [[nodiscard]] bool handedOver() const { return handedOver_; }
    [[nodiscard]] int stops() const;
    [[nodiscard]] const QStringList& asks() const { return asks_; }
    [[nodiscard]] bool asking() const { return !asks_.isEmpty() && asked_ == asks_; }
    [[nodiscard]] const QString& signedBy() const { return signedBy_; }
    [[nodiscard]] bool outdated() const { return !files_.isEmpty() && written_ != said_; }
    // Of the record, for its owner: an index into languages(), each in its own words; the app's until chosen.
    [[nodiscard]] static QStringList languages();
    [[nodiscard]] int language() const;
    void setLanguage(int language);
    [[nodiscard]] bool writing() const { return writing_; }
    [[nodiscard]] double progress() const { return progress_; } // 0 to 1
    [[nodiscard]] QString folder() const { return folder_; }    // where the files lie, once they do
    [[nodiscard]] const QStringList& files() const { return files_; }

    Q_INVOKABLE void writeFiles(); // PDF, page and archive, off the touch thread
    Q_INVOKABLE void cancel();
    // Refused while stopped; where something asks, the first call only sets 'asking', and the second counts
    // while it asks the same. Then the files are made, so that they say that it was handed over. Each may be
    // empty: what is to be told (errors.note: not where it must not be ridden), what became of old parts and
    // of waste.
    Q_INVOKABLE void handOver(const QString& note, const QString& oldParts = {}, const QString& waste = {});

signals:
    void languageChanged();
    void progressed();
    void done(); // handed over; the sync has returned

protected:
    void show(const Snapshot& snapshot) override;

private:
    void showWarnings(const job::Job& job);
    void showRecord(const Snapshot& snapshot);

    [[nodiscard]] QString languageCode() const;

    LineModel warnings_, record_;
    QString language_; // empty: the app's
    bool stopped_{};
    bool handedOver_{};
    bool tells_{}; // leaves only with a word to the owner
    QStringList asks_, asked_;
    QString signedBy_;
    std::size_t said_{}, written_{}; // entries of the job now, and in the files
    bool writing_{};
    bool again_{}; // once more, when what is being written is done
    double progress_{};
    QString folder_;
    QStringList files_;
    std::shared_ptr<std::atomic_bool> cancelled_;
};

} // namespace undercowl::ui
