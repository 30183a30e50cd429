// One calculation as a form: made from its declaration alone, for every calculation the same.
//
// What is entered lives in the form's draft, so that it is there again the next time; each change works the
// result out anew.
#pragma once

#include "core/trade/registry.h"
#include "qml/measure/band.h"
#include "qml/measure/curve.h"
#include "qml/shell/formdraft.h"
#include "qml/shell/jobscreen.h"
#include "qml/shell/linemodel.h"

#include <QPointer>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

#include <optional>

namespace undercowl::ui {

// name       of the calculation; set once
// draft      holds "KEY" as typed and "KEY/unit" as chosen
// inputs     id key, title label, detail why it is asked, aside what stands (typed or default), mark "given",
//            "job" (what the open job says), "default", "open" (not needed) or "needed", more what is wrong
//            with it
// results    title label, aside the value in words
// verdict    "within", "undecided", "outside" or empty;  reason: probability and where the limit comes from
// problem    why there is no result yet: what is missing, or wrong, and what would be possible
// band       a judged measurement against its limits;  curve  its points where a curve says more
// working, cautions, sources, validity, formula   lines of the calculation
//
// The input that is open for entry, none while key is empty:
// key, label, why, hint (range and default), kind ("quantity", "text", "date", "choice"), value (as typed),
// units, unit (symbol), signs (may be negative), choices, choice (index), example
class CalcView : public undercowl::ui::JobScreen {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QString name READ name WRITE setName NOTIFY nameChanged)
    Q_PROPERTY(undercowl::ui::FormDraft* draft READ draft WRITE setDraft NOTIFY draftChanged)
    Q_PROPERTY(QString title READ title NOTIFY nameChanged)
    Q_PROPERTY(QString purpose READ purpose NOTIFY nameChanged)
    Q_PROPERTY(QStringList formula READ formula NOTIFY nameChanged)
    Q_PROPERTY(QStringList sources READ sources NOTIFY nameChanged)
    Q_PROPERTY(QStringList validity READ validity NOTIFY nameChanged)
    Q_PROPERTY(undercowl::ui::LineModel* inputs READ inputs CONSTANT)
    Q_PROPERTY(undercowl::ui::LineModel* results READ results CONSTANT)
    Q_PROPERTY(QString verdict READ verdict NOTIFY worked)
    Q_PROPERTY(QString reason READ reason NOTIFY worked)
    Q_PROPERTY(QString problem READ problem NOTIFY worked)
    Q_PROPERTY(QStringList working READ working NOTIFY worked)
    Q_PROPERTY(QStringList cautions READ cautions NOTIFY worked)
    Q_PROPERTY(undercowl::ui::Band* band READ band CONSTANT)
    Q_PROPERTY(undercowl::ui::Curve* curve READ curve CONSTANT)
    Q_PROPERTY(QString key READ key NOTIFY opened)
    Q_PROPERTY(QString label READ label NOTIFY opened)
    Q_PROPERTY(QString why READ why NOTIFY opened)
    Q_PROPERTY(QString hint READ hint NOTIFY opened)
    Q_PROPERTY(QString kind READ kind NOTIFY opened)
    Q_PROPERTY(bool signs READ signs NOTIFY opened)
    Q_PROPERTY(QStringList units READ units NOTIFY opened)
    Q_PROPERTY(QStringList choices READ choices NOTIFY opened)
    Q_PROPERTY(QString example READ example NOTIFY opened)
    Q_PROPERTY(QString value READ value NOTIFY worked)
    Q_PROPERTY(QString unit READ unit NOTIFY worked)
    Q_PROPERTY(int choice READ choice NOTIFY worked)
    Q_PROPERTY(QString fault READ fault NOTIFY worked)

public:
    using JobScreen::JobScreen;

    [[nodiscard]] QString name() const { return name_; }
    void setName(const QString& name);
    [[nodiscard]] FormDraft* draft() const { return draft_; }
    void setDraft(FormDraft* draft);

    [[nodiscard]] QString title() const;
    [[nodiscard]] QString purpose() const;
    [[nodiscard]] QStringList formula() const;
    [[nodiscard]] QStringList sources() const;
    [[nodiscard]] QStringList validity() const;
    [[nodiscard]] LineModel* inputs() { return &inputs_; }
    [[nodiscard]] LineModel* results() { return &results_; }
    [[nodiscard]] QString verdict() const { return verdict_; }
    [[nodiscard]] QString reason() const { return reason_; }
    [[nodiscard]] QString problem() const { return problem_; }
    [[nodiscard]] QStringList working() const { return working_; }
    [[nodiscard]] QStringList cautions() const { return cautions_; }

    [[nodiscard]] Band* band() { return &band_; }
    [[nodiscard]] Curve* curve() { return &curve_; }

    [[nodiscard]] QString key() const { return key_; }
    [[nodiscard]] QString label() const;
    [[nodiscard]] QString why() const;
    [[nodiscard]] QString hint() const;
    [[nodiscard]] QString kind() const;
    [[nodiscard]] bool signs() const;
    [[nodiscard]] QStringList units() const;
    [[nodiscard]] QStringList choices() const;
    [[nodiscard]] QString example() const;
    [[nodiscard]] QString value() const;
    [[nodiscard]] QString unit() const;
    [[nodiscard]] int choice() const;
    [[nodiscard]] QString fault() const; // what is wrong with the open input

    Q_INVOKABLE void open(const QString& key); // an input of the form; empty closes
    Q_INVOKABLE void setValue(const QString& typed);
    Q_INVOKABLE void setUnit(int index);
    Q_INVOKABLE void setChoice(int index);
    Q_INVOKABLE void next();        // opens the next input that is needed and empty, or closes
    Q_INVOKABLE void showExample(); // the worked example; discard() of the draft clears it
    Q_INVOKABLE void keep(); // says a judged measurement as a reading of the open job, the rest as a memo

signals:
    void nameChanged();
    void draftChanged();
    void opened();
    void worked();
    void kept();

protected:
    void show(const Snapshot& snapshot) override; // nothing of the job is shown

private:
    void work();
    void showResult(const trade::Result& result);
    [[nodiscard]] const trade::Declaration* declaration() const;
    [[nodiscard]] const trade::Input* input() const;                  // the open one
    [[nodiscard]] std::string typed(const trade::Input& input) const; // as the core reads it; empty: nothing
    // What the open job says of it, with its unit: where it will be ridden, what it will carry. Empty:
    // nothing.
    [[nodiscard]] std::string fromJob(const trade::Input& input) const;
    [[nodiscard]] QString symbol(const trade::Input& input) const;

    QString name_;
    const trade::Calculation* calculation_{};
    QPointer<FormDraft> draft_;
    QString key_;
    QString verdict_, reason_, problem_, summary_, faultKey_, fault_;
    QStringList working_, cautions_;
    std::optional<trade::Result> result_;
    LineModel inputs_, results_;
    Band band_;
    Curve curve_;
};

} // namespace undercowl::ui
