// All were read back.
//
//   comparable   photos can be compared: of wires
import QtQuick
import Undercowl
import Undercowl.Style

Column {
    id: root

    required property ReadBackWalk wire
    property bool comparable: true

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
            width: root.comparable ? root.half : root.width

            onTriggered: root.wire.again()
        }

        ActionButton {
            lift: true
            text: qsTr("Compare photos")
            visible: root.comparable
            width: root.half

            onTriggered: root.compares()
        }
    }
}
