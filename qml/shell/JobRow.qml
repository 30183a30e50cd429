// One machine in the list of the shop: what it is, where it stopped, what is next.
// Qt 6.4 cannot defer an item that has an id:
// qmllint disable deferred-property-id
import QtQuick
import Undercowl.Style

Pressable {
    id: root

    required property string lineId
    required property string title
    required property string detail
    required property string more
    required property string aside
    required property string mark

    signal chosen(id: string)

    Accessible.name: title + ", " + detail + ", " + more
    implicitHeight: words.implicitHeight + 2 * Theme.margin
    padding: Theme.margin
    text: title

    background: Rectangle {
        border.color: root.mark === "unsafe" ? Theme.stop : Theme.line
        border.width: root.mark === "unsafe" ? Theme.stroke : Theme.mode === "night" ? 0 : Theme.hairline
        color: root.down ? Theme.pressed : Theme.panel
        radius: Theme.corner

        FocusRing {
            target: root
        }
    }
    contentItem: Column {
        id: words

        spacing: Theme.grid

        Item {
            height: Math.max(name.implicitHeight, time.implicitHeight)
            width: parent.width

            Label {
                id: name

                anchors.left: parent.left
                anchors.right: time.left
                anchors.rightMargin: Theme.grid * 2
                kind: Label.Title
                text: root.title
            }

            Label {
                id: time

                anchors.right: parent.right
                kind: Label.Aside
                text: root.aside
                tone: Theme.quiet
            }
        }

        Label {
            text: root.detail
            tone: Theme.quiet
            visible: text !== ""
            width: parent.width
        }

        Label {
            strong: true
            text: root.more
            visible: text !== ""
            width: parent.width
        }

        SeverityMark {
            severity: "unsafe"
            visible: root.mark === "unsafe"
        }
    }

    onTriggered: root.chosen(lineId)
}
