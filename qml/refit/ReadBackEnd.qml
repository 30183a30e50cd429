// All wires were read back.
import QtQuick
import Undercowl
import Undercowl.Style

Column {
    id: root

    required property ReadBackView wire

    readonly property real half: (width - Theme.targetGap) / 2

    signal compares
    signal finished

    spacing: Theme.targetGap

    ActionButton {
        kind: ActionButton.Main
        lift: true
        text: qsTr("Finish")
        width: parent.width

        onTriggered: root.finished()
    }

    Row {
        spacing: Theme.targetGap

        ActionButton {
            lift: true
            text: qsTr("Again")
            width: root.half

            onTriggered: root.wire.again()
        }

        ActionButton {
            lift: true
            text: qsTr("Compare photos")
            width: root.half

            onTriggered: root.compares()
        }
    }
}
