// Why a photo cannot be read, or no wire in it.
#include "qml/language/sentences.h"

#include <QtGlobal>

#include <array>

namespace undercowl::ui {

namespace {

constexpr std::array all{
    QT_TRANSLATE_NOOP("Core", "the photo has %1 x %2 pixels, more than 120 megapixels: save it smaller"),
    QT_TRANSLATE_NOOP("Core", "this is neither a JPEG nor a PNG: choose a photo"),
    QT_TRANSLATE_NOOP("Core", "there is no such file: check the name"),
    QT_TRANSLATE_NOOP("Core", "the file is larger than 300 MB: save it smaller"),
    QT_TRANSLATE_NOOP("Core", "the file may not be read: check its permissions"),
    QT_TRANSLATE_NOOP("Core", "the JPEG is damaged or cut short (%1): take or copy the photo again"),
    QT_TRANSLATE_NOOP("Core", "the PNG is damaged or cut short (%1): take or copy the photo again"),
    QT_TRANSLATE_NOOP("Core", "a progressive JPEG this large would not fit into memory: save it smaller, or "
                              "as a baseline JPEG"),
    QT_TRANSLATE_NOOP("Core", "the JPEG decoder could not be started"),
    QT_TRANSLATE_NOOP("Core", "the tap lies outside the photo: tap on the photo"),
    QT_TRANSLATE_NOOP("Core", "the stroke leaves the photo: keep it inside"),
    QT_TRANSLATE_NOOP("Core", "the stroke needs two different points: draw it across the wires"),
    QT_TRANSLATE_NOOP("Core", "the mouth of the connector leaves the photo: keep it inside"),
    QT_TRANSLATE_NOOP("Core",
                      "the mouth of the connector needs two different points: draw it across the wires"),
    QT_TRANSLATE_NOOP("Core", "backup: cannot be written: %1"),
};

} // namespace

Sentences photoSentences() {
    return all;
}

} // namespace undercowl::ui
