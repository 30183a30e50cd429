// Full-text search as one types.
#pragma once

#include "qml/shell/linemodel.h"
#include "qml/shell/session.h"

#include <QObject>
#include <QStringList>
#include <QVariantMap>
#include <QtQml/qqmlregistration.h>

#include <map>
#include <memory>
#include <optional>
#include <vector>

namespace undercowl::ui {

// hits: id a running number, title what was found, detail the words around it, aside its kind, more the
// machine.
class Finder : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(undercowl::ui::ShopSession* session MEMBER session_ REQUIRED)
    Q_PROPERTY(QString words READ sought WRITE setWords NOTIFY wordsChanged)
    Q_PROPERTY(bool searched READ searched NOTIFY searchedChanged)
    Q_PROPERTY(undercowl::ui::LineModel* hits READ hits CONSTANT)
    Q_PROPERTY(int kind READ kind WRITE setKind NOTIFY filtersChanged)
    Q_PROPERTY(int state READ state WRITE setState NOTIFY filtersChanged)
    Q_PROPERTY(int age READ age WRITE setAge NOTIFY filtersChanged)
    Q_PROPERTY(int severity READ severity WRITE setSeverity NOTIFY filtersChanged)
    Q_PROPERTY(int waits READ waits WRITE setWaits NOTIFY filtersChanged)
    Q_PROPERTY(QString machine READ machine WRITE setMachine NOTIFY filtersChanged)
    Q_PROPERTY(QStringList kinds READ kinds CONSTANT)
    Q_PROPERTY(QStringList waitings READ waitings CONSTANT)
    Q_PROPERTY(QStringList machines READ machines NOTIFY searchedChanged)
    Q_PROPERTY(bool filtered READ filtered NOTIFY filtersChanged)

public:
    explicit Finder(QObject* parent = nullptr) : QObject(parent) {}

    [[nodiscard]] QString sought() const { return words_; }
    void setWords(const QString& words); // searches at once; an answer to earlier words is dropped
    [[nodiscard]] bool searched() const { return searched_; } // the list answers the words that stand there
    [[nodiscard]] LineModel* hits() { return &hits_; }

    // What is left out of the list. kind: index into kinds, 0 for all. severity: of findings, 0 for all, 1
    // unsafe, 2 soon, 3 note. waits: index into waitings, 0 for all. state: 0 any, 1 in the shop, 2 a task
    // waits, 3 has something unsafe open, 4 handed over. age: worked on in the last so many days, 0 for ever.
    // machine: one of machines, empty for all.
    [[nodiscard]] int kind() const { return kind_; }
    void setKind(int kind);
    [[nodiscard]] int severity() const { return severity_; }
    void setSeverity(int severity);
    [[nodiscard]] int waits() const { return waits_; }
    void setWaits(int waits);
    [[nodiscard]] QStringList waitings() const;
    [[nodiscard]] int state() const { return state_; }
    void setState(int state);
    [[nodiscard]] int age() const { return age_; }
    void setAge(int days);
    [[nodiscard]] const QString& machine() const { return machine_; }
    void setMachine(const QString& machine);
    [[nodiscard]] QStringList kinds() const;
    [[nodiscard]] const QStringList& machines() const { return machines_; } // of all that was found
    [[nodiscard]] bool filtered() const;

    // The page that shows what was found and what it is opened with, as ShopPage::opens() takes them.
    Q_INVOKABLE QVariantMap pageOf(int row) const;
    Q_INVOKABLE QString jobOf(int row) const; // empty for a machine or an owner without a job

signals:
    void wordsChanged();
    void searchedChanged();
    void filtersChanged();

private:
    struct Found {
        store::Hit hit;
        std::optional<store::JobLine> job;
    };
    using JobLines = std::shared_ptr<const std::map<Id, store::JobLine>>;
    struct Answer {
        std::vector<Found> found;
        JobLines jobs;
    };
    static Result<Answer> search(const ShopStore& store, const std::string& words, JobLines known);
    void show();
    [[nodiscard]] bool passes(const Found& found) const;
    template<typename Value>
    void set(Value& filter, const Value& value);

    ShopSession* session_{};
    QString words_;
    bool searched_{};
    int wanted_{};
    std::vector<Found> found_;
    std::vector<std::size_t> shown_; // of those, by line
    JobLines jobLines_;              // read with the first search: a shop may hold ten thousand
    int kind_{};
    int severity_{};
    int waits_{};
    int state_{};
    int age_{};
    QString machine_;
    QStringList machines_;
    LineModel hits_;
};

} // namespace undercowl::ui
