// One of several answers; the chosen one is filled and ticked.
//
//   chosen   this is the answer
import QtQuick
import Undercowl.Style

Pressable {
    id: root

    property bool chosen: false

    Accessible.checkable: true
    Accessible.checked: chosen
    Accessible.role: Accessible.RadioButton
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
    contentItem: Row {
        spacing: Theme.grid

        Icon {
            anchors.verticalCenter: parent.verticalCenter
            color: Theme.actInk
            height: width
            name: "done"
            visible: root.chosen
            width: Theme.smallIcon
        }

        Label {
            anchors.verticalCenter: parent.verticalCenter
            strong: root.chosen
            text: root.text
            tone: root.chosen ? Theme.actInk : Theme.ink
        }
    }
}
