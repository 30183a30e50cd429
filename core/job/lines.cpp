#include "core/job/lines.h"

#include "core/job/text.h"

#include <algorithm>
#include <array>

namespace undercowl::job {
namespace {

constexpr std::array<std::string_view, 5> hoses{"hose", "pipe", "vent", "breather", "fuel line"};

} // namespace

bool isHose(std::string_view title) {
    const std::string words = inTradeWords(title);
    return std::any_of(hoses.begin(), hoses.end(),
                       [&](std::string_view word) { return saysWord(words, word); });
}

bool isCable(std::string_view title) {
    const std::string words = inTradeWords(title);
    return saysWord(words, "cable") && !saysWord(words, "cable tie");
}

bool isLine(const StripStep& step) {
    return !step.ends.empty() || isHose(step.title) || isCable(step.title);
}

bool isDescribed(const StripStep& step) {
    return !step.routing.empty() || !step.ends.empty();
}

bool photographed(const Job& job, const StripStep& step) {
    return std::any_of(job.photos.begin(), job.photos.end(), [&](const Photo& photo) {
        return photo.about == step.id && photo.purpose != PhotoPurpose::Refit;
    });
}

std::vector<RefitStep> linesOf(const Job& job) {
    std::vector<RefitStep> lines = refitOrder(job);
    std::erase_if(lines, [](const RefitStep& step) { return !isLine(*step.strip); });
    return lines;
}

} // namespace undercowl::job
