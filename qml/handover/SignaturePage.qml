// The owner signs with a finger.
// Qt 6.4 knows no members of a url, a map or a list:
// qmllint disable type
import QtQuick
import Undercowl
import Undercowl.Style

ShopPage {
    id: root

    title: qsTr("Signature")
    footer: [
        ActionButton {
            kind: ActionButton.Main
            lift: true
            text: qsTr("Keep the signature")
            width: parent.width

            onTriggered: {
                root.leaving();
                view.keep(pad, draft);
            }
        },
        ActionButton {
            enabled: !pad.empty
            lift: true
            text: qsTr("Wipe it")
            width: parent.width

            onTriggered: pad.clear()
        }
    ]

    SignatureView {
        id: view

        session: root.session

        onKept: {
            draft.said();
            root.leaves();
        }
    }

    FormDraft {
        id: draft

        form: "signature/" + root.session.jobId
        jobId: root.session.jobId
        session: root.session
        title: root.title

        onReadyChanged: {
            if (ready && !begun)
                fill({
                    "name": view.owner
                });
        }
    }

    Label {
        text: qsTr("The machine was handed over with its record, and its cautions were read.")
        width: parent.width
    }

    DraftEntry {
        draft: draft
        error: view.errors.name ?? ""
        label: qsTr("Who signs")
        name: "name"
        page: root
        width: parent.width
    }

    Rectangle {
        border.color: view.errors.pad === undefined ? Theme.line : Theme.stop
        border.width: Theme.hairline
        color: Theme.panel
        height: Math.max(Theme.liftMain, width / 3)
        radius: Theme.corner
        width: parent.width

        SignaturePad {
            id: pad

            Accessible.name: qsTr("Field to sign in")
            Accessible.role: Accessible.Canvas
            anchors.fill: parent
            anchors.margins: Theme.grid
            ink: Theme.ink
        }
    }

    RemedyLine {
        error: view.errors.pad ?? ""
        width: parent.width
    }

    Label {
        text: qsTr("Signed: %1").arg(view.signedBy)
        tone: Theme.quiet
        visible: view.signedBy !== ""
        width: parent.width
    }

    Image {
        fillMode: Image.PreserveAspectFit
        height: visible ? Theme.liftMain : 0
        source: view.picture
        visible: view.signedBy !== ""
        width: parent.width
    }
}
