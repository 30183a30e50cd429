// Lines that are shown on demand: the working, the sources.
//
//   title   of the lines
//   lines   what is shown once it is opened
// Qt 6.4 knows no string list as a list of strings, cannot bind a delegate to the ids around it:
// qmllint disable type unqualified
import QtQuick
import Undercowl.Style

Column {
    id: root

    required property string title
    property list<string> lines
    property bool open: false

    spacing: Theme.grid * 2
    visible: lines.length > 0

    ActionButton {
        iconName: root.open ? "up" : "down"
        lift: true
        text: root.open ? qsTr("Hide: %1").arg(root.title) : root.title
        width: parent.width

        onTriggered: root.open = !root.open
    }

    Repeater {
        model: root.open ? root.lines : []

        Label {
            required property string modelData

            text: modelData
            width: parent?.width ?? 0
        }
    }
}
