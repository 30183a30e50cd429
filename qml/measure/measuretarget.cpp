// The torque that the step demands of what is measured.
#include "qml/measure/measureview.h"

#include "core/job/torque.h"
#include "qml/shell/words.h"

#include <algorithm>

namespace undercowl::ui {

const job::StripStep* MeasureView::torqueStep() const {
    const auto now = snapshot();
    if (draft_ == nullptr || now == nullptr ||
        measuredUnit(unitIndex()).dimension() != units::Dimension::Torque)
        return nullptr;
    const auto* step = job::findStep(now->job, about_.toStdString());
    const auto torqued = [](const job::Hardware& piece) { return job::torqueOf(piece).has_value(); };
    return step != nullptr && std::ranges::any_of(step->hardware, torqued) ? step : nullptr;
}

const job::Hardware* MeasureView::piece() const {
    const auto* step = torqueStep();
    return step == nullptr ? nullptr : job::torqueMeant(*step, utf8(draft_->text(QStringLiteral("what"))));
}

void MeasureView::showTarget() {
    target_.clear();
    targetSource_.clear();
    const auto* step = torqueStep();
    if (step == nullptr)
        return;
    const auto* piece = this->piece();
    if (piece == nullptr) {
        targetSource_ = tr("The step has several torques: choose below which one is measured.");
        return;
    }
    target_ = tr("to be %1").arg(withUnit(*piece->torque));
    const auto around = job::torqueLimits(*piece);
    targetSource_ = tr("as the step says; %1 to %2, as far as a wrench by ISO 6789-1 may be off")
                        .arg(numberText(around.low), withUnit({around.high, piece->torque->unit}));
    if (piece->count > 1)
        targetSource_ +=
            u' ' + tr("One reading stands for all %1: keep the one that is furthest off, or take each with "
                      "Again.")
                       .arg(piece->count);
}

} // namespace undercowl::ui
