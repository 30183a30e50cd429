// 'As found' and 'as it should be' differ: the mechanic decides which holds before anything is confirmed.
//
//   settle   which one is on the screen
import QtQuick
import Undercowl
import Undercowl.Style

Column {
    id: root

    required property ReadBackView wire
    required property Settle settle

    spacing: Theme.targetGap

    CautionBox {
        text: qsTr("Stop: the two answers differ. Which one holds?")
        width: parent.width
    }

    ActionButton {
        description: root.wire.source
        lift: true
        settle: root.settle
        text: qsTr("%1: %2").arg(root.wire.reads).arg(root.wire.words)
        width: parent.width

        onTriggered: root.wire.choose(false)
    }

    ActionButton {
        lift: true
        settle: root.settle
        text: qsTr("%1: %2").arg(root.wire.otherReads).arg(root.wire.otherWords)
        width: parent.width

        onTriggered: root.wire.choose(true)
    }
}
