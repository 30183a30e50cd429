// The words of a page in the language in which it is looked at.
#pragma once

#include <QString>
#include <QStringList>

namespace undercowl::looks {

// What an English text of the screen may read in the language (a code), in any of its places, and the text
// itself last. What is put together by commas or colons is translated part by part.
[[nodiscard]] QStringList spoken(const QString& english, const QString& language);

} // namespace undercowl::looks
