// What is looked at: every page of the app, some in more than one state, by a name of its own.
#pragma once

#include "shop.h"

#include <QPointF>
#include <QString>
#include <QStringList>
#include <QVariantMap>

#include <optional>
#include <vector>

namespace undercowl::looks {

enum class Shop {
    Demo,
    Empty,    // nobody has named himself, no machine
    NoMachine // a mechanic, no machine
};

// What the device's camera can do.
enum class Camera {
    Plain,
    Able,    // torch, zoom; and the level tells
    Unclear, // the same, and a lens that is out of focus
    None
};

// Before the words of a button that is touched where there is one: not every window needs it.
constexpr QChar optionalTouch = u'?';

struct Page {
    QString name;             // "read-back-wrong"
    QString page;             // "ReadBackPage"; empty: the home screen
    QVariantMap properties{}; // handed to it
    QStringList
        touches{}; // the words of buttons that are touched then, one after the other; see optionalTouch
    Shop shop{};
    QString typed{};                 // then, into the field that is being edited
    bool stroked{};                  // the demo's stroke is drawn across its photo and read
    std::optional<QPointF> tapped{}; // then this place of the photo is tapped, parts of it
    QString said{};                  // then this is said into the microphone
    Camera camera{};
};

// Whether gloved hands work on it: photos, memos, strip and refit steps, reading back, measuring.
[[nodiscard]] bool isAtTheLift(const Page& page);

[[nodiscard]] std::vector<Page> allPages(const MadeShop& shop);

// Pages of the gallery of controls.
[[nodiscard]] QStringList galleryPages();

} // namespace undercowl::looks
