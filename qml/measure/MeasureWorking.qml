// How the verdict came about, on a panel of its own, so that it is no more to touch beside the keypad: the values that were
// kept aside, each of which a touch takes out, and the working line by line.
// Qt 6.4 knows no string list as a list of strings, cannot bind a delegate to the ids around it:
// qmllint disable type unqualified
import QtQuick
import Undercowl
import Undercowl.Style

Column {
    id: root

    required property MeasureView measure

    spacing: Theme.grid * 3

    Repeater {
        model: root.measure.aside

        ListRow {
            required title
            required property string detail
            required property int index

            aside: qsTr("one of several; tap to take it out")
            iconName: "again"
            lift: true
            opens: false
            remark: detail
            width: parent?.width ?? 0

            onTriggered: root.measure.removeAside(index)
        }
    }

    Repeater {
        model: root.measure.working

        Label {
            required property string modelData

            text: modelData
            width: parent?.width ?? 0
        }
    }

    Label {
        kind: Label.Aside
        text: qsTr("Nothing to show: no value, or no limits.")
        visible: root.measure.aside.count === 0 && root.measure.working.length === 0
        width: parent.width
    }
}
