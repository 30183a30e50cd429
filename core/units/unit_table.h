// The rows behind unit.h; only unit.cpp reads them.
#pragma once

#include "core/units/unit.h"

#include <deque>

namespace undercowl::units {

[[nodiscard]] std::deque<UnitEntry> makeUnitTable();

} // namespace undercowl::units
