// Words on the screen for what the core hands out as keys and numbers.
#pragma once

#include "core/job/message.h"
#include "core/job/model.h"
#include "core/job/waits.h"
#include "core/store/problem.h"
#include "core/units/date.h"
#include "qml/language/corewords.h"

#include <QString>

#include <optional>
#include <string>
#include <vector>

namespace undercowl::ui {

[[nodiscard]] inline QString text(std::string_view utf8) {
    return QString::fromUtf8(utf8.data(), static_cast<qsizetype>(utf8.size()));
}
[[nodiscard]] std::string utf8(const QString& text); // trimmed

// The message in the language of the screen; its English pattern is the key.
[[nodiscard]] QString words(const job::Message& message);

// %1, %2 ... of the pattern replaced, values of the core's own in the language; one that has no value is left
// out.
[[nodiscard]] QString filled(const QString& pattern, const std::vector<std::string>& values,
                             const Catalogue& in = *Catalogue::shown());

// "12.5" with the decimal mark of the language; what else there is stays as it was typed.
[[nodiscard]] inline QString numberText(const std::string& written) {
    return localNumber(text(written));
}

// What went wrong, with the remedy.
[[nodiscard]] QString words(const store::Problem& problem);

[[nodiscard]] QString words(job::Severity severity); // "unsafe"
[[nodiscard]] QString words(job::PartState state);   // "on order"
[[nodiscard]] QString words(job::Waits waits);       // "The owner's answer": the heading of a group

[[nodiscard]] QString words(job::PhotoPurpose purpose); // "as found"

// "Marrowin Tern 125, 1987"; says so when nothing is known yet.
[[nodiscard]] QString machineName(const job::Machine& machine);

[[nodiscard]] QString minuteWords(int minutes); // "1 h 20 min"
// Whole minutes as typed; nothing for anything else, or for more than two months of them.
[[nodiscard]] std::optional<int> wholeMinutes(const QString& typed);

[[nodiscard]] units::Date dayOf(job::TimeMs at); // local time
// "2 Mar 2027" in the language: with the month in letters, since 02/03 is two days. What is typed is written
// as ISO 8601 has it (units/date.h).
[[nodiscard]] QString dateWords(units::Date day);
// The same for a day that was typed; anything else stays as it is.
[[nodiscard]] QString dateWords(const std::string& typed);
// "14:32" today, "yesterday 14:32", otherwise "4 Nov, 3 weeks ago". Local time.
[[nodiscard]] QString when(job::TimeMs at, job::TimeMs now);

} // namespace undercowl::ui
