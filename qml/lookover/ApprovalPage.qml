// What the owner allows: for which work, up to which sum, who said so and how.
// Qt 6.4 knows no members of a url, a map or a list, cannot bind a delegate to the ids around it:
// qmllint disable type unqualified
import QtQuick
import Undercowl
import Undercowl.Style

ShopPage {
    id: root

    title: qsTr("The owner's word")
    footer: [
        ActionButton {
            kind: ActionButton.Main
            lift: true
            text: qsTr("The owner agrees")
            width: parent.width

            onTriggered: {
                root.leaving();
                word.approve(draft, true);
            }
        },
        ActionButton {
            lift: true
            text: qsTr("The owner does not want it")
            width: parent.width

            onTriggered: {
                root.leaving();
                word.approve(draft, false);
            }
        }
    ]

    OwnersWord {
        id: word

        session: root.session
    }

    FormDraft {
        id: draft

        form: "approval/" + root.session.jobId
        jobId: root.session.jobId
        session: root.session
        title: qsTr("Approval")
    }

    Repeater {
        model: word.approvals

        ListRow {
            id: row

            required title
            required property string detail
            required property bool on
            required property var model

            aside: row.detail
            iconName: row.on ? "within" : "outside"
            opens: false
            remark: row.model.aside
            width: parent?.width ?? 0
        }
    }

    DraftEntry {
        draft: draft
        error: word.errors.what ?? ""
        label: qsTr("For which work")
        name: "what"
        page: root
        placeholder: qsTr("front brake, both tyres")
        width: parent.width
    }

    OwnersAnswer {
        draft: draft
        page: root
        width: parent.width
        word: word
    }

    DraftEntry {
        draft: draft
        error: word.errors.sum ?? ""
        inputHints: Qt.ImhFormattedNumbersOnly
        label: qsTr("Up to which sum")
        name: "sum"
        page: root
        placeholder: "120.50"
        width: parent.width
    }

    DraftEntry {
        draft: draft
        error: word.errors.currency ?? ""
        label: qsTr("Currency")
        name: "currency"
        page: root
        placeholder: "EUR"
        width: parent.width
    }
}
