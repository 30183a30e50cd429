// The whole shop into one file: onto a stick, a card or another place on this device.
// Qt 6.4 knows no members of a url, a map or a list:
// qmllint disable type
import QtQuick
import Undercowl
import Undercowl.Style

ShopPage {
    id: root

    property bool onlyNew: false
    readonly property string fault: backup.passphraseProblem(first.text, second.text)

    title: qsTr("Backup")

    footer: [
        ProgressStrip {
            progress: backup.progress
            text: backup.progress < 0.5 ? qsTr("Writing") : qsTr("Reading it again")
            visible: backup.writing
            width: parent.width

            onCancelled: backup.cancel()
        },
        ActionButton {
            enabled: root.fault === ""
            text: first.text === "" ? qsTr("Back up now") : qsTr("Back up, sealed")
            visible: !backup.writing
            width: parent.width

            onTriggered: backup.write(first.commit(), root.onlyNew)
        }
    ]

    BackupView {
        id: backup

        session: root.session
    }

    Label {
        text: qsTr("Last copy of the entries on this device: %1. It does not help when the phone is lost: "
                   + "put the whole shop into another place now and then.").arg(backup.lastCopy)
        width: parent.width
    }

    Panel {
        visible: backup.result !== ""
        width: parent.width

        Label {
            text: backup.result
            width: parent.width
        }
    }

    Choice {
        current: backup.place
        label: qsTr("Where to")
        options: backup.places
        width: parent.width

        onChosen: index => backup.place = index
    }

    Choice {
        current: root.onlyNew ? 1 : 0
        label: qsTr("Photos and memos")
        options: [qsTr("All"), qsTr("Only new ones")]
        visible: backup.here > 0
        width: parent.width

        onChosen: index => root.onlyNew = index === 1
    }

    Label {
        text: qsTr("The backups that are there already are needed too when the shop is brought back.")
        visible: root.onlyNew && backup.here > 0
        width: parent.width
    }

    TextEntry {
        id: first

        hint: qsTr("Without one, whoever finds the file can read it. A forgotten one cannot be got round.")
        label: qsTr("Passphrase, if it is to be sealed")
        width: parent.width
    }

    TextEntry {
        id: second

        error: first.text === "" ? "" : root.fault
        label: qsTr("The same again")
        visible: first.text !== ""
        width: parent.width
    }

    ActionButton {
        enabled: !backup.writing
        text: qsTr("Bring a shop back")
        width: parent.width

        onTriggered: root.opens("RestorePage", {})
    }
}
