#include "core/job/model.h"

#include <algorithm>
#include <array>
#include <cstddef>

namespace undercowl::job {
namespace {

constexpr std::array<std::string_view, 6> purposes{"as found", "finding", "strip",
                                                   "wiring",   "refit",   "other"};
constexpr std::array<std::string_view, 3> severities{"unsafe", "soon", "note"};
constexpr std::array<std::string_view, 7> partStates{"wanted", "asked",  "ordered",   "here",
                                                     "wrong",  "fitted", "not needed"};
constexpr std::array<std::string_view, 2> outcomes{"matches", "does not match"};

constexpr std::array<std::string_view, 4> holds{"not said", "owner", "parts", "outside"};
constexpr std::array<std::string_view, 4> fits{"not said", "fits", "fits after a change", "does not fit"};
constexpr std::array<std::string_view, 3> checkAnswers{"fine", "found", "not done"};
constexpr std::array<std::string_view, 3> functionAnswers{"works", "does not", "not tried"};

template<typename Enum, std::size_t N>
std::optional<Enum> fromCode(const std::array<std::string_view, N>& codes, std::string_view text) {
    const auto found = std::find(codes.begin(), codes.end(), text);
    if (found == codes.end())
        return std::nullopt;
    return static_cast<Enum>(found - codes.begin());
}

template<typename T>
const T* byId(const std::vector<T>& items, std::string_view id) {
    const auto found =
        std::find_if(items.begin(), items.end(), [id](const T& item) { return item.id == id; });
    return found == items.end() ? nullptr : &*found;
}

} // namespace

std::string_view code(PhotoPurpose purpose) {
    return purposes.at(static_cast<std::size_t>(purpose));
}
std::string_view code(Severity severity) {
    return severities.at(static_cast<std::size_t>(severity));
}
std::string_view code(PartState state) {
    return partStates.at(static_cast<std::size_t>(state));
}
std::string_view code(MatchOutcome outcome) {
    return outcomes.at(static_cast<std::size_t>(outcome));
}

std::string_view code(Holds by) {
    return holds.at(static_cast<std::size_t>(by));
}
std::string_view code(PartFit fit) {
    return fits.at(static_cast<std::size_t>(fit));
}
std::string_view code(CheckAnswer answer) {
    return checkAnswers.at(static_cast<std::size_t>(answer));
}
std::string_view code(FunctionAnswer answer) {
    return functionAnswers.at(static_cast<std::size_t>(answer));
}

std::optional<PhotoPurpose> photoPurposeFromCode(std::string_view text) {
    return fromCode<PhotoPurpose>(purposes, text);
}
std::optional<Severity> severityFromCode(std::string_view text) {
    return fromCode<Severity>(severities, text);
}
std::optional<PartState> partStateFromCode(std::string_view text) {
    return fromCode<PartState>(partStates, text);
}
std::optional<MatchOutcome> matchOutcomeFromCode(std::string_view text) {
    return fromCode<MatchOutcome>(outcomes, text);
}

std::optional<Holds> holdsFromCode(std::string_view text) {
    return fromCode<Holds>(holds, text);
}
std::optional<PartFit> partFitFromCode(std::string_view text) {
    return fromCode<PartFit>(fits, text);
}
std::optional<CheckAnswer> checkAnswerFromCode(std::string_view text) {
    return fromCode<CheckAnswer>(checkAnswers, text);
}
std::optional<FunctionAnswer> functionAnswerFromCode(std::string_view text) {
    return fromCode<FunctionAnswer>(functionAnswers, text);
}

const Finding* findFinding(const Job& job, std::string_view id) {
    return byId(job.findings, id);
}
const StripStep* findStep(const Job& job, std::string_view id) {
    return byId(job.steps, id);
}
const Task* findTask(const Job& job, std::string_view id) {
    return byId(job.tasks, id);
}
const Photo* findPhoto(const Job& job, std::string_view id) {
    return byId(job.photos, id);
}
const wiring::Gathering* findGathering(const Job& job, std::string_view id) {
    return byId(job.gatherings, id);
}

bool outstanding(const Part& part) {
    return part.state != PartState::Fitted && part.state != PartState::NotNeeded;
}

std::vector<const Photo*> photosAbout(const Job& job, std::string_view about) {
    std::vector<const Photo*> photos;
    for (const Photo& photo : job.photos)
        if (photo.about == about)
            photos.push_back(&photo);
    return photos;
}

} // namespace undercowl::job
