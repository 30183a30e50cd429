// The glass itself: what happens to touches before a screen sees them. Water, a palm and the touch that wakes
// a dim screen reach no control.
#pragma once

#include <QElapsedTimer>
#include <QEventPoint>
#include <QObject>
#include <QPointF>
#include <QPointer>
#include <QQuickItem>
#include <QQuickWindow>
#include <QTimer>
#include <QtQml/qqmlregistration.h>

#include <vector>

namespace undercowl::ui {

// Touches that no thumb makes: three or more points at once, or one with a contact longer than palmLength. A
// gloved thumb laid flat leaves some 20 mm, the edge of a hand 30 and more: common practice, no source.
// Points that were lifted do not count.
constexpr qreal palmLength = 28 * 6.4; // dp: 28 mm; see Theme.qml for the 6.4
[[nodiscard]] bool isPalm(const QList<QEventPoint>& points);
[[nodiscard]] bool isPalmContact(QSizeF contact); // dp

// window     whose touches pass through here; one at a time
// locked     touches and keys reach nothing but what was let through: what is shown stays readable. Voice
// goes on. dimAfter   minutes without a touch, a key or stir() until 'dimmed'; 0: never dimmed     the next
// touch or key wakes, and does nothing else strayed()  while locked, something was touched that is not let
// through
//
// A palm ends what the fingers before it began, and counts for nothing until all are lifted.
class Glass : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_SINGLETON
    Q_PROPERTY(QQuickWindow* window READ window WRITE setWindow NOTIFY windowChanged)
    Q_PROPERTY(bool locked READ locked WRITE setLocked NOTIFY lockedChanged)
    Q_PROPERTY(double dimAfter READ dimAfter WRITE setDimAfter NOTIFY dimAfterChanged)
    Q_PROPERTY(bool dimmed READ dimmed NOTIFY dimmedChanged)

public:
    explicit Glass(QObject* parent = nullptr);

    [[nodiscard]] QQuickWindow* window() const { return window_; }
    void setWindow(QQuickWindow* window);
    [[nodiscard]] bool locked() const { return locked_; }
    void setLocked(bool locked);
    [[nodiscard]] double dimAfter() const { return dimAfter_; }
    void setDimAfter(double minutes);
    [[nodiscard]] bool dimmed() const { return dimmed_; }

    // The item can be touched, and worked by keyboard, while locked.
    Q_INVOKABLE void letThrough(QQuickItem* item);
    // Whether an action of this item counts. Not while locked, unless it is let through; nor within 'guard'
    // ms of the last action of the same item, or of one that was touched at the same place: a trembling
    // thumb, or a second tap that meets the page which the first one opened. guard 0: keys that are typed
    // fast.
    Q_INVOKABLE bool takes(QQuickItem* item, int guard);
    // Somebody works here without touching: by voice.
    Q_INVOKABLE void stir();

signals:
    void windowChanged();
    void lockedChanged();
    void dimAfterChanged();
    void dimmedChanged();
    void strayed();

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    [[nodiscard]] bool touched(QTouchEvent& event);
    [[nodiscard]] bool clicked(QMouseEvent& event);
    [[nodiscard]] bool keyed(QKeyEvent& event);
    [[nodiscard]] bool opens(QPointF at) const; // something let through is there
    [[nodiscard]] std::vector<QQuickItem*> letThroughNow() const;
    void moveFocus(bool back);
    void cancel(const QTouchEvent& event);
    bool wake();

    QPointer<QQuickWindow> window_;
    std::vector<QPointer<QQuickItem>> through_;
    QTimer patience_;
    double dimAfter_{};
    bool locked_{};
    bool dimmed_{};
    bool swallowing_{};   // until all fingers are lifted
    bool cancelling_{};   // the event under way is one of ours
    bool mouseSwallow_{}; // until the button is let go
    bool byPointer_{};
    QPointF pressedAt_;
    const QQuickItem* lastItem_{}; // compared only
    QPointF lastAt_;
    bool lastByPointer_{};
    QElapsedTimer sinceLast_;
};

} // namespace undercowl::ui
