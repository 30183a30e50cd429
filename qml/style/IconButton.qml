// A 48 dp button with an icon alone. Its words are read out and shown on hover.
//
//   text       what it does, in words; required for screen readers
//   iconName   an icon of assets/icons
//   tone       the icon's colour
//   filled     on a raised surface instead of bare
import QtQuick
import Undercowl.Style

Pressable {
    id: root

    required property string iconName
    property color tone: Theme.ink
    property bool filled: false

    implicitHeight: Math.max(Theme.touch, Theme.icon + Theme.grid * 4)
    implicitWidth: implicitHeight
    opacity: enabled ? 1 : 0.5

    background: Rectangle {
        border.color: Theme.line
        border.width: root.filled && Theme.mode === "sun" ? Theme.hairline : 0
        color: root.down ? Theme.pressed : root.filled || root.hovered ? Theme.raised : "transparent"
        radius: Theme.corner

        FocusRing {
            target: root
        }

        BusyBar {
            anchors.bottom: parent.bottom
            running: root.busy
            width: parent.width
        }
    }
    contentItem: Item {
        Icon {
            anchors.centerIn: parent
            color: root.tone
            height: width
            name: root.iconName
            width: Theme.icon
        }
    }
}
