// Keeping the reading, or the value as one of several of which the mean will be kept.
//
//   repeated   values are kept aside already
import QtQuick
import Undercowl.Style

ThumbRow {
    id: root

    property bool repeated: false

    signal again
    signal kept

    ActionButton {
        height: Theme.liftMain
        lift: true
        text: qsTr("Again")
        width: (root.width - root.spacing) / 3

        onTriggered: root.again()
    }

    ActionButton {
        kind: ActionButton.Main
        lift: true
        text: root.repeated ? qsTr("Keep mean") : qsTr("Keep")
        width: (root.width - root.spacing) * 2 / 3

        onTriggered: root.kept()
    }
}
