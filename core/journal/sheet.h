// Machines and parts from a spreadsheet: what each line would do and what is wrong with it, before anything
// is said.
#pragma once

#include "core/journal/entry.h"

#include <tl/expected.hpp>

#include <functional>
#include <string>
#include <string_view>
#include <vector>

namespace undercowl::journal {

// A job of this shop, as far as a spreadsheet can name it.
struct KnownJob {
    Id id;
    std::string number;
    std::string frameNumber;
};

struct SheetLine {
    std::size_t line{};                // in the file, 1 is its head
    std::string says;                  // "opens 2026-033: Marrowin Tern 125, 1987"; "passed over: ..."
    std::vector<std::string> problems; // each names its column and the remedy; then nothing is done
    std::vector<Draft> drafts;         // empty when it is passed over
};

struct SheetPlan {
    bool parts{};                     // else machines
    std::vector<std::string> unknown; // columns that are not brought in
    std::vector<SheetLine> lines;

    [[nodiscard]] std::vector<Draft> drafts() const; // of the lines without problems, in order
};

// Tells a sheet of parts ("part") from one of machines ("make" or "model") by its head; letter case and order
// of the columns do not matter. The columns are those of machines.csv and parts.csv (core/handover/sheets.h).
// A machine opens a job, unless one with its frame number or number is here already. A part goes into the job
// of its number, unless that has one of the same name and number. Cells that are not UTF-8, or longer than
// 4000 bytes, are problems of their line. Refused as a whole: a file that is no spreadsheet, or neither of
// the two. 'nextNumber' gives a job's number where the line has none.
[[nodiscard]] tl::expected<SheetPlan, std::string>
planSheet(std::string_view text, const std::vector<KnownJob>& known,
          const std::function<std::vector<job::Part>(const Id& job)>& partsOf,
          const std::function<Id()>& newId, const std::function<std::string()>& nextNumber);

} // namespace undercowl::journal
