// A button with an icon alone, 48 dp. Its words are read out and shown on hover.
//
//   text       what it does, in words; required for screen readers
//   iconName   an icon of assets/icons
//   tone       the icon's colour
//   filled     on a raised surface instead of bare
//   lift       sized for gloved thumbs; what is drawn is a little smaller than what can be touched, which may end with the glass
import QtQuick
import Undercowl.Style

Pressable {
    id: root

    required property string iconName
    property color tone: Theme.ink
    property bool filled: false
    property bool lift: false

    readonly property int pictogram: lift ? Theme.liftIcon : Theme.icon

    bottomInset: lift ? Theme.grid : 0
    implicitHeight: Math.max(lift ? Theme.liftOther : Theme.touch, pictogram + Theme.grid * 4)
    implicitWidth: Math.max(lift ? Theme.liftWidth : Theme.touch, pictogram + Theme.grid * 4)
    leftInset: bottomInset
    opacity: enabled ? 1 : 0.5
    rightInset: bottomInset
    topInset: bottomInset

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
            width: root.pictogram
        }
    }
}
