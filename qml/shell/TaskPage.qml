// One task: the watch, waiting, finishing, and what has to be finished before it.
// Qt 6.4 knows no members of a url, a map or a list, cannot bind a delegate to the ids around it:
// qmllint disable type unqualified
import QtQuick
import Undercowl
import Undercowl.Style

ShopPage {
    id: root

    property string task: ""
    readonly property list<string> holds: ["owner", "parts", "outside"]

    aside: view.spent
    title: view.title
    footer: [
        ActionButton {
            iconName: view.running ? "stop" : "clock"
            kind: ActionButton.Main
            lift: true
            text: view.running ? qsTr("Stop the watch") : qsTr("Start the watch")
            width: parent.width

            onTriggered: view.startOrStop()
        },
        Row {
            id: ways

            readonly property real half: (width - spacing) / 2

            spacing: Theme.targetGap
            width: parent.width

            ActionButton {
                lift: true
                text: view.state === "waiting" ? qsTr("It waits no more") : qsTr("Let it wait")
                width: ways.half

                onTriggered: {
                    if (view.state === "waiting")
                        view.resume();
                    else {
                        root.leaving();
                        view.hold(draft);
                    }
                }
            }

            ActionButton {
                lift: true
                text: view.state === "finished" ? qsTr("Take it up again") : qsTr("Finished")
                width: ways.half

                onTriggered: {
                    if (view.state === "finished")
                        view.resume();
                    else
                        view.finish();
                }
            }
        }
    ]

    TaskView {
        id: view

        session: root.session
        task: root.task
    }

    Panel {
        tone: view.state === "waiting" ? Theme.caution : "transparent"
        width: parent.width

        Label {
            kind: Label.Title
            text: view.state === "waiting" ? qsTr("Waits for %1").arg(view.waitingFor) : view.state === "finished" ? qsTr("Finished") : qsTr("Open")
            width: parent.width
        }

        Label {
            text: view.running ? qsTr("The watch runs. %1 so far.").arg(view.spent) : qsTr("Time spent: %1").arg(view.spent)
            tone: Theme.quiet
            width: parent.width
        }
    }

    CautionBox {
        text: qsTr("This watch ran longer than anyone works at a stretch. How many minutes was it?")
        visible: view.forgotten
        width: parent.width
    }

    TextEntry {
        id: minutes

        error: view.errors.minutes ?? ""
        inputHints: Qt.ImhDigitsOnly
        label: qsTr("Minutes")
        visible: view.forgotten
        width: parent.width
    }

    ActionButton {
        text: qsTr("It was that long")
        visible: view.forgotten
        width: parent.width

        onTriggered: view.correct(minutes.commit())
    }

    FormDraft {
        id: draft

        form: "hold/" + root.session.jobId + "/" + root.task
        jobId: root.session.jobId
        session: root.session
        title: qsTr("What it waits for")
    }

    Choice {
        current: root.holds.indexOf(draft.values.heldBy ?? "")
        label: qsTr("What holds it up?")
        options: [qsTr("Owner"), qsTr("Parts"), qsTr("Else")]
        visible: view.state !== "waiting"
        width: parent.width

        onChosen: index => draft.set("heldBy", root.holds[index])
    }

    DraftEntry {
        draft: draft
        error: view.errors.waitingFor ?? ""
        label: qsTr("What does it wait for?")
        name: "waitingFor"
        page: root
        placeholder: qsTr("brake shoes, on order")
        visible: view.state !== "waiting"
        width: parent.width
    }

    SectionHeader {
        text: qsTr("To be finished first")
        visible: view.others.count > 0
        width: parent.width
    }

    RemedyLine {
        error: view.errors.after ?? ""
        width: parent.width
    }

    Repeater {
        model: view.others

        ListRow {
            id: other

            required title
            required property string lineId
            required property string detail
            required property bool on

            aside: other.detail
            done: other.on
            iconName: "tools"
            opens: false
            remark: other.on ? qsTr("first") : ""
            width: parent?.width ?? 0

            onTriggered: view.comesAfter(other.lineId)
        }
    }
}
