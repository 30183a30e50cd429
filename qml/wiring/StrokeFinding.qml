// What to do with the wires that are proposed without a stroke.
import QtQuick
import Undercowl
import Undercowl.Style

Column {
    id: root

    required property StrokeView view

    spacing: Theme.targetGap

    ActionButton {
        enabled: root.view.acceptedCount > 0
        kind: ActionButton.Main
        lift: true
        text: root.view.acceptedCount > 0 ? qsTr("Take these %1").arg(root.view.acceptedCount) : qsTr("None touched")
        visible: root.view.outlines.length > 0
        width: parent.width

        onTriggered: root.view.takeAccepted()
    }

    Row {
        spacing: Theme.targetGap
        width: parent.width

        ActionButton {
            lift: true
            text: qsTr("All of them")
            visible: root.view.outlines.length > 0
            width: (parent.width - parent.spacing) / 2

            onTriggered: root.view.acceptAll()
        }

        ActionButton {
            lift: true
            text: qsTr("Stroke instead")
            width: root.view.outlines.length > 0 ? (parent.width - parent.spacing) / 2 : parent.width

            onTriggered: root.view.stopFinding()
        }
    }
}
