// All were read back.
//
//   settle       the end has just come
//   comparable   photos can be compared: of wires
import QtQuick
import Undercowl
import Undercowl.Style

Column {
    id: root

    required property ReadBackWalk wire
    required property Settle settle
    property bool comparable: true

    readonly property real half: (width - Theme.targetGap) / 2

    signal compares
    signal finished

    spacing: Theme.targetGap

    ActionButton {
        kind: ActionButton.Main
        lift: true
        settle: root.settle
        text: qsTr("Finish")
        width: parent.width

        onTriggered: root.finished()
    }

    Row {
        spacing: Theme.targetGap

        ActionButton {
            lift: true
            settle: root.settle
            text: qsTr("Again")
            width: root.comparable ? root.half : root.width

            onTriggered: root.wire.again()
        }

        ActionButton {
            lift: true
            settle: root.settle
            text: qsTr("Compare photos")
            visible: root.comparable
            width: root.half

            onTriggered: root.compares()
        }
    }
}
