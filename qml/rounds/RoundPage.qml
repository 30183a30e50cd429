// A round on the machine: one check fills the screen and ends in fine, finding or not done.
import QtQuick
import Undercowl
import Undercowl.Style

ShopPage {
    id: root

    property string round: ""

    aside: walk.finished ? "" : (walk.current + 1) + " / " + walk.count
    title: walk.title
    footer: [
        ActionButton {
            iconName: "done"
            kind: ActionButton.Main
            lift: true
            settle: body.settle
            text: walk.finished ? qsTr("Go on") : qsTr("Fine")
            visible: !walk.finished || walk.open > 0
            width: parent.width

            onTriggered: {
                if (walk.finished)
                    walk.on();
                else
                    walk.fine();
            }
        },
        Row {
            id: others

            readonly property real half: (width - spacing) / 2

            spacing: Theme.targetGap
            visible: !walk.finished
            width: parent.width

            ActionButton {
                lift: true
                settle: body.settle
                text: qsTr("Finding")
                width: others.half

                onTriggered: root.opens("FindingPage", {
                    "round": root.round,
                    "check": walk.key,
                    "asked": walk.check
                })
            }

            ActionButton {
                lift: true
                settle: body.settle
                text: qsTr("Not done")
                width: others.half

                onTriggered: walk.notDone()
            }
        }
    ]

    RoundView {
        id: walk

        round: root.round
        session: root.session
    }

    CheckWalkBody {
        id: body

        doneText: qsTr("Every check of this round has its answer.")
        walk: walk
        width: parent.width
    }
}
