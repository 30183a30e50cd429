// What else can be done at a refit step.
//
//   hasStep   there is a step on the screen;  wired: with wires to be read back
import QtQuick
import Undercowl.Style

Row {
    id: root

    property bool hasStep: false
    property bool wired: false

    readonly property int shown: wired ? 3 : 2
    readonly property int more: 4 // for the longest word
    readonly property real cell: (width - (shown - 1) * spacing) / shown

    signal photo
    signal wires
    signal measures

    spacing: Theme.targetGap

    ActionButton {
        lift: true
        text: qsTr("Photo")
        width: root.cell - root.more

        onTriggered: root.photo()
    }

    ActionButton {
        lift: true
        text: qsTr("Wires")
        visible: root.wired
        width: root.cell

        onTriggered: root.wires()
    }

    ActionButton {
        lift: true
        text: qsTr("Measure")
        visible: root.hasStep
        width: root.cell + root.more

        onTriggered: root.measures()
    }
}
