// Labels for the bags of a job: what stands on each, and the code by which a scan finds the bag again.
#pragma once

#include "core/job/model.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace undercowl::handover {

// What a scanned code names.
struct BagCode {
    job::Id job;
    std::string bag;

    friend bool operator==(const BagCode&, const BagCode&) = default;
};

// "undercowl:bag/JOB/BAG": letters, digits and hyphens stand for themselves, every other byte as %XX, so that
// any name of a bag goes through any reader.
[[nodiscard]] std::string written(const BagCode& code);
// Nothing for a code of something else, or one that was cut off.
[[nodiscard]] std::optional<BagCode> bagCode(std::string_view text);

struct BagLabel {
    std::string bag;                  // number or name, as the mechanic calls it
    std::string machine;              // "Marrowin Tern 125, 1987"
    std::string jobNumber;            // may be empty
    std::vector<std::string> steps;   // titles of the steps whose hardware lies in it, in order of stripping
    std::vector<std::string> content; // "2 x screw M5 x 16 mm", of all these steps
    bool open{};                      // every step of it is refitted: nothing should be left in it
    std::string code;
};

// One label for each bag, in order of stripping; steps that share a bag share its label.
[[nodiscard]] std::vector<BagLabel> bagLabels(const job::Job& job, const job::Machine& machine);

// The step that a scan of the bag opens: the next one to be refitted of those in it (stripped last),
// otherwise the last. Null when the job has no such bag; letter case and blanks around the name do not
// matter.
[[nodiscard]] const job::StripStep* stepOfBag(const job::Job& job, std::string_view bag);

} // namespace undercowl::handover
