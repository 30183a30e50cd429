// The trade's calculations, to choose one from.
#pragma once

#include "qml/shell/linemodel.h"

#include <QObject>
#include <QtQml/qqmlregistration.h>

namespace undercowl::ui {

// words    narrows the list: every word occurs in title, purpose or name; empty for all
// lines    id the calculation's name, title, detail its purpose; by title
class CalcList : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QString words READ words WRITE setWords NOTIFY wordsChanged)
    Q_PROPERTY(undercowl::ui::LineModel* lines READ lines CONSTANT)

public:
    explicit CalcList(QObject* parent = nullptr);

    [[nodiscard]] QString words() const { return words_; }
    void setWords(const QString& words);
    [[nodiscard]] LineModel* lines() { return &lines_; }

signals:
    void wordsChanged();

private:
    void show();

    QString words_;
    LineModel lines_;
};

} // namespace undercowl::ui
