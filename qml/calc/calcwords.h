// Words of the calculations on the screen. The core's English is the source text.
#pragma once

#include "qml/shell/words.h"

#include <QStringList>

#include <string>
#include <vector>

namespace undercowl::ui {

[[nodiscard]] inline QString calcWords(const std::string& english) {
    return coreWords(english);
}

[[nodiscard]] inline QStringList calcWords(const std::vector<std::string>& english) {
    QStringList all;
    for (const std::string& one : english)
        all += calcWords(one);
    return all;
}

} // namespace undercowl::ui
