// Contrast by the formula of WCAG 2.1, 'contrast ratio' and 'relative luminance' (written from memory),
// between the colour that words are given and what they stand on in the picture of the window.
#include "walk.h"

#include <QColor>
#include <QImage>
#include <QQuickItem>

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <unordered_map>

namespace undercowl::looks {
namespace {

constexpr int sameColour = 24; // of 255: thin strokes are never drawn in all of their colour

double linear(double part) {
    return part <= 0.04045 ? part / 12.92 : std::pow((part + 0.055) / 1.055, 2.4);
}

double luminance(const QColor& colour) {
    return 0.2126 * linear(colour.redF()) + 0.7152 * linear(colour.greenF()) +
           0.0722 * linear(colour.blueF());
}

double contrast(const QColor& one, const QColor& other) {
    const double a = luminance(one);
    const double b = luminance(other);
    return (std::max(a, b) + 0.05) / (std::min(a, b) + 0.05);
}

int apart(QRgb one, const QColor& other) {
    return std::max({std::abs(qRed(one) - other.red()), std::abs(qGreen(one) - other.green()),
                     std::abs(qBlue(one) - other.blue())});
}

// The commonest colour there: letters cover less of their place than what they stand on.
QColor groundOf(const QImage& picture, const QRect& place, const QColor& ink) {
    std::unordered_map<QRgb, int> times;
    for (int y = place.top(); y <= place.bottom(); ++y)
        for (int x = place.left(); x <= place.right(); ++x)
            ++times[picture.pixel(x, y)];
    const auto most = [&times] {
        return std::ranges::max_element(times, {}, [](const auto& each) { return each.second; });
    };
    if (most()->first == ink.rgb()) // bold letters in a tight place
        std::erase_if(times, [&ink](const auto& each) { return apart(each.first, ink) <= sameColour; });
    return times.empty() ? ink : QColor::fromRgb(most()->first);
}

// Whether anything of that colour is drawn there. Not of words that a sheet or a line lies on.
bool isDrawn(const QImage& picture, const QRect& place, const QColor& ink) {
    for (int y = place.top(); y <= place.bottom(); ++y)
        for (int x = place.left(); x <= place.right(); ++x)
            if (apart(picture.pixel(x, y), ink) <= sameColour)
                return true;
    return false;
}

QColor mixed(const QColor& over, const QColor& under, double share) {
    const auto part = [share](float top, float below) {
        return static_cast<float>(share * top + (1 - share) * below);
    };
    return QColor::fromRgbF(part(over.redF(), under.redF()), part(over.greenF(), under.greenF()),
                            part(over.blueF(), under.blueF()));
}

class Gaze {
public:
    Gaze(QQuickWindow& window, double least) : picture_(window.grabWindow()), least_(least) {
        look(*window.contentItem(), QRectF(picture_.rect()), 1);
    }

    QStringList faults;

private:
    void look(const QQuickItem& item, QRectF seen, double opacity) {
        opacity *= item.opacity();
        if (!item.isVisible() || opacity < 0.05)
            return;
        const QRectF rect = item.mapRectToScene(QRectF(0, 0, item.width(), item.height()));
        if (item.clip())
            seen = seen.intersected(rect);
        if (item.inherits("QQuickPopupItem"))
            faults.clear(); // what lies under a sheet is in its shade on purpose
        if (item.inherits("QQuickText") || item.inherits("QQuickTextInput") ||
            item.inherits("QQuickTextEdit"))
            lookAtWords(item, rect.intersected(seen).toAlignedRect().intersected(picture_.rect()), opacity);
        for (const QQuickItem* child : item.childItems())
            look(*child, seen, opacity);
    }

    void lookAtWords(const QQuickItem& item, const QRect& place, double opacity) {
        const QString words = item.property("text").toString();
        if (words.isEmpty() || place.isEmpty())
            return;
        const auto colour = item.property("color").value<QColor>();
        const QColor ground = groundOf(picture_, place, colour);
        const QColor ink = mixed(colour, ground, opacity * colour.alphaF());
        const double ratio = contrast(ink, ground);
        if (ratio < least_ && isDrawn(picture_, place, ink))
            faults += QStringLiteral("contrast %1, %2 on %3: \"%4\"")
                          .arg(ratio, 0, 'f', 1)
                          .arg(colour.name(), ground.name(), words);
    }

    QImage picture_;
    double least_;
};

} // namespace

QStringList palenessOf(QQuickWindow& window, qreal least) {
    QStringList faults = Gaze(window, least).faults;
    faults.removeDuplicates();
    return faults;
}

} // namespace undercowl::looks
