// A measurement as it is being entered: the draft's values as quantities, and the reading that they make.
#pragma once

#include "core/job/model.h"
#include "core/journal/instruments.h"
#include "core/verdict/judge.h"
#include "qml/shell/formdraft.h"

#include <QJsonObject>
#include <QStringList>
#include <QVariantMap>

#include <optional>
#include <span>
#include <string>
#include <vector>

namespace undercowl::ui {

// --- units that a workshop's instruments show, by index
[[nodiscard]] QStringList measuredUnits();
[[nodiscard]] units::Unit measuredUnit(int index);              // clamped
[[nodiscard]] int measuredUnitIndex(const std::string& symbol); // -1 for one that is not among them
// The unit for what is measured where none was chosen: of the quantity that its words mean, the one last used
// for it. -1 where they say nothing and it is not what was measured last: then it has to be chosen. MEMORY is
// what this device remembers: unit and what of the last reading, units by quantity.
[[nodiscard]] int unitMeant(const QString& what, const QJsonObject& memory);
[[nodiscard]] int plainNumber();            // the index of a number without a unit
[[nodiscard]] int nextUnitAlike(int index); // the next one of the same quantity; the same where there is none
[[nodiscard]] QString unitText(const units::Unit& unit); // empty for a plain number

// The shop's own instruments that read in the unit, then the ordinary ones of which it has none of that name.
struct Fitting {
    verdict::Instrument instrument;
    bool ours{};
};
[[nodiscard]] std::vector<Fitting> fittingInstruments(std::span<const journal::KeptInstrument> kept,
                                                      const units::Unit& unit);

// --- what is being entered
struct Measuring {
    job::Reading reading;                // as far as it can be read; nothing judged yet
    std::vector<units::Quantity> values; // those kept aside, then the one being typed
    std::optional<verdict::Limits> limits;
    std::optional<verdict::Instrument> instrument;
    verdict::Rule rule =
        verdict::Rule::GuardBand; // verdict::targetRule where the step's own torque is the limit
    QVariantMap errors;           // by field: what, value, low, high, trust
};
// PIECE: the hardware whose torque is measured; its torque is the limit where no other was typed. May be
// null.
[[nodiscard]] Measuring measuringFrom(const FormDraft& draft, const std::string& about,
                                      std::span<const Fitting> fitting, units::Unit unit,
                                      const QString& instrument, const job::Hardware* piece);

// Judges it, and writes value, uncertainty and verdict into the reading. Of several readings of a torque that
// the step demands each is held against it: the mean of a loose and an overtightened bolt is a right one. The
// error names the remedy.
[[nodiscard]] tl::expected<verdict::Judgement, std::string> judged(Measuring& measuring, units::Date today);

// What can be measured here, likeliest first: the step's fasteners that have a torque, what was measured in
// this job before. Values as a draft has them.
struct Proposal {
    QString what;
    QString detail; // "4.5 N.m in the step", "at least 9 N.m, manual"
    QVariantMap values;
};
[[nodiscard]] std::vector<Proposal> proposals(const job::Job& job, const std::string& about);

[[nodiscard]] QString withUnit(const job::TypedValue& value);    // no line break parts them
[[nodiscard]] QString repeatedText(const job::Reading& reading); // "9.3, 9.4, 9.3"; empty for one alone
[[nodiscard]] QString limitsText(const job::Reading& reading);   // "at least 9 N.m, at most 11 N.m, manual"

} // namespace undercowl::ui
