// One of several answers; the chosen one is filled and ticked.
//
//   chosen   this is the answer
//   lift     sized for gloved thumbs, as a key
// Qt 6.4 cannot defer an item that has an id:
// qmllint disable deferred-property-id
import QtQuick
import Undercowl.Style

Pressable {
    id: root

    property bool chosen: false
    property bool lift: false

    Accessible.checkable: true
    Accessible.checked: chosen
    Accessible.role: Accessible.RadioButton
    implicitHeight: Math.max(lift ? Theme.liftKey : Theme.touch, implicitContentHeight + topPadding + bottomPadding)
    leftPadding: Theme.grid * 3
    rightPadding: Theme.grid * 3
    tapGuard: 0

    background: Rectangle {
        border.color: root.chosen ? Theme.act : Theme.line
        border.width: Theme.hairline
        color: root.chosen ? Theme.act : root.down ? Theme.pressed : Theme.raised
        radius: Theme.corner

        FocusRing {
            target: root
        }
    }
    contentItem: Item {
        implicitHeight: Math.max(words.implicitHeight, tick.visible ? tick.height : 0)
        implicitWidth: words.implicitWidth + (tick.visible ? tick.width + Theme.grid : 0)

        Icon {
            id: tick

            anchors.verticalCenter: parent.verticalCenter
            color: Theme.actInk
            height: width
            name: "done"
            visible: root.chosen
            width: Theme.smallIcon
            x: (parent.width - words.paintedWidth - width - Theme.grid) / 2
        }

        Label {
            id: words

            readonly property real shift: tick.visible ? tick.width + Theme.grid : 0

            anchors.verticalCenter: parent.verticalCenter
            horizontalAlignment: Text.AlignHCenter
            strong: root.chosen
            text: root.text
            tone: root.chosen ? Theme.actInk : Theme.ink
            width: parent.width - shift
            x: shift
        }
    }
}
