// What comes from outside, read by the code that ships. Each target takes any bytes and may refuse them, but
// must neither crash nor read past its limits; where an answer has a property that can be checked, it is (a
// broken one ends the program).
#pragma once

#include <cstddef>
#include <span>
#include <string_view>

namespace undercowl::fuzz {

struct Target {
    std::string_view name; // also of its folder in tests/fuzz/corpus
    void (*run)(std::span<const std::byte> input);
};

[[nodiscard]] std::span<const Target> targets();

} // namespace undercowl::fuzz
