// What was found: worst first, each with what to do about it.
import QtQuick
import Undercowl
import Undercowl.Style

ShopPage {
    id: root

    title: qsTr("Look over")
    footer: ThumbRow {
        id: actions

        readonly property real half: (width - spacing) / 2

        width: parent.width

        ActionButton {
            height: finding.height
            lift: true
            text: qsTr("Photo as found")
            width: actions.half

            onTriggered: root.opens("CameraPage", {
                "jobId": root.session.jobId,
                "purpose": "as found",
                "title": qsTr("As found")
            })
        }

        ActionButton {
            id: finding

            iconName: "plus"
            kind: ActionButton.Main
            lift: true
            text: qsTr("Finding")
            width: actions.half

            onTriggered: root.opens("FindingPage", {})
        }
    }

    Findings {
        id: findings

        session: root.session
    }

    EmptyState {
        iconName: "eye"
        text: qsTr("Brakes, tyres, play in the steering, leaks, wiring: note what is not as it should be.")
        title: qsTr("Nothing found yet")
        visible: findings.ready && findings.open.count === 0 && findings.settled.count === 0
        width: parent.width
    }

    Repeater {
        model: findings.open

        FindingRow {
            width: parent?.width ?? 0

            onChosen: id => root.opens("FindingPage", {
                "finding": id
            })
            onMemo: id => root.opens("MemoPage", {
                "about": id,
                "machine": title
            })
            onPhoto: id => root.opens("CameraPage", {
                "jobId": root.session.jobId,
                "purpose": "finding",
                "about": id,
                "title": title
            })
            onRefused: id => root.opens("RefusalPage", {
                "finding": id
            })
            onSettled: id => {
                if (!findings.settle(id, qsTr("done")))
                    root.opens("SettlePage", {
                        "finding": id
                    });
            }
            onTaskMade: id => findings.makeTask(id)
        }
    }

    SectionHeader {
        text: qsTr("Settled")
        visible: findings.settled.count > 0
        width: parent.width
    }

    Repeater {
        model: findings.settled

        FindingRow {
            settledAlready: true
            width: parent?.width ?? 0

            onChosen: id => root.opens("FindingPage", {
                "finding": id
            })
            onReopened: id => findings.reopen(id)
        }
    }
}
