// Places as lists name them: "3/1" is the first wire of place 3.
#pragma once

#include "core/wiring/map.h"

#include <QString>
#include <QStringList>

#include <optional>

namespace undercowl::ui {

[[nodiscard]] inline QString idOf(const wiring::PlaceKey& key) {
    return QStringLiteral("%1/%2").arg(key.number).arg(key.slot);
}

[[nodiscard]] inline std::optional<wiring::PlaceKey> keyOf(const QString& id, wiring::Half half) {
    const QStringList parts = id.split(u'/');
    const wiring::PlaceKey key{half, parts.value(0).toInt(), parts.value(1).toInt()};
    return key.number > 0 && (key.slot == 1 || key.slot == 2) ? std::optional(key) : std::nullopt;
}

} // namespace undercowl::ui
