// Words of the records and lists that are printed, in the language of the screen.
#pragma once

#include "core/handover/record.h"

#include <string>

namespace undercowl::ui {

// The record's own phrases are apart from the messages that a job has for its mechanic.
[[nodiscard]] std::string recordWords(const handover::Text& said);

} // namespace undercowl::ui
