// What must be proved before the machine leaves: it follows from what was disturbed.
// Qt 6.4 knows no members of a url, a map or a list:
// qmllint disable type
import QtQuick
import Undercowl
import Undercowl.Style

ShopPage {
    id: root

    aside: walk.finished ? "" : (walk.current + 1) + " / " + walk.count
    title: qsTr("Prove")
    footer: [
        ActionButton {
            kind: walk.against !== "" ? ActionButton.Main : ActionButton.Other
            lift: true
            settle: body.settle
            text: walk.way === "wires" ? qsTr("Read it back") : qsTr("Measure it")
            visible: walk.way !== ""
            width: parent.width

            onTriggered: {
                root.leaving();
                if (walk.way === "wires")
                    root.opens("ReadBackPage", {
                        "gathering": walk.subject
                    });
                else
                    root.opens("MeasurePage", {
                        "about": walk.subject
                    });
            }
        },
        ActionButton {
            iconName: "done"
            kind: ActionButton.Main
            lift: true
            settle: body.settle
            text: walk.finished ? qsTr("Go on") : qsTr("Proved")
            visible: walk.finished ? walk.open > 0 : walk.against === ""
            width: parent.width

            onTriggered: {
                if (walk.finished)
                    walk.on();
                else
                    walk.proved(how.commit());
            }
        },
        ActionButton {
            lift: true
            settle: body.settle
            text: qsTr("Leave it out")
            visible: !walk.finished
            width: parent.width

            onTriggered: walk.leaveOut(how.commit())
        }
    ]

    ProveView {
        id: walk

        session: root.session

        onSaidSo: {
            how.clear();
            draft.discard();
        }
    }

    FormDraft {
        id: draft

        form: "prove/" + root.session.jobId
        jobId: root.session.jobId
        session: root.session
        title: qsTr("Prove")
    }

    EmptyState {
        iconName: "within"
        text: qsTr("What is taken apart and put together again is proved here.")
        title: qsTr("Nothing was disturbed")
        visible: walk.ready && walk.count === 0 && walk.apart === 0
        width: parent.width
    }

    CheckWalkBody {
        id: body

        doneText: qsTr("Everything that was disturbed is proved, or left out for a reason.")
        walk: walk
        width: parent.width
    }

    CautionBox {
        text: walk.against
        visible: walk.against !== ""
        width: parent.width
    }

    DraftEntry {
        id: how

        draft: draft
        error: walk.errors.reason ?? ""
        label: qsTr("How, or why it is left out")
        name: "how"
        page: root
        placeholder: qsTr("read aloud and matched")
        visible: !walk.finished
        width: parent.width
    }

    Label {
        text: qsTr("%n not on again: cannot be proved yet", "proofs", walk.apart)
        tone: Theme.quiet
        visible: walk.apart > 0 && walk.finished
        width: parent.width
    }

    ListRow {
        iconName: "eye"
        title: qsTr("A second pair of eyes")
        visible: walk.finished && walk.seconds.count > 0
        width: parent.width

        onTriggered: root.opens("SecondEyesPage", {})
    }

    ListRow {
        aside: walk.unanswered > 0 ? qsTr("%n without an answer", "complaints and functions", walk.unanswered) : ""
        iconName: "within"
        title: qsTr("What works now, beside what worked before")
        visible: walk.finished
        width: parent.width

        onTriggered: root.opens("FunctionsPage", {
            "after": true
        })
    }

    ListRow {
        iconName: "road"
        title: qsTr("Road test and rechecks")
        visible: walk.finished
        width: parent.width

        onTriggered: root.opens("RoadPage", {})
    }
}
