// A hand on the phone: touches, strokes and types as a person would, only on what can be seen. Whatever
// cannot be done that way fails the test and says what the screen showed.
#pragma once

#include "tests/e2e/eye.h"

#include <QElapsedTimer>
#include <QPointF>
#include <QSize>
#include <QString>

#include <span>

class QPointingDevice;

namespace undercowl::e2e {

constexpr int drafted = 500; // milliseconds: by then what was typed is in the store as a draft

class Hand {
public:
    // Pictures are kept under $UNDERCOWL_SHOTS, if set, with 'look' in their names.
    Hand(QQuickWindow& window, QString look);

    // Waits for something called so, scrolls until it is in view, touches its middle.
    void touch(const QString& name);
    // The same for what the head of the page offers: behind the button for more, where there is no room for
    // it.
    void touchTool(const QString& name);
    // Touches the field and types by keys into what has the focus then.
    void type(const QString& field, const QString& words);
    void press(Qt::Key key);
    // A finger drawn across the photo: points in pixels of the photo, whose size is 'photo'.
    void stroke(const QString& name, QSize photo, std::span<const QPointF> points);

    [[nodiscard]] bool offers(const QString& name) const; // called so and not more
    [[nodiscard]] bool shows(const QString& words) const; // a text that has these words in it
    [[nodiscard]] bool reads(const QString& words) const; // a text that has these words and no others
    void sees(const QString& words) const;                // waits for it
    void seesNot(const QString& words) const;             // waits until it has gone

    // Every text on the screen, once nothing on it changes any more.
    [[nodiscard]] QStringList read() const;

    void picture(const QString& name) const;

private:
    [[nodiscard]] QQuickItem* find(const QString& name, Kind kind) const;
    void bringIntoView(QQuickItem& item, const QString& name) const;
    void drag(std::span<const QPointF> way) const;
    [[nodiscard]] std::string screen() const;

    QQuickWindow& window_;
    QPointingDevice* finger_;
    QString look_;
    mutable int pictures_{};
    const QQuickItem* touched_{}; // last; only to be compared
    QPointF touchedAt_;
    QElapsedTimer sinceTouch_;
};

} // namespace undercowl::e2e
