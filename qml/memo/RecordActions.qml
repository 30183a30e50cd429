// One touch begins a spoken memo, one ends it; what was typed is kept by a button of its own.
//
//   typed   something was typed
import QtQuick
import Undercowl
import Undercowl.Style

ThumbRow {
    id: root

    required property MemoRecording memo
    property bool typed: false

    readonly property real half: (width - spacing) / 2

    signal kept

    ActionButton {
        height: Theme.liftMain
        iconName: "record"
        kind: root.memo.recording ? ActionButton.Refuse : ActionButton.Other
        lift: true
        main: !root.memo.recording && !root.typed
        text: root.memo.recording ? qsTr("Stop") : qsTr("Record")
        visible: root.memo.recorder !== null
        width: root.half

        onTriggered: {
            if (root.memo.recording)
                root.memo.stop();
            else
                root.memo.start();
        }
    }

    ActionButton {
        description: qsTr("Marks this place in the memo, to find it again")
        height: Theme.liftMain
        lift: true
        text: qsTr("Mark")
        visible: root.memo.recording
        width: root.half

        onTriggered: root.memo.mark()
    }

    ActionButton {
        enabled: root.typed
        height: Theme.liftMain
        lift: true
        main: root.typed || root.memo.recorder === null
        text: qsTr("Keep")
        visible: !root.memo.recording
        width: root.memo.recorder !== null ? root.half : root.width

        onTriggered: root.kept()
    }
}
