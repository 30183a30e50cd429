// Lists of checks by kind of machine: open files (docs/rounds.md), changed by the shop with entries of kind
// "round.kept" in its stream, put together for one machine.
#pragma once

#include "core/journal/body.h"
#include "core/journal/entry.h"

#include <tl/expected.hpp>

#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace undercowl::journal {

// What a list is for: looked over one check after the other; tried when the machine comes in; photographed.
enum class RoundUse : std::uint8_t { Round, Functions, Views };

struct RoundGroup {
    std::string name;                // "front brake"
    std::vector<std::string> checks; // "lever: firm, does not creep"

    friend bool operator==(const RoundGroup&, const RoundGroup&) = default;
};

struct RoundList {
    std::string key; // letters, digits, hyphens: "two-stroke"
    std::string title;
    RoundUse use{};
    std::vector<std::string> when; // traits of the machine that must all be there; empty: every machine
    std::vector<RoundGroup> groups;

    friend bool operator==(const RoundList&, const RoundList&) = default;
};

// What a machine may have, in the order in which it is asked: "two-stroke", "four-stroke", "gears", ...
[[nodiscard]] std::span<const std::string_view> traits();

// Reads one file. The error names the field and the remedy.
[[nodiscard]] tl::expected<RoundList, std::string> readRoundFile(std::string_view json);
[[nodiscard]] std::string roundFile(const RoundList& list); // the file's text

// The lists that the program brings along, by key.
[[nodiscard]] const std::vector<RoundList>& builtInRounds();

// The whole list as the shop wants it; the last one of each key holds. Without groups it is not used.
[[nodiscard]] Draft roundKept(const RoundList& list);
// Throws ShapeError (see body.h).
[[nodiscard]] RoundList readRoundList(const Fields& body);

// The built-in lists, changed and added to by the shop's stream, by key. Entries whose body does not fit are
// passed over.
[[nodiscard]] std::vector<RoundList> roundLists(std::span<const Entry> shop);

// All rounds whose traits the machine has, as one: those for every machine first. A check that stands in two
// of them is told apart by its group. 'id' is left empty.
[[nodiscard]] job::Round composed(std::span<const RoundList> lists, std::span<const std::string> has);

// The checks of the list with that use, group by group, without answers.
[[nodiscard]] std::vector<job::RoundCheck> checksOf(std::span<const RoundList> lists, RoundUse use);

[[nodiscard]] std::string_view code(RoundUse use); // "round", "functions", "views"
[[nodiscard]] std::optional<RoundUse> roundUseFromCode(std::string_view text);

} // namespace undercowl::journal
