// The owner does not want something unsafe put right: who said so and how. It stands in the record in bold.
// Qt 6.4 knows no members of a url, a map or a list:
// qmllint disable type
import QtQuick
import Undercowl
import Undercowl.Style

ShopPage {
    id: root

    property string finding: ""

    title: qsTr("The owner says no")
    footer: ActionButton {
        kind: ActionButton.Main
        lift: true
        text: qsTr("Keep the refusal")
        width: parent.width

        onTriggered: {
            root.leaving();
            word.refuse(draft);
        }
    }

    OwnersWord {
        id: word

        finding: root.finding
        session: root.session

        onKept: root.leaves()
    }

    FormDraft {
        id: draft

        form: "refusal/" + root.session.jobId + "/" + root.finding
        jobId: root.session.jobId
        session: root.session
        title: qsTr("Refusal")

        onReadyChanged: {
            if (ready && !begun)
                fill({
                    "by": word.owner
                });
        }
    }

    CautionBox {
        text: qsTr("Unsafe: %1").arg(word.title)
        width: parent.width
    }

    Label {
        text: qsTr("The finding stays open. The record will say in bold that you told the owner, who refused, and on which day. "
                   + "Local law may forbid handing over an unsafe machine.")
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
        label: qsTr("In the owner's words")
        name: "note"
        page: root
        placeholder: qsTr("will fetch it with a trailer")
        width: parent.width
    }
}
