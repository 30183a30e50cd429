// A memo, spoken or typed: two touches from home to one that runs.
//
//   machine     that it is about, for the head
//   about       the step, photo or finding that it is about; empty: the job
//   ofPhoto     it is a photo
//   recording   begin at once
// Qt 6.4 knows no members of a url, a map or a list:
// qmllint disable type unqualified
import QtQuick
import Undercowl
import Undercowl.Style

ShopPage {
    id: root

    property string machine: ""
    property string about: ""
    property bool ofPhoto: false
    property bool recording: false

    function keep() {
        field.commit();
        memos.keep(draft, root.about);
    }

    lift: true
    title: machine
    footer: [
        RecordActions {
            memo: sound
            typed: draft.begun
            width: parent.width

            onKept: root.keep()
        },
        TalkBar {
            id: talk

            commands: ({
                    "memo": () => sound.start(),
                    "stop": () => sound.stop(),
                    "done": () => sound.recording ? sound.stop() : draft.begun ? root.keep() : root.leaves(),
                    "back": () => root.leaves(),
                    "undo": () => talk.undo()
                })
            page: root
            sayBack: !sound.recording
            width: parent.width
        }
    ]
    tools: TalkTool {
        page: root
    }

    Component.onCompleted: {
        if (root.recording)
            sound.start();
        else
            field.forceActiveFocus();
    }

    MemoRecording {
        id: sound

        about: root.about
        bySilence: settings.memoEndsBySilence
        recorder: root.recorder
        session: root.session
    }

    ShopSettings {
        id: settings

        session: root.session
    }

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
        title: root.ofPhoto ? qsTr("Note to a photo") : qsTr("Memo")
    }

    MemoMeter {
        memo: sound
        visible: sound.recording
        width: parent.width
    }

    Label {
        Accessible.role: Accessible.AlertMessage
        text: sound.problem
        tone: Theme.caution
        visible: text !== ""
        width: parent.width
    }

    TextEntryArea {
        id: field

        label: root.ofPhoto ? qsTr("Note to this photo") : qsTr("Memo")
        lift: true
        lines: 4
        placeholder: qsTr("the third bolt is the longer one")
        value: draft.values.text ?? ""
        visible: !sound.recording
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
}
