// Two buttons to the wires beside the one that a tap named: a thumb in a glove often comes down on the neighbour.
import QtQuick
import Undercowl
import Undercowl.Style

Row {
    id: root

    required property StrokeView view

    spacing: Theme.targetGap

    ActionButton {
        description: qsTr("The next wire on that side was meant")
        enabled: !root.view.reader.busy
        lift: true
        text: root.view.level ? qsTr("Wire above") : qsTr("Wire left")
        width: (root.width - root.spacing) / 2

        onTriggered: root.view.step(false)
    }

    ActionButton {
        description: qsTr("The next wire on that side was meant")
        enabled: !root.view.reader.busy
        lift: true
        text: root.view.level ? qsTr("Wire below") : qsTr("Wire right")
        width: (root.width - root.spacing) / 2

        onTriggered: root.view.step(true)
    }
}
