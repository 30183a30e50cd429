// What the store's functions return.
#pragma once

#include "core/store/problem.h"

#include <tl/expected.hpp>

#include <string>
#include <utility>

namespace undercowl::store {

template<typename T>
using Result = tl::expected<T, Problem>;

[[nodiscard]] inline tl::unexpected<Problem> failed(Fault fault, std::string message) {
    return tl::unexpected<Problem>(Problem{fault, std::move(message)});
}

} // namespace undercowl::store
