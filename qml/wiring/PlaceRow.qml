// One place in the map: its number, the wire drawn small with its code, words and details.
// Qt 6.4 cannot defer an item that has an id, knows no members of a url, a map or a list:
// qmllint disable deferred-property-id type
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
    required property bool on

    readonly property var codes: mark.split("/")

    signal chosen(place: string)

    Accessible.name: [aside, title, detail, more, on ? qsTr("refitted") : ""].filter(word => word !== "").join(", ")
    implicitHeight: words.implicitHeight + 2 * Theme.margin
    padding: Theme.margin
    text: aside

    background: Rectangle {
        border.color: root.more !== "" ? Theme.caution : Theme.line
        border.width: root.more !== "" ? Theme.stroke : Theme.mode === "night" ? 0 : Theme.hairline
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
            height: Math.max(number.implicitHeight, wire.implicitHeight)
            width: parent.width

            Label {
                id: number

                anchors.verticalCenter: parent.verticalCenter
                strong: true
                text: root.aside
            }

            WireChip {
                id: wire

                anchors.right: parent.right
                anchors.verticalCenter: parent.verticalCenter
                base: root.codes[0]
                tracer: root.codes.length > 1 ? root.codes[1] : ""
                visible: root.mark !== ""
            }
        }

        Label {
            text: [root.title, root.detail].filter(word => word !== "").join(", ")
            tone: root.mark === "" ? Theme.quiet : Theme.ink
            width: parent.width
        }

        Label {
            kind: Label.Aside
            text: root.more
            tone: Theme.caution
            visible: text !== ""
            width: parent.width
        }
    }

    onTriggered: root.chosen(lineId)
}
