// Changing what putting one part back takes.
// Qt 6.4 knows no members of a url, a map or a list, cannot bind a delegate to the ids around it:
// qmllint disable type unqualified
import QtQuick
import Undercowl
import Undercowl.Style

ShopPage {
    id: root

    property string step: ""
    readonly property list<string> names: ["noStart", "noRide"]

    title: qsTr("To put it back")
    footer: ActionButton {
        kind: ActionButton.Main
        lift: true
        text: qsTr("Keep")
        width: parent.width

        onTriggered: {
            root.leaving();
            view.keep(draft);
        }
    }

    NeedsView {
        id: view

        session: root.session
        step: root.step

        onKept: root.leaves()
    }

    FormDraft {
        id: draft

        form: "needs/" + root.session.jobId + "/" + root.step
        jobId: root.session.jobId
        session: root.session
        title: qsTr("To put it back")

        onReadyChanged: {
            if (ready && !begun)
                fill(view.known());
        }
    }

    Label {
        strong: true
        text: view.title
        width: parent.width
    }

    NeedsLines {
        draft: draft
        label: qsTr("New every time, one a line")
        name: "renew"
        page: root
        placeholder: qsTr("split pin")
        width: parent.width
    }

    DraftEntry {
        draft: draft
        label: qsTr("What goes on it")
        name: "apply"
        page: root
        placeholder: qsTr("grease, thread lock, none")
        width: parent.width
    }

    NeedsLines {
        draft: draft
        label: qsTr("To adjust, bleed or try afterwards, one a line")
        name: "afterwards"
        page: root
        placeholder: qsTr("bleed the brake until the lever stays hard")
        width: parent.width
    }

    Repeater {
        model: [qsTr("Do not start until it is done"), qsTr("Do not ride until it is done")]

        Choice {
            required property string modelData
            required property int index

            current: (draft.values[root.names[index]] ?? "") === "yes" ? 0 : 1
            label: modelData
            options: [qsTr("Yes"), qsTr("No")]
            width: parent?.width ?? 0

            onChosen: which => draft.set(root.names[index], which === 0 ? "yes" : "")
        }
    }
}
