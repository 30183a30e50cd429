// Taking a machine in, or correcting what was said of it. Any order; every change is kept as it is typed.
import QtQuick
import Undercowl
import Undercowl.Style

ShopPage {
    id: root

    property bool editing: false

    title: editing ? qsTr("Machine and owner") : qsTr("Take in")
    footer: ActionButton {
        busy: form.busy
        busyText: qsTr("Saving")
        kind: ActionButton.Main
        lift: true
        text: root.editing ? qsTr("Save") : qsTr("Open the job")
        width: parent.width

        onTriggered: {
            root.leaving();
            form.save();
        }
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
