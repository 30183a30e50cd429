// Shows where the keyboard is. Drawn outside the control, only when the focus came by keyboard.
//
//   target   the control whose focus is shown
import QtQuick
import QtQuick.Templates as T

Loader {
    id: root

    required property T.Control target

    active: target.visualFocus // every control has one, and one at most is seen
    anchors.fill: parent
    anchors.margins: -Theme.ring - Theme.hairline
    visible: active

    sourceComponent: Rectangle {
        border.color: Theme.ink
        border.width: Theme.ring
        color: "transparent"
        radius: Theme.corner + Theme.ring
    }
}
