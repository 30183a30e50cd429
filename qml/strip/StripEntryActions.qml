// Keeps what was entered, or leaves it.
//
//   text   of the one that keeps
import QtQuick
import Undercowl.Style

ThumbRow {
    id: root

    property string text: ""

    signal kept
    signal closed

    ActionButton {
        height: Theme.liftMain
        lift: true
        text: qsTr("Close")
        width: (root.width - root.spacing) / 3

        onTriggered: root.closed()
    }

    ActionButton {
        kind: ActionButton.Main
        lift: true
        text: root.text
        width: (root.width - root.spacing) * 2 / 3

        onTriggered: root.kept()
    }
}
