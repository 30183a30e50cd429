// Taking a machine in, or correcting what was said of it. Any order; every change is kept as it is typed.
// Qt 6.4 knows no members of a url, a map or a list:
// qmllint disable type
import QtQuick
import Undercowl
import Undercowl.Style

ShopPage {
    id: root

    property bool editing: false

    readonly property string machine: [draft.values.make ?? "", draft.values.model ?? ""].filter(word => word !== "").join(" ")

    function save() {
        root.leaving();
        form.save();
        const wrong = Object.values(form.errors);
        if (wrong.length > 0)
            talk.ear.refuse(wrong[0]);
    }

    // Of what is being typed only a job that is open can have photos and memos.
    function goTo(page: string, properties: var) {
        if (!root.editing) {
            talk.ear.refuse(qsTr("Open the job first, then say it again."));
            return;
        }
        root.leaving();
        root.opens(page, properties);
    }

    title: editing ? qsTr("Machine and owner") : qsTr("Take in")
    footer: [
        ActionButton {
            busy: form.busy
            busyText: qsTr("Saving")
            kind: ActionButton.Main
            lift: true
            text: root.editing ? qsTr("Save") : qsTr("Open the job")
            width: parent.width

            onTriggered: root.save()
        },
        TalkBar {
            id: talk

            commands: ({
                    "done": () => root.save(),
                    "photo": () => root.goTo("CameraPage", {
                            "jobId": root.session.jobId,
                            "purpose": "as found",
                            "title": root.machine
                        }),
                    "memo": () => root.goTo("MemoPage", {
                            "machine": root.machine,
                            "recording": true
                        }),
                    "back": () => root.leaves(),
                    "undo": () => talk.undo()
                })
            page: root
            width: parent.width
        }
    ]
    tools: TalkTool {
        page: root
    }

    FormDraft {
        id: draft

        form: root.editing ? "takein/" + root.session.jobId : "takein/new"
        jobId: root.editing ? root.session.jobId : ""
        session: root.session
        title: root.editing ? qsTr("Machine and owner") : qsTr("Take in")

        onReadyChanged: {
            if (!root.editing || !ready || begun)
                return;
            fill(form.known());
        }
    }

    TakeIn {
        id: form

        draft: draft
        editing: root.editing
        session: root.session

        onSaved: {
            const editing = root.editing;
            root.leaves();
            if (!editing)
                root.opens("JobPage", {});
        }
    }

    Label {
        text: qsTr("Continues the entry from %1").arg(draft.restoredFrom)
        tone: Theme.quiet
        visible: draft.restoredFrom !== "" && !root.editing
        width: parent.width
    }

    TakeInReason {
        draft: draft
        form: form
        page: root
        width: parent.width
    }

    TakeInMachine {
        draft: draft
        form: form
        page: root
        width: parent.width
    }

    TakeInOwner {
        draft: draft
        page: root
        width: parent.width
    }
}
