// Memos of the job: the last few, and a line to add one.
// Qt 6.4 knows no members of a url, a map or a list, cannot bind a delegate to the ids around it:
// qmllint disable type unqualified
import QtQuick
import Undercowl
import Undercowl.Style

Column {
    id: root

    required property ShopSession session
    property Player player

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

        MemoRow {
            required title
            required detail
            required aside
            required property string lineId
            required property bool on

            memo: lineId
            player: root.player
            session: root.session
            spoken: on
            width: parent?.width ?? 0
        }
    }

    TextEntryArea {
        id: field

        label: qsTr("Memo")
        lines: 2
        placeholder: qsTr("the third bolt is the longer one")
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
