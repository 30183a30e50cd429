// What is known of a model as an open file, for other shops, and as entries of this shop's stream.
#pragma once

#include "core/job/knowledge.h"
#include "core/journal/body.h"
#include "core/journal/entry.h"

#include <tl/expected.hpp>

#include <functional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace undercowl::journal {

// JSON, described in docs/knowledge.md. Nothing of any owner: see job::learn.
[[nodiscard]] std::string knowledgeFile(const job::ModelKnowledge& known);
// The error names the field and the remedy.
[[nodiscard]] tl::expected<job::ModelKnowledge, std::string> readKnowledgeFile(std::string_view json);

// Learned from a file: as many entries as it takes to keep each within what an entry may hold. 'newId' gives
// each its subject.
[[nodiscard]] std::vector<Draft> knowledgeLearned(const job::ModelKnowledge& known,
                                                  const std::function<Id()>& newId);
// Throws ShapeError (see body.h).
[[nodiscard]] job::ModelKnowledge readKnowledge(const Fields& body);

// What the shop's stream says of the model, merged. Entries whose body does not fit are passed over.
[[nodiscard]] job::ModelKnowledge learnedOf(std::span<const Entry> shop, std::string_view make,
                                            std::string_view model);

// What a job keeps of where a fact came from, in the mechanic's language.
struct TakenWords {
    std::string kind;     // of the fact: "torque"
    std::string held;     // "held in jobs: 2"
    std::string lookHere; // for a finding: "typical of this model, look whether it is so here"
    std::string record;   // for a map's source: "this shop's record"
};

// The job takes the fact over, after a touch: a part to be wanted, a finding to be looked for, a task with
// its minutes, the map of a connector as it should be; anything else as a memo. Each says where it came from
// and how often it held.
[[nodiscard]] std::vector<Draft> takenOver(const job::Job& job, const job::Fact& fact,
                                           const TakenWords& words, const std::function<Id()>& newId);

} // namespace undercowl::journal
