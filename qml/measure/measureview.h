// One reading: what was measured, with what, against which limits, and what follows from it.
//
// The verdict is core/verdict's; where limit or uncertainty is missing the value is kept without one, and the
// reason is shown. The instrument last used for a quantity is remembered on this device and proposed.
#pragma once

#include "qml/measure/band.h"
#include "qml/measure/course.h"
#include "qml/measure/curve.h"
#include "qml/measure/measuring.h"
#include "qml/shell/jobscreen.h"
#include "qml/shell/linemodel.h"

#include <QPointer>
#include <QtQml/qqmlregistration.h>

namespace undercowl::ui {

// draft          what is being entered: what, value, readings (kept aside for a mean), unit (index in units),
// low,
//                high, limitUnit (index in units; the value's where it is missing), trust (index in trusts),
//                reference, instrument (its name; missing: the one last used)
// about          step or task that the reading is about; may be empty.  aboutText  its title
// unit, limitUnit   symbols
// instruments    "none named", then the shop's own and the ordinary ones that read in this unit
// instrument     index in instruments;  instrumentText  its name and its limit of error
// setup          limits and instrument in one line;  mean  "mean of 3: 9.33 N.m, spread 0.06 N.m"
// target         the torque that the step demands of what is measured: "to be 27 N.m"; empty without one
// targetSource   where it comes from, how far off it may be, and what one reading stands for
// verdict        "within", "undecided", "outside" or empty;  reason: why, or why there is none
// working        uncertainty and verdict line by line, and what would settle it;  band  the same as a plot
// course         earlier readings of the same thing and this one: over the days, or at rest, at idle and at
// revs aside          readings kept aside: title the digits proposals      what can be measured here: title
// what, detail its limits readings       of the job, newest first: title what, aside value, detail verdict
// and limits, mark the
//                verdict
class MeasureView : public undercowl::ui::JobScreen {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(undercowl::ui::FormDraft* draft READ draft WRITE setDraft NOTIFY draftChanged)
    Q_PROPERTY(QString about READ about WRITE setAbout NOTIFY changed)
    Q_PROPERTY(QString aboutText READ aboutText NOTIFY changed)
    Q_PROPERTY(QStringList units READ units CONSTANT)
    Q_PROPERTY(QString unit READ unit NOTIFY judged)
    Q_PROPERTY(QString limitUnit READ limitUnit NOTIFY judged)
    Q_PROPERTY(QStringList instruments READ instruments NOTIFY judged)
    Q_PROPERTY(int instrument READ instrument NOTIFY judged)
    Q_PROPERTY(QString instrumentText READ instrumentText NOTIFY judged)
    Q_PROPERTY(QStringList trusts READ trusts CONSTANT)
    Q_PROPERTY(QString setup READ setup NOTIFY judged)
    Q_PROPERTY(QString mean READ mean NOTIFY judged)
    Q_PROPERTY(QString target READ target NOTIFY judged)
    Q_PROPERTY(QString targetSource READ targetSource NOTIFY judged)
    Q_PROPERTY(QString verdict READ verdict NOTIFY judged)
    Q_PROPERTY(QString reason READ reason NOTIFY judged)
    Q_PROPERTY(QStringList cautions READ cautions NOTIFY judged)
    Q_PROPERTY(bool heard READ heard NOTIFY judged)
    Q_PROPERTY(QStringList working READ working NOTIFY judged)
    Q_PROPERTY(undercowl::ui::Band* band READ band CONSTANT)
    Q_PROPERTY(undercowl::ui::Curve* course READ course CONSTANT)
    Q_PROPERTY(undercowl::ui::LineModel* aside READ aside CONSTANT)
    Q_PROPERTY(undercowl::ui::LineModel* proposals READ proposals CONSTANT)
    Q_PROPERTY(undercowl::ui::LineModel* readings READ readings CONSTANT)

public:
    using JobScreen::JobScreen;

    void componentComplete() override;

    [[nodiscard]] FormDraft* draft() const { return draft_; }
    void setDraft(FormDraft* draft);
    [[nodiscard]] QString about() const { return about_; }
    void setAbout(const QString& about) { about_ = about; }
    [[nodiscard]] QString aboutText() const;
    [[nodiscard]] QStringList units() const { return measuredUnits(); }
    [[nodiscard]] QString unit() const { return unitText(measuredUnit(unitIndex())); }
    [[nodiscard]] QString limitUnit() const;
    [[nodiscard]] QStringList instruments() const;
    [[nodiscard]] int instrument() const; // 0 for none
    [[nodiscard]] QString instrumentText() const;
    [[nodiscard]] QStringList trusts() const;
    [[nodiscard]] QString setup() const { return setup_; }
    [[nodiscard]] QString mean() const { return mean_; }
    [[nodiscard]] QString target() const { return target_; }
    [[nodiscard]] QString targetSource() const { return targetSource_; }
    [[nodiscard]] QString verdict() const { return verdict_; }
    [[nodiscard]] QString reason() const { return reason_; }
    [[nodiscard]] QStringList cautions() const { return cautions_; }
    [[nodiscard]] QStringList working() const { return working_; }
    [[nodiscard]] Band* band() { return &band_; }
    [[nodiscard]] Curve* course() { return &course_; }
    [[nodiscard]] bool heard() const { return !beforeHeard_.empty(); } // there is something to unhear()
    [[nodiscard]] LineModel* aside() { return &aside_; }
    [[nodiscard]] LineModel* proposals() { return &proposals_; }
    [[nodiscard]] LineModel* readings() { return &readings_; }

    Q_INVOKABLE void chooseUnit(int index); // limits that were given keep their own unit
    Q_INVOKABLE void toggleUnit();          // to the next unit of the same quantity
    Q_INVOKABLE void chooseInstrument(int index);
    Q_INVOKABLE void again();                     // keeps the value aside; the mean of all is the reading
    Q_INVOKABLE void removeAside(int index);      // of the readings kept aside
    Q_INVOKABLE void propose(int index);          // takes a proposal into the draft
    Q_INVOKABLE void proposeFirst();              // shows the likeliest one; no draft is begun by it
    Q_INVOKABLE void follow(const QString& what); // course shows the readings of that
    // A reading that was said: what by its words ("front tyre"). What is measured, its unit and its limits
    // follow where they are for something else. Only the draft changes; errors.value where it cannot be.
    Q_INVOKABLE void hear(const QString& what, const QString& digits, const QString& unit);
    Q_INVOKABLE bool unhear(); // the draft as it was before it; false where nothing was heard
    // English, for the voice: "outside"; empty without a verdict.
    [[nodiscard]] Q_INVOKABLE QString spokenVerdict() const;
    Q_INVOKABLE void withdraw(const QString& reading); // one of readings, by its id: it was a mistake
    Q_INVOKABLE void keep(); // says the reading; errors by field: what, value, unit, low, high, trust

signals:
    void draftChanged();
    void judged();
    void kept();

protected:
    void show(const Snapshot& snapshot) override;

private:
    void readInstruments();
    void judge();
    void showTarget();
    void showCourse(const QString& what, CourseNow now);
    void remember(const job::Reading& said);
    [[nodiscard]] int unitIndex() const;
    [[nodiscard]] bool lacksUnit() const; // none was chosen, and the words do not tell it
    [[nodiscard]] QString
    remembered(int unitIndex) const; // name of the instrument last used for the quantity
    [[nodiscard]] QString instrumentName() const;
    [[nodiscard]] std::vector<Fitting> fitting() const;
    [[nodiscard]] const job::StripStep* torqueStep() const; // null where no torque of a step is measured
    [[nodiscard]] const job::Hardware* piece() const; // whose torque is measured; null if unclear or none

    QPointer<FormDraft> draft_;
    QString about_;
    std::vector<journal::KeptInstrument> kept_;
    QString setup_, mean_, target_, targetSource_, verdict_, reason_;
    QStringList cautions_, working_;
    Band band_;
    Curve course_;
    LineModel aside_, proposals_, readings_;
    std::vector<QVariantMap> beforeHeard_; // the draft before each reading that was heard
    std::vector<Proposal> proposed_;
};

} // namespace undercowl::ui
