// The pictures of one folder, or its files of other names, newest first, and the folders in it: for choosing
// one.
#pragma once

#include "qml/shell/linemodel.h"

#include <QObject>
#include <QString>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

namespace undercowl::ui {

// entries: mark "folder" or "picture"; title name; id path; aside when; picture. At most 500, said when there
// are more. names: such as "*.backup", for files instead of pictures: mark "file", detail its size.
class PictureFolder : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QStringList names MEMBER names_)
    Q_PROPERTY(QString folder READ folder WRITE setFolder NOTIFY folderChanged)
    Q_PROPERTY(QString name READ name NOTIFY folderChanged)
    Q_PROPERTY(bool hasParent READ hasParent NOTIFY folderChanged)
    Q_PROPERTY(bool busy READ busy NOTIFY listed)
    Q_PROPERTY(bool more READ more NOTIFY listed)
    Q_PROPERTY(undercowl::ui::LineModel* entries READ entries CONSTANT)

public:
    explicit PictureFolder(QObject* parent = nullptr) : QObject(parent) {}

    [[nodiscard]] QString folder() const { return folder_; }
    void setFolder(const QString& folder); // empty: where this user has such; lists it off the touch thread
    [[nodiscard]] QString name() const;
    [[nodiscard]] bool hasParent() const;
    [[nodiscard]] bool busy() const { return busy_; }
    [[nodiscard]] bool more() const { return more_; }
    [[nodiscard]] LineModel* entries() { return &entries_; }

    Q_INVOKABLE void up();

signals:
    void folderChanged();
    void listed();

private:
    QStringList names_;
    QString folder_;
    bool busy_{};
    bool more_{};
    int wanted_{}; // the listing that counts: an earlier one came too late
    LineModel entries_;
};

} // namespace undercowl::ui
