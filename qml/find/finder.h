// Full-text search as one types.
#pragma once

#include "qml/shell/linemodel.h"
#include "qml/shell/session.h"

#include <QObject>
#include <QtQml/qqmlregistration.h>

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

public:
    explicit Finder(QObject* parent = nullptr) : QObject(parent) {}

    [[nodiscard]] QString sought() const { return words_; }
    void setWords(const QString& words); // searches at once; an answer to earlier words is dropped
    [[nodiscard]] bool searched() const { return searched_; } // the list answers the words that stand there
    [[nodiscard]] LineModel* hits() { return &hits_; }

    Q_INVOKABLE QString jobOf(int row) const; // empty for a machine or an owner without a job

signals:
    void wordsChanged();
    void searchedChanged();

private:
    void show(const std::vector<store::Hit>& hits);

    ShopSession* session_{};
    QString words_;
    bool searched_{};
    int wanted_{};
    std::vector<QString> jobs_;
    LineModel hits_;
};

} // namespace undercowl::ui
