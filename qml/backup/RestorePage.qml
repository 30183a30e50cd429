// A shop from its backup, into a folder of its own; or back to one that was left aside.
//
//   shops   which of them the app works on; null where that cannot be changed
//   file    a backup to begin with; empty: one is chosen here
import QtQuick
import Undercowl
import Undercowl.Style

ShopPage {
    id: root

    property ShopSwitch shops
    property string file: ""
    property bool elsewhere: false
    readonly property bool choosing: view.step === RestoreView.Choose
    readonly property bool underway: view.step === RestoreView.Working || view.step === RestoreView.Removing || view.step === RestoreView.Switching

    anyone: true
    layered: elsewhere || !choosing // what is under way ends by Stop, not by a stray way back
    title: qsTr("Bring a shop back")

    footer: [
        ProgressStrip {
            progress: view.step === RestoreView.Working ? view.progress : -1
            canCancel: view.step === RestoreView.Working
            text: view.step === RestoreView.Switching ? qsTr("Opening the shop")
                  : view.step === RestoreView.Removing ? qsTr("Removing")
                  : view.progress < 0.5 ? qsTr("Bringing back") : qsTr("Checking")
            visible: root.underway
            width: parent.width

            onCancelled: view.cancel()
        },
        ActionButton {
            enabled: !view.sealed || word.text !== ""
            kind: ActionButton.Main
            text: qsTr("Bring it back")
            visible: view.step === RestoreView.Backup && view.problem === ""
            width: parent.width

            onTriggered: view.bringBack(word.commit(), false)
        },
        ActionButton {
            kind: ActionButton.Main
            text: qsTr("Bring back what can be read")
            visible: view.step === RestoreView.Damaged
            width: parent.width

            onTriggered: view.bringBack(word.commit(), true)
        },
        ActionButton {
            kind: ActionButton.Main
            text: qsTr("Go on with this shop")
            visible: view.step === RestoreView.Partly || view.step === RestoreView.Shop
            width: parent.width

            onTriggered: view.goOn()
        },
        ActionButton {
            text: qsTr("Remove this shop")
            visible: view.removable
            width: parent.width

            onTriggered: view.askToRemove()
        },
        ActionButton {
            kind: ActionButton.Main
            text: qsTr("Keep it")
            visible: view.step === RestoreView.Remove
            width: parent.width

            onTriggered: view.chooseOther()
        },
        ActionButton {
            kind: ActionButton.Refuse
            text: qsTr("Remove it for good")
            visible: view.step === RestoreView.Remove
            width: parent.width

            onTriggered: view.remove()
        },
        ActionButton {
            text: qsTr("Choose another one")
            visible: !root.choosing && !root.underway && view.step !== RestoreView.Remove
            width: parent.width

            onTriggered: view.chooseOther()
        }
    ]

    Component.onCompleted: {
        if (file !== "")
            view.choose(file);
    }
    onClosesLayer: {
        if (!choosing)
            view.chooseOther();
        elsewhere = false;
    }

    RestoreView {
        id: view

        session: root.session
        shops: root.shops
    }

    Label {
        text: qsTr("What is on this device now is not overwritten. It stays in %1 and is found here again.").arg(view.here)
        width: parent.width
    }

    Label {
        text: qsTr("The app was started with a folder of its own. At its next start it opens that one again, unless it is told otherwise with --store.")
        visible: root.shops !== null && !root.shops.keeps
        width: parent.width
    }

    Panel {
        visible: !root.choosing
        width: parent.width

        Label {
            strong: true
            text: view.chosen
            width: parent.width
        }

        Label {
            kind: Label.Aside
            text: view.chosenDetail
            width: parent.width
        }
    }

    CautionBox {
        text: qsTr("Its jobs, photos and memos go with it. Nothing but a backup brings them back.")
        visible: view.step === RestoreView.Remove
        width: parent.width
    }

    CautionBox {
        text: view.problem
        visible: text !== ""
        width: parent.width
    }

    Label {
        strong: true
        text: view.result
        visible: text !== ""
        width: parent.width
    }

    TextEntry {
        id: word

        enabled: view.step === RestoreView.Backup
        error: view.passphraseError
        label: qsTr("Passphrase of this backup")
        visible: view.sealed && (view.step === RestoreView.Backup || view.step === RestoreView.Working)
        width: parent.width

        onEdited: view.retype()
    }

    Loader {
        active: root.choosing && root.elsewhere
        visible: active
        width: parent.width

        sourceComponent: FileChooser {
            names: ["*.backup"]
            nothing: qsTr("No backups here. Their names end in .backup.")

            onChosen: file => {
                view.choose(file);
                root.elsewhere = false;
            }
        }
    }

    RestoreLists {
        view: view
        visible: root.choosing && !root.elsewhere
        width: parent.width

        onElsewhere: root.elsewhere = true
    }
}
