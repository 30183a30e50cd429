// Two touches from home to a memo that is kept: open, type, keep.
//
//   machine   that it is about, for the head
// Qt 6.4 knows no members of a url, a map or a list:
// qmllint disable type
import QtQuick
import Undercowl
import Undercowl.Style

ShopPage {
    id: root

    property string machine: ""

    title: machine
    footer: ActionButton {
        enabled: draft.begun
        kind: ActionButton.Main
        lift: true
        text: qsTr("Keep")
        width: parent.width

        onTriggered: {
            field.commit();
            memos.keep(draft);
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

        form: "memo/" + root.session.jobId
        jobId: root.session.jobId
        session: root.session
        title: qsTr("Memo")
    }

    TextEntryArea {
        id: field

        label: qsTr("Memo")
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
