// Wires that look alike, named before they are unplugged, with a tag for each.
// Qt 6.4 cannot bind a delegate to the ids around it:
// qmllint disable unqualified
import QtQuick
import Undercowl
import Undercowl.Style

Panel {
    id: root

    required property GatheringView view

    title: qsTr("Twins")
    tone: Theme.caution

    Repeater {
        model: root.view.twins

        Column {
            id: group

            required property string lineId
            required property string title
            required property bool on

            spacing: Theme.grid * 2
            width: parent?.width ?? 0

            Label {
                text: group.title
                width: parent.width
            }

            ActionButton {
                iconName: "tag"
                lift: true
                text: qsTr("Tag them")
                visible: !group.on
                width: parent.width

                onTriggered: root.view.tagTwins(group.lineId)
            }
        }
    }

    Repeater {
        model: root.view.tags

        TextEntry {
            required property string lineId
            required property string title
            required property string detail

            label: qsTr("Tag on %1").arg(title)
            placeholder: qsTr("A")
            value: detail
            width: parent?.width ?? 0

            onAccepted: text => root.view.tag(lineId, text)
        }
    }
}
