// A job of an invented machine with something of everything that the owner's record speaks of.
#pragma once

#include "core/handover/record.h"

#include <string>
#include <vector>

namespace undercowl::handover::sample {

[[nodiscard]] job::Job job();
[[nodiscard]] job::Machine machine();
[[nodiscard]] job::Owner owner();
[[nodiscard]] std::vector<job::Mechanic> mechanics();

[[nodiscard]] wiring::PlaceAnswer wire(colour::Insulation base,
                                       std::optional<colour::Insulation> tracer = {});

// The record of that job as lines of English: "# section", "a | b | c" for a row, "! text" for a caution.
[[nodiscard]] std::vector<std::string> lines(const job::Job& job);
[[nodiscard]] bool holds(const std::vector<std::string>& lines, const std::string& line);
// Lines of one section, without its title.
[[nodiscard]] std::vector<std::string> section(const std::vector<std::string>& lines,
                                               const std::string& title);

} // namespace undercowl::handover::sample
