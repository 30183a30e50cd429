// Several pictures of one view, taken by one touch, of which the sharpest is kept.
#pragma once

#include <QString>
#include <QStringList>

namespace undercowl::ui {

// The file of a further picture of the burst whose first picture is 'first'; number 2 and up.
[[nodiscard]] QString burstName(const QString& first, int number);

// The first picture's file of the burst that the file belongs to; the file itself where it is the first.
[[nodiscard]] QString burstOf(const QString& file);

// The sharpest of the whole pictures among the files; the earlier where two are alike. Empty where none can
// be read to its end. Decodes them all: not for the touch thread.
[[nodiscard]] QString sharpestOf(const QStringList& files);

} // namespace undercowl::ui
