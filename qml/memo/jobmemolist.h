// Memos of a job, written and spoken.
#pragma once

#include "qml/shell/formdraft.h"
#include "qml/shell/jobscreen.h"
#include "qml/shell/linemodel.h"

#include <QtQml/qqmlregistration.h>

namespace undercowl::ui {

// memos: newest first, at most five: title the text, detail what it is about, aside when and by whom, on:
// with sound.
class JobMemoList : public undercowl::ui::JobScreen {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(undercowl::ui::LineModel* memos READ memos CONSTANT)

public:
    using JobScreen::JobScreen;

    [[nodiscard]] LineModel* memos() { return &memos_; }

    Q_INVOKABLE void keep(undercowl::ui::FormDraft* draft, const QString& about = {}); // value: text

signals:
    void kept();

protected:
    void show(const Snapshot& snapshot) override;

private:
    LineModel memos_;
};

} // namespace undercowl::ui
