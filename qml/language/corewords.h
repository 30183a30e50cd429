// What the core says, in the language of the screen. The core speaks English; its sentence is the key, in
// context "Core" of the translations.
#pragma once

#include "qml/language/catalogue.h"

#include <QString>

#include <string_view>

namespace undercowl::ui {

// A sentence that the core wrote. One that holds values was made from a pattern of sentences.h: the values,
// which may be such sentences themselves, are put into the translated pattern. Decimal marks become those of
// the language. What is not known stays as it is.
[[nodiscard]] QString coreWords(std::string_view english, const Catalogue& in = *Catalogue::shown());

// The same for what the core wrote or somebody typed: it is translated only where all of it is known, so that
// nothing that was typed is altered.
[[nodiscard]] QString knownWords(std::string_view text, const Catalogue& in = *Catalogue::shown());

// "2.4 N.m" with the decimal mark of the language; anything else as it is.
[[nodiscard]] QString localNumber(const QString& text, const Catalogue& in = *Catalogue::shown());

} // namespace undercowl::ui
