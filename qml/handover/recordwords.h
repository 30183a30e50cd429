// Words of the records and lists that are printed, in the language of the screen or of the owner.
#pragma once

#include "core/handover/record.h"

#include <QString>

#include <string>

namespace undercowl::ui {

// The record's own phrases are apart from the messages that a job has for its mechanic.
[[nodiscard]] std::string recordWords(const handover::Text& said);

// The same in the language of whoever gets the record (a code); may be called on any thread.
[[nodiscard]] handover::Words recordWordsIn(const QString& language);

} // namespace undercowl::ui
