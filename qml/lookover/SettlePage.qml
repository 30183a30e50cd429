// Saying that a finding is put right: what was done, and all the same where a part of it is not fitted.
// Qt 6.4 knows no members of a url, a map or a list:
// qmllint disable type
import QtQuick
import Undercowl
import Undercowl.Style

ShopPage {
    id: root

    property string finding: ""

    title: qsTr("Settle the finding")
    footer: [
        ActionButton {
            kind: ActionButton.Main
            lift: true
            text: qsTr("To the parts")
            visible: view.asking
            width: parent.width

            onTriggered: {
                root.leaving();
                root.opens("PartsPage", {});
            }
        },
        ActionButton {
            kind: view.asking ? ActionButton.Other : ActionButton.Main
            lift: true
            text: view.asking ? qsTr("Settle all the same") : qsTr("Settle")
            width: parent.width

            onTriggered: {
                root.leaving();
                view.settle(draft);
            }
        }
    ]

    SettleView {
        id: view

        finding: root.finding
        session: root.session

        onSettled: root.leaves()
    }

    FormDraft {
        id: draft

        form: "settle/" + root.session.jobId + "/" + root.finding
        jobId: root.session.jobId
        session: root.session
        title: qsTr("Settle the finding")

        onReadyChanged: {
            if (ready && !begun && view.done !== "")
                fill({
                    "how": view.done
                });
        }
    }

    CautionBox {
        text: qsTr("Not fitted: %1").arg(view.notFitted.join("\n"))
        visible: view.notFitted.length > 0
        width: parent.width
    }

    Label {
        kind: Label.Name
        text: view.title
        width: parent.width
    }

    SeverityMark {
        severity: "unsafe"
        visible: view.unsafe
    }

    DraftEntry {
        draft: draft
        error: view.errors.how ?? ""
        label: qsTr("What was done")
        name: "how"
        page: root
        placeholder: qsTr("hose renewed, brake bled")
        width: parent.width
    }
}
