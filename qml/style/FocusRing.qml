// Shows where the keyboard is. Drawn outside the control, only when the focus came by keyboard.
//
//   target   the control whose focus is shown
import QtQuick
import QtQuick.Templates as T

Rectangle {
    id: root

    required property T.Control target

    anchors.fill: parent
    anchors.margins: -Theme.ring - Theme.hairline
    border.color: Theme.ink
    border.width: Theme.ring
    color: "transparent"
    radius: Theme.corner + Theme.ring
    visible: target.visualFocus
}
