// Written memos of the job: the last few, and a line to add one.
// Qt 6.4 knows no members of a url, a map or a list:
// qmllint disable type
import QtQuick
import Undercowl
import Undercowl.Style

Column {
    id: root

    required property ShopSession session

    spacing: Theme.grid * 3

    JobMemoList {
        id: memos

        session: root.session

        onKept: field.clear()
    }

    FormDraft {
        id: draft

        form: "memo/" + root.session.jobId
        jobId: root.session.jobId
        session: root.session
        title: qsTr("Memo")
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

    TextEntryArea {
        id: field

        label: qsTr("Memo")
        lines: 2
        placeholder: qsTr("what must not be forgotten")
        value: draft.values.text ?? ""
        width: parent.width

        onEdited: text => draft.set("text", text)
    }

    ActionButton {
        enabled: draft.begun
        iconName: "note"
        text: qsTr("Keep the memo")
        width: parent.width

        onTriggered: {
            field.commit();
            memos.keep(draft);
        }
    }
}
