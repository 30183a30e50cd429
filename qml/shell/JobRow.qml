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
    property bool open: false // its job is the one beside the list
    property bool done: false // handed over: no photo is taken of it by mistake

    signal chosen(id: string)
    signal photo(id: string)

    Accessible.name: title + ", " + detail + ", " + more
    implicitHeight: words.implicitHeight + 2 * Theme.margin
    padding: Theme.margin
    text: title

    background: Rectangle {
        border.color: root.open ? Theme.act : root.mark === "unsafe" ? Theme.stop : Theme.line
        border.width: root.open ? Theme.stroke * 2 : root.mark === "unsafe" ? Theme.stroke : Theme.mode === "night" ? 0 : Theme.hairline
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
            height: Math.max(name.implicitHeight, shutter.visible ? shutter.height : 0)
            width: parent.width

            Label {
                id: name

                anchors.left: parent.left
                anchors.right: shutter.visible ? shutter.left : parent.right
                anchors.rightMargin: shutter.visible ? Theme.targetGap : 0
                anchors.verticalCenter: parent.verticalCenter
                kind: Label.Title
                text: root.title
            }

            IconButton {
                id: shutter

                anchors.right: parent.right
                filled: true
                height: width
                iconName: "camera"
                text: qsTr("Photo of %1").arg(root.title)
                visible: !root.done
                width: Theme.touch + Theme.grid * 3

                onTriggered: root.photo(root.lineId)
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

        Item {
            height: Math.max(time.implicitHeight, unsafe.height)
            width: parent.width

            Loader {
                id: unsafe

                active: root.mark === "unsafe"

                sourceComponent: SeverityMark {
                    severity: "unsafe"
                }
            }

            Label {
                id: time

                anchors.right: parent.right
                anchors.verticalCenter: parent.verticalCenter
                horizontalAlignment: Text.AlignRight
                kind: Label.Aside
                text: root.aside
                tone: Theme.quiet
                width: Math.min(implicitWidth, parent.width - unsafe.width - Theme.grid * 2)
            }
        }
    }

    onTriggered: root.chosen(lineId)
}
