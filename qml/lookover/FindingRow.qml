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
    required property string more
    readonly property bool canRefuse: mark === "unsafe" && !settledAlready && more === ""
    property bool settledAlready: false

    signal chosen(id: string)
    signal memo(id: string)
    signal photo(id: string)
    signal refused(id: string)
    signal reopened(id: string)
    signal settled(id: string)
    signal taskMade(id: string)

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

    Label {
        strong: true
        text: root.more
        tone: Theme.caution
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
            text: qsTr("Not settled yet")
            visible: root.settledAlready
            width: parent.width - actions.cell - parent.spacing

            onTriggered: root.reopened(root.lineId)
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

    ActionButton {
        text: qsTr("Memo")
        visible: !root.settledAlready
        width: parent.width

        onTriggered: root.memo(root.lineId)
    }

    Column {
        spacing: Theme.targetGap
        visible: !root.settledAlready
        width: parent.width

        ActionButton {
            text: qsTr("Make it a task")
            width: parent.width

            onTriggered: root.taskMade(root.lineId)
        }

        ActionButton {
            text: qsTr("Owner says no")
            visible: root.canRefuse
            width: parent.width

            onTriggered: root.refused(root.lineId)
        }
    }
}
