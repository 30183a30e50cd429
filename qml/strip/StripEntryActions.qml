// Keeps what was entered, or leaves it.
//
//   text    of the one that keeps
//   ready   whether there is anything to keep
import QtQuick
import Undercowl.Style

ThumbRow {
    id: root

    property string text: ""
    property bool ready: true

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
        enabled: root.ready
        kind: ActionButton.Main
        lift: true
        text: root.text
        width: (root.width - root.spacing) * 2 / 3

        onTriggered: root.kept()
    }
}
