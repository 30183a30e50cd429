// One finding: how serious, what, what to do, its first photo, and what can be done with it.
// Qt 6.4 knows no members of a url, a map or a list:
// qmllint disable type
import QtQuick
import Undercowl.Style

Panel {
    id: root

    required property string lineId
    required title
    required property string detail
    required property string mark
    required property url picture
    property bool settledAlready: false

    signal chosen(id: string)
    signal photo(id: string)
    signal settled(id: string)

    tone: mark === "unsafe" && !settledAlready ? Theme.stop : "transparent"

    SeverityMark {
        severity: root.mark
    }

    Label {
        text: root.detail
        tone: Theme.quiet
        visible: text !== ""
        width: parent.width
    }

    PhotoFrame {
        description: root.title
        enlarges: true
        ground: Theme.panel
        height: width * 9 / 16
        source: root.picture
        visible: root.picture.toString() !== ""
        width: parent.width
    }

    Row {
        id: actions

        readonly property real cell: (width - 2 * spacing) / 3

        spacing: Theme.targetGap
        width: parent.width

        ActionButton {
            text: qsTr("Correct")
            width: actions.cell

            onTriggered: root.chosen(root.lineId)
        }

        ActionButton {
            text: qsTr("Photo")
            visible: !root.settledAlready
            width: actions.cell

            onTriggered: root.photo(root.lineId)
        }

        ActionButton {
            text: qsTr("Settle")
            visible: !root.settledAlready
            width: actions.cell

            onTriggered: root.settled(root.lineId)
        }
    }
}
