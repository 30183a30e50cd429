// What the shop knows of a model: learned from its jobs, merged with what others learned, without owners.
#pragma once

#include "core/job/model.h"

#include <set>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace undercowl::job {

enum class FactKind : std::uint8_t { Limit, Torque, Part, Map, Adjustment, Finding, Minutes };

// One thing that was seen. Two facts that agree in all but 'seen' are one.
struct Fact {
    FactKind kind{};
    std::string what; // "front tyre, cold"; "stop switch connector"; "brake shoes"
    // "1.8 bar to 2.1 bar"; "loom 1 GN/WH stop lamp; loom 2 BK"; "KX-4410: does not fit (pivot too small)"
    std::string says;
    std::string source; // of a limit: "manual, page 7-12"; empty if the job gave none
    std::set<Id> seen;  // jobs that it held in

    friend bool operator==(const Fact&, const Fact&) = default;
};

// Make and model as typed; capitals and spaces at the ends do not tell models apart.
struct ModelKnowledge {
    std::string make;
    std::string model;
    std::optional<int> firstYear; // as far as seen
    std::optional<int> lastYear;
    std::vector<Fact> facts; // in order of kind, what, says, source; each once

    friend bool operator==(const ModelKnowledge&, const ModelKnowledge&) = default;
};

[[nodiscard]] bool sameModel(std::string_view makeA, std::string_view modelA, std::string_view makeB,
                             std::string_view modelB);

// What one job teaches of its machine's model. Nothing of the owner: a fact in whose words the owner's name,
// phone, mail or address occurs is left out, and so is the frame number's.
[[nodiscard]] ModelKnowledge learn(const Job& job, const Machine& machine, const Owner& owner, TimeMs now);

// The union. Precondition: the same model. Commutative, associative, idempotent: the same set of jobs gives
// the same knowledge, in whatever order and however often it is merged. (The spelling of make and model that
// sorts first is kept.)
[[nodiscard]] ModelKnowledge merged(const ModelKnowledge& a, const ModelKnowledge& b);

// Facts about the same thing that cannot both hold: limits, torques, maps, adjustments that differ, and a
// part number that fitted once and did not fit once. Each group is to be shown side by side; the one that
// held most often first. Pointers into 'known'.
[[nodiscard]] std::vector<std::vector<const Fact*>> contradictions(const ModelKnowledge& known);

[[nodiscard]] std::string_view code(FactKind kind); // "limit", "torque", "part", "map", "adjustment", ...
[[nodiscard]] std::optional<FactKind> factKindFromCode(std::string_view text);

} // namespace undercowl::job
