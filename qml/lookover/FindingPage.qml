// Noting a finding, or correcting one.
// Qt 6.4 knows no members of a url, a map or a list:
// qmllint disable type
import QtQuick
import Undercowl
import Undercowl.Style

ShopPage {
    id: root

    property string finding: ""
    property string round: "" // with a check: the finding answers it
    property string check: ""
    property string asked: "" // what that check asks for: "stand: springs back"
    readonly property list<string> severities: ["unsafe", "soon", "note"]

    listPage: "LookOverPage"
    title: finding === "" ? qsTr("New finding") : qsTr("Correct the finding")
    footer: ActionButton {
        kind: ActionButton.Main
        lift: true
        text: qsTr("Keep")
        width: parent.width

        onTriggered: {
            root.leaving();
            findings.noteFor(draft, root.round, root.check);
        }
    }

    Findings {
        id: findings

        session: root.session

        onNoted: root.leaves()
    }

    FormDraft {
        id: draft

        form: "finding/" + root.session.jobId + "/" + (root.check === "" ? root.finding : root.round + "/" + root.check)
        jobId: root.session.jobId
        session: root.session
        title: qsTr("Finding")

        onReadyChanged: {
            if (!ready || begun)
                return;
            if (root.finding !== "")
                fill(findings.known(root.finding));
            else if (root.asked.includes(":")) // what it is about, not how it should be
                fill({
                    "text": root.asked.slice(0, root.asked.indexOf(":") + 1) + " "
                });
        }
    }

    Label {
        text: qsTr("Asked for: %1").arg(root.asked)
        tone: Theme.quiet
        visible: root.asked !== ""
        width: parent.width
    }

    DraftEntry {
        draft: draft
        error: findings.errors.text ?? ""
        label: qsTr("What was found")
        name: "text"
        page: root
        placeholder: qsTr("front brake hose cracked at the banjo")
        width: parent.width
    }

    Choice {
        current: root.severities.indexOf(draft.values.severity ?? "")
        label: qsTr("How serious")
        options: [qsTr("Unsafe"), qsTr("Soon"), qsTr("Note")]
        width: parent.width

        onChosen: index => draft.set("severity", root.severities[index])
    }

    RemedyLine {
        error: findings.errors.severity ?? ""
        width: parent.width
    }

    DraftEntry {
        draft: draft
        label: qsTr("What to do about it")
        name: "toDo"
        page: root
        placeholder: qsTr("renew the hose, bleed the brake")
        width: parent.width
    }

    DraftEntry {
        draft: draft
        error: findings.errors.minutes ?? ""
        inputHints: Qt.ImhDigitsOnly
        label: qsTr("How long it will take, in minutes")
        name: "minutes"
        page: root
        placeholder: "45"
        width: parent.width
    }
}
