// How much of a page is seen, and where: the mark at its end. Stands in nothing that is scrolled.
//
//   flickable   what scrolls
import QtQuick

Rectangle {
    required property Flickable flickable
    readonly property real shown: flickable.visibleArea.heightRatio

    color: Theme.line
    height: Math.max(Theme.touch, shown * flickable.height)
    opacity: 0.6
    parent: flickable
    radius: width / 2
    visible: shown < 1
    width: Theme.grid
    x: flickable.width - width - Theme.hairline
    y: flickable.visibleArea.yPosition * (flickable.height - height + shown * flickable.height)
}
