// Everything as spreadsheets: one for each kind of thing, a row for each, a head with the columns' names.
#pragma once

#include "core/job/model.h"

#include <string>
#include <utility>
#include <vector>

namespace undercowl::job {

struct SheetJob {
    Job job;
    Machine machine;
    Owner owner;
};

// File name and text (core/job/csv.h): machines.csv, findings.csv, tasks.csv, steps.csv, wires.csv,
// parts.csv, readings.csv, memos.csv, rechecks.csv. The columns of machines.csv and parts.csv are those that
// core/journal/sheet.h brings in again.
[[nodiscard]] std::vector<std::pair<std::string, std::string>> sheets(const std::vector<SheetJob>& jobs);

} // namespace undercowl::job
