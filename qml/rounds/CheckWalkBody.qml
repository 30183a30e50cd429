// One check at a time, large enough to be read from beside the machine; when all have their answer, the list of them.
//
//   walk        what is gone through
//   doneText    what is said when nothing is open
//   settle      which check is on the screen: for what answers it
//   chosen      a line of the list was touched: the walk goes to it
// Qt 6.4 knows no members of a list, cannot bind a delegate to the ids around it:
// qmllint disable type unqualified
import QtQuick
import Undercowl
import Undercowl.Style

Column {
    id: root

    required property CheckWalk walk
    property string doneText: ""
    readonly property Settle settle: Settle {
        about: [root.walk.current, root.walk.check].join()
    }

    spacing: Theme.grid * 4

    Label {
        text: root.walk.group
        tone: Theme.quiet
        visible: text !== ""
        width: parent.width
    }

    Label {
        font.pixelSize: Theme.nameSize
        strong: true
        text: root.walk.check
        visible: text !== ""
        width: parent.width
    }

    Label {
        text: qsTr("Answered: %1").arg(root.walk.answered)
        tone: Theme.quiet
        visible: root.walk.answered !== ""
        width: parent.width
    }

    Row {
        id: ways

        readonly property real half: (width - spacing) / 2

        spacing: Theme.targetGap
        visible: !root.walk.finished
        width: parent.width

        ActionButton {
            enabled: root.walk.current > 0
            text: qsTr("Previous")
            width: ways.half

            onTriggered: root.walk.back()
        }

        ActionButton {
            text: qsTr("All of them")
            width: ways.half

            onTriggered: root.walk.goTo(-1)
        }
    }

    Label {
        strong: true
        text: root.walk.open > 0 ? qsTr("%n to go", "checks", root.walk.open) : root.doneText
        visible: root.walk.finished && root.walk.count > 0
        width: parent.width
    }

    Repeater {
        model: root.walk.finished ? root.walk.lines : null

        ListRow {
            id: row

            required title
            required property string lineId
            required property string detail
            required property string mark
            required property bool on
            required property string more

            aside: [row.detail, row.more].filter(word => word !== "").join(" · ")
            done: on && mark !== "found" && mark !== "does not" && mark !== "not done" && mark !== "not tried"
            iconName: mark === "found" || mark === "does not" ? "caution" : mark === "" ? "step" : "minus"
            opens: false
            width: parent?.width ?? 0

            onTriggered: root.walk.goTo(Number(row.lineId))
        }
    }
}
