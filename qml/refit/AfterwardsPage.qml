// What is to be adjusted, bled or tried after refitting; until then the machine is not started or not ridden.
// Qt 6.4 knows no members of a url, a map or a list, cannot bind a delegate to the ids around it:
// qmllint disable type unqualified
import QtQuick
import Undercowl
import Undercowl.Style

ShopPage {
    id: root

    property string step: ""
    property string what: ""

    title: qsTr("Afterwards")
    footer: [
        ActionButton {
            iconName: "done"
            kind: ActionButton.Main
            lift: true
            text: qsTr("It is done")
            visible: root.what !== ""
            width: parent.width

            onTriggered: view.done(root.step, root.what)
        },
        ActionButton {
            lift: true
            text: qsTr("Leave it out")
            visible: root.what !== ""
            width: parent.width

            onTriggered: view.leaveOut(root.step, root.what, reason.commit())
        }
    ]

    AfterwardsView {
        id: view

        session: root.session

        onSaidSo: {
            root.step = "";
            root.what = "";
            reason.clear();
            draft.discard();
        }
    }

    FormDraft {
        id: draft

        form: "left-out/" + root.session.jobId
        jobId: root.session.jobId
        session: root.session
        title: root.title
    }

    Repeater {
        model: view.bans

        CautionBox {
            required property string modelData

            text: modelData
            width: parent?.width ?? 0
        }
    }

    EmptyState {
        iconName: "done"
        text: qsTr("Nothing that is on again waits to be adjusted, bled or tried.")
        title: qsTr("Nothing open")
        visible: view.ready && view.open.count === 0 && view.left.count === 0
        width: parent.width
    }

    Repeater {
        model: view.open

        ListRow {
            id: row

            required title
            required property string detail
            required property string more
            required property string mark

            aside: row.detail
            iconName: row.mark === "" ? "tools" : "caution"
            opens: false
            remark: root.step === row.more && root.what === row.title ? "\u25CF" : ""
            width: parent?.width ?? 0

            onTriggered: {
                root.step = row.more;
                root.what = row.title;
            }
        }
    }

    DraftEntry {
        id: reason

        draft: draft
        error: view.errors.reason ?? ""
        label: qsTr("Why, if it is left out")
        name: "reason"
        page: root
        placeholder: qsTr("goes home on a trailer")
        visible: root.what !== ""
        width: parent.width
    }

    SectionHeader {
        text: qsTr("Left out")
        visible: view.left.count > 0
        width: parent.width
    }

    Repeater {
        model: view.left

        ListRow {
            id: out

            required title
            required aside
            required property string more

            iconName: "caution"
            opens: false
            width: parent?.width ?? 0

            onTriggered: {
                root.step = out.more;
                root.what = out.title;
            }
        }
    }
}
