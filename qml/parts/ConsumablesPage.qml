// Fluids, grease and sealant that go into the machine; what speaks against one is said before it is used.
// Qt 6.4 knows no members of a url, a map or a list, cannot bind a delegate to the ids around it:
// qmllint disable type unqualified
import QtQuick
import Undercowl
import Undercowl.Style

ShopPage {
    id: root

    title: qsTr("Fluids and grease")
    footer: ActionButton {
        enabled: draft.begun
        kind: view.against.length > 0 ? ActionButton.Refuse : ActionButton.Main
        lift: true
        text: view.against.length > 0 ? qsTr("Use it all the same") : qsTr("It goes in")
        width: parent.width

        onTriggered: {
            root.leaving();
            view.use();
        }
    }

    ConsumablesView {
        id: view

        draft: draft
        session: root.session
    }

    FormDraft {
        id: draft

        form: "fluid/" + root.session.jobId
        jobId: root.session.jobId
        session: root.session
        title: qsTr("Fluid")
    }

    Repeater {
        model: view.against

        CautionBox {
            required property string modelData

            text: modelData
            width: parent?.width ?? 0
        }
    }

    DraftEntry {
        draft: draft
        error: view.errors.what ?? ""
        label: qsTr("What goes in")
        name: "what"
        page: root
        placeholder: qsTr("brake fluid")
        width: parent.width
    }

    DraftEntry {
        draft: draft
        label: qsTr("Grade on the container")
        name: "grade"
        page: root
        placeholder: "DOT 4"
        width: parent.width
    }

    DraftEntry {
        draft: draft
        label: qsTr("Grades that the machine allows")
        name: "limit"
        page: root
        placeholder: qsTr("DOT 4, from the lid")
        width: parent.width
    }

    DraftEntry {
        draft: draft
        label: qsTr("Day on which the container was opened")
        name: "opened"
        page: root
        placeholder: "2026-11-02"
        width: parent.width
    }

    DraftEntry {
        draft: draft
        label: qsTr("Batch")
        mono: true
        name: "batch"
        page: root
        width: parent.width
    }

    SectionHeader {
        text: qsTr("Went in")
        visible: view.used.count > 0
        width: parent.width
    }

    Repeater {
        model: view.used

        ListRow {
            id: row

            required title
            required property string detail
            required property string more

            aside: [row.detail, row.more].filter(word => word !== "").join("\n")
            iconName: row.more === "" ? "done" : "caution"
            opens: false
            width: parent?.width ?? 0
        }
    }
}
