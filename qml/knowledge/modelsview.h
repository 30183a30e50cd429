// The models that the shop has had in, and files of other shops to learn from.
#pragma once

#include "qml/shell/linemodel.h"
#include "qml/shell/session.h"

#include <QObject>
#include <QQmlParserStatus>
#include <QtQml/qqmlregistration.h>

namespace undercowl::ui {

// models: id the machine of one of its jobs, title "Marrowin Tern 125", detail how many jobs.
// files: those in the folder of knowledge files: id the path, title the name.
class ModelsView : public QObject, public QQmlParserStatus {
    Q_OBJECT
    QML_ELEMENT
    Q_INTERFACES(QQmlParserStatus)
    Q_PROPERTY(undercowl::ui::ShopSession* session MEMBER session_ REQUIRED)
    Q_PROPERTY(undercowl::ui::LineModel* models READ models CONSTANT)
    Q_PROPERTY(undercowl::ui::LineModel* files READ files CONSTANT)
    Q_PROPERTY(QString folder READ folder NOTIFY changed)
    Q_PROPERTY(QString error READ error NOTIFY changed)
    Q_PROPERTY(QString learned READ learned NOTIFY changed)

public:
    explicit ModelsView(QObject* parent = nullptr) : QObject(parent) {}

    void classBegin() override {}
    void componentComplete() override;

    [[nodiscard]] LineModel* models() { return &models_; }
    [[nodiscard]] LineModel* files() { return &files_; }
    [[nodiscard]] QString folder() const;
    [[nodiscard]] const QString& error() const { return error_; }
    [[nodiscard]] const QString& learned() const { return learned_; } // what was, in words

    Q_INVOKABLE void choose(const QString& machine); // answered by chosen()
    Q_INVOKABLE void learn(const QString& file);

signals:
    void changed();
    void chosen(const QString& make, const QString& model);

private:
    ShopSession* session_{};
    LineModel models_, files_;
    QString error_, learned_;
};

} // namespace undercowl::ui
