// What can be done with what is read aloud.
//
//   briefly   words of the button that repeats the part that matters most
import QtQuick
import Undercowl.Style

Row {
    id: root

    property string briefly: ""
    property string brieflyDescription: ""

    readonly property real third: (width - 2 * spacing) / 3

    signal again
    signal slower
    signal brief

    spacing: Theme.targetGap

    ActionButton {
        lift: true
        text: qsTr("Say again")
        width: root.third

        onTriggered: root.again()
    }

    ActionButton {
        description: qsTr("Says it again, more slowly; after the slowest comes the usual pace")
        lift: true
        text: qsTr("Slower")
        width: root.third

        onTriggered: root.slower()
    }

    ActionButton {
        description: root.brieflyDescription
        lift: true
        text: root.briefly
        width: root.third

        onTriggered: root.brief()
    }
}
