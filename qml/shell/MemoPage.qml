// Two touches from home to a memo that is kept: open, type, keep.
//
//   machine   that it is about, for the head
//   about     the photo that it is a note to; empty: the job
// Qt 6.4 knows no members of a url, a map or a list:
// qmllint disable type
import QtQuick
import Undercowl
import Undercowl.Style

ShopPage {
    id: root

    property string machine: ""
    property string about: ""

    title: machine
    footer: ActionButton {
        enabled: draft.begun
        kind: ActionButton.Main
        lift: true
        text: qsTr("Keep")
        width: parent.width

        onTriggered: {
            field.commit();
            memos.keep(draft, root.about);
        }
    }

    Component.onCompleted: field.forceActiveFocus()

    JobMemoList {
        id: memos

        session: root.session

        onKept: root.leaves()
    }

    FormDraft {
        id: draft

        form: "memo/" + root.session.jobId + (root.about === "" ? "" : "/" + root.about)
        jobId: root.session.jobId
        session: root.session
        title: root.about === "" ? qsTr("Memo") : qsTr("Note to a photo")
    }

    TextEntryArea {
        id: field

        label: root.about === "" ? qsTr("Memo") : qsTr("Note to this photo")
        lines: 4
        placeholder: qsTr("what must not be forgotten")
        value: draft.values.text ?? ""
        width: parent.width

        onEdited: text => draft.set("text", text)
    }

    SectionHeader {
        text: qsTr("Kept so far")
        visible: memos.memos.count > 0
        width: parent.width
    }

    Repeater {
        model: memos.memos

        Panel {
            id: memo

            required title
            required property string aside

            width: parent?.width ?? 0

            Label {
                kind: Label.Aside
                text: memo.aside
                tone: Theme.quiet
                width: parent.width
            }
        }
    }
}
