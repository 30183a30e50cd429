// What the shop knows of a model, offered to the open job: nothing enters it without a touch.
#pragma once

#include "core/job/knowledge.h"
#include "qml/shell/linemodel.h"
#include "qml/shell/session.h"

#include <QObject>
#include <QQmlParserStatus>
#include <QtQml/qqmlregistration.h>

namespace undercowl::ui {

// make, model: of whom; empty: of the open job's machine, whose own facts are left out.
// facts: id its place, title what, detail what it says, more where it came from and how often it held, mark
// its kind; contradictions first: mark "contradiction" heads each group.
class KnowledgeView : public QObject, public QQmlParserStatus {
    Q_OBJECT
    QML_ELEMENT
    Q_INTERFACES(QQmlParserStatus)
    Q_PROPERTY(undercowl::ui::ShopSession* session MEMBER session_ REQUIRED)
    Q_PROPERTY(QString make MEMBER make_)
    Q_PROPERTY(QString model MEMBER model_)
    Q_PROPERTY(QString title READ title NOTIFY changed)
    Q_PROPERTY(bool ready READ ready NOTIFY changed)
    Q_PROPERTY(bool offered READ offered NOTIFY changed)
    Q_PROPERTY(QString file READ file NOTIFY changed)
    Q_PROPERTY(undercowl::ui::LineModel* facts READ facts CONSTANT)

public:
    explicit KnowledgeView(QObject* parent = nullptr) : QObject(parent) {}

    void classBegin() override {}
    void componentComplete() override;

    [[nodiscard]] QString title() const;
    [[nodiscard]] bool ready() const { return ready_; }
    [[nodiscard]] bool offered() const { return offered_; }     // to the open job
    [[nodiscard]] const QString& file() const { return file_; } // that was written
    [[nodiscard]] LineModel* facts() { return &facts_; }

    Q_INVOKABLE void takeOver(const QString& fact); // into the open job; undone by the undo line
    Q_INVOKABLE void write();                       // the model's file, for other shops

signals:
    void changed();

private:
    void show(job::ModelKnowledge known);

    ShopSession* session_{};
    QString make_, model_, file_;
    bool ready_{};
    bool offered_{};
    job::ModelKnowledge known_;
    LineModel facts_;
};

} // namespace undercowl::ui
