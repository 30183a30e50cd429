// A strip step while it is being entered: what the draft row in the store holds, written on each change.
#pragma once

#include "core/job/refit.h"

#include <QByteArray>
#include <QString>
#include <QStringList>
#include <QVariantList>

#include <string>
#include <vector>

namespace undercowl::ui {

// step.id is given before anything is said, so that photos and gatherings taken meanwhile belong to it. When
// a step that was said already is being corrected, step.said.entry names the entry to supersede.
struct StripDraft {
    job::StripStep step;
    std::vector<std::string> addedCautions; // by touch, beside those that the title asks for
    std::string newTask; // title of a task that is named together with the step; empty if none

    friend bool operator==(const StripDraft&, const StripDraft&) = default;
};

[[nodiscard]] QByteArray toJson(const StripDraft& draft);
// An unreadable draft gives one without a step id.
[[nodiscard]] StripDraft stripDraftFromJson(const QByteArray& json);

// The cautions that belong before the step: those of its title, then those added by touch, each once.
[[nodiscard]] std::vector<std::string> cautionsOf(const StripDraft& draft);

// "2 × screw M5 × 16 mm"; "screw" for a single one without measures.
[[nodiscard]] QString hardwareText(const job::Hardware& hardware);
// Where its hardware sits on the photo, for PhotoFrame: the label counts the pieces from 1.
[[nodiscard]] QVariantList marksOn(const job::StripStep& step, std::string_view photo);
// The photo on which the most of it was placed, otherwise the last; null without one.
[[nodiscard]] const job::Photo* clearestPhoto(const job::RefitStep& step);
// Routing, ends, adjustment as found, fluids let out: a line each, of those that are known.
[[nodiscard]] QStringList notesOf(const job::StripStep& step);
// All of it, and the bag: "2 × screw M5 × 16 mm, washer in bag 7"; empty when there is neither.
[[nodiscard]] QString hardwareText(const job::StripStep& step);

} // namespace undercowl::ui
