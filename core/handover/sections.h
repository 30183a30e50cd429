// The parts of the owner's record; record.cpp puts them in order. Not for use outside this folder.
#pragma once

#include "core/handover/record.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace undercowl::handover {

struct Subject {
    const job::Job& job;
    const job::Machine& machine;
    const job::Owner& owner;
    const std::vector<job::Mechanic>& mechanics;

    // The name of a mechanic; empty when the id is not among them.
    [[nodiscard]] std::string nameOf(const job::Id& mechanic) const;
};

// Each is left out when there is nothing to say under its title.
using MaybeSection = std::optional<Section>;

[[nodiscard]] Section machineSection(const Subject& subject);
[[nodiscard]] Section heedSection(const Subject& subject);
[[nodiscard]] MaybeSection foundSection(const Subject& subject);
[[nodiscard]] MaybeSection doneSection(const Subject& subject);
[[nodiscard]] MaybeSection wiringSection(const Subject& subject);
[[nodiscard]] MaybeSection linesSection(const Subject& subject); // hoses, vents, cables
[[nodiscard]] MaybeSection measuredSection(const Subject& subject);
[[nodiscard]] MaybeSection partsSection(const Subject& subject);
[[nodiscard]] MaybeSection dueSection(const Subject& subject);
[[nodiscard]] Section leftSection(const Subject& subject);
[[nodiscard]] MaybeSection photosSection(const Subject& subject, std::size_t most);
[[nodiscard]] MaybeSection provedSection(const Subject& subject);
[[nodiscard]] MaybeSection beforeAfterSection(const Subject& subject);
[[nodiscard]] MaybeSection costSection(const Subject& subject);
[[nodiscard]] MaybeSection signedSection(const Subject& subject); // old parts, waste, signature
[[nodiscard]] Section noteSection();

[[nodiscard]] inline Message say(std::string_view key, std::vector<std::string> values = {}) {
    return Message{key, std::move(values)};
}

// "9.3 N.m", with a space that no line is broken at.
[[nodiscard]] std::string written(const job::TypedValue& value);

// "2026-11-25", the day in the time zone of this device.
[[nodiscard]] std::string day(job::TimeMs time);

// Adds the name unless it is empty or already there.
void addOnce(std::vector<std::string>& names, const std::string& name);
[[nodiscard]] std::string joined(const std::vector<std::string>& words, std::string_view between);

} // namespace undercowl::handover
