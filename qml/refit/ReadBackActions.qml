// Read-back: the wire matches, or it does not.
import QtQuick
import Undercowl
import Undercowl.Style

Column {
    id: root

    required property ReadBackView wire

    readonly property real third: (width - 2 * Theme.targetGap) / 3

    spacing: Theme.targetGap

    ActionButton {
        busy: root.wire.saying
        busyText: qsTr("Saving")
        kind: ActionButton.Main
        lift: true
        text: qsTr("Done")
        width: parent.width

        onTriggered: root.wire.done()
    }

    Row {
        spacing: Theme.targetGap

        ActionButton {
            enabled: root.wire.index > 0
            lift: true
            text: qsTr("Back", "to the wire before")
            width: root.third

            onTriggered: root.wire.back()
        }

        ActionButton {
            description: qsTr("Begins with the first wire again")
            lift: true
            text: qsTr("Again")
            width: root.third

            onTriggered: root.wire.again()
        }

        ActionButton {
            description: qsTr("To the next wire; nothing is said of this one")
            lift: true
            text: qsTr("Skip")
            width: root.third

            onTriggered: root.wire.goOn()
        }
    }

    ActionButton {
        enabled: !root.wire.saying
        kind: ActionButton.Refuse
        lift: true
        text: qsTr("Does not match")
        width: parent.width

        onTriggered: root.wire.doesNotMatch()
    }
}
