// Read-back: the wire, hose or cable matches, or it does not.
//
//   brief    the second row makes room for the voice's
//   settle   which one is on the screen: what is said must have been meant for it
//   speaks   the device can read aloud; else the walk begins again here
//   listens()   it is to be read aloud
import QtQuick
import Undercowl
import Undercowl.Style

Column {
    id: root

    required property ReadBackWalk wire
    required property Settle settle
    property bool brief: false
    property bool speaks: false

    readonly property real half: (width - Theme.targetGap) / 2
    readonly property real third: (width - 2 * Theme.targetGap) / 3

    signal listens

    spacing: Theme.targetGap

    // Side by side, so that the words stay in view on a small screen.
    ThumbRow {
        ActionButton {
            enabled: !root.wire.saying
            height: matches.height
            kind: ActionButton.Refuse
            lift: true
            settle: root.settle
            text: qsTr("Does not match")
            width: root.half

            onTriggered: root.wire.doesNotMatch()
        }

        ActionButton {
            id: matches

            busy: root.wire.saying
            busyText: qsTr("Saving")
            kind: ActionButton.Main
            lift: true
            settle: root.settle
            text: qsTr("Matches")
            width: root.half

            onTriggered: root.wire.done()
        }
    }

    Row {
        spacing: Theme.targetGap
        visible: !root.brief

        ActionButton {
            enabled: root.wire.index > 0
            lift: true
            text: qsTr("Back", "to the one before")
            width: root.third

            onTriggered: root.wire.back()
        }

        ActionButton {
            description: root.speaks ? "" : qsTr("Begins with the first one again")
            lift: true
            text: root.speaks ? qsTr("Read aloud") : qsTr("Again")
            width: root.third

            onTriggered: {
                if (root.speaks)
                    root.listens();
                else
                    root.wire.again();
            }
        }

        ActionButton {
            description: qsTr("To the next one; nothing is said of this one")
            lift: true
            text: qsTr("Skip")
            width: root.third

            onTriggered: root.wire.goOn()
        }
    }
}
