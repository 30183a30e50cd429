// One list of everything to order, over all jobs, by supplier: as text, spreadsheet and document.
#pragma once

#include "core/handover/record.h"

#include <span>
#include <string>
#include <vector>

namespace undercowl::handover {

struct WantedPart {
    std::string jobNumber;
    std::string machine; // "Marrowin Tern 125, 1987"
    std::string forWhat; // the finding or step that it is for; may be empty
    job::Part part;
};

// What is wanted or asked for and not ordered yet.
[[nodiscard]] std::vector<WantedPart> toOrder(const job::Job& job, const job::Machine& machine);

struct OrderGroup {
    std::string supplier; // as first typed; empty: nobody chose one yet
    std::vector<WantedPart> parts;
    std::vector<job::TypedValue> sums; // one for each currency
    int withoutPrice{};
};

// By supplier, letter case and blanks around the name aside, in the order of the alphabet; those without one
// come last.
[[nodiscard]] std::vector<OrderGroup> bySupplier(std::span<const WantedPart> parts);

// A letter's worth of lines: names, numbers, other makers' numbers, for which machine. English as typed.
[[nodiscard]] std::string orderText(std::span<const OrderGroup> groups, const Words& words);
// One row for each part, with a head; core/job/csv.h.
[[nodiscard]] std::string orderCsv(std::span<const OrderGroup> groups);
[[nodiscard]] Document orderDocument(std::span<const OrderGroup> groups, const std::string& day);

} // namespace undercowl::handover
