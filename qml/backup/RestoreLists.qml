// The backups that were found, and the shops that lie beside the present one: one of them is chosen.
//
//   elsewhere()   the backup lies in another folder
// Qt 6.4 cannot bind a delegate to the ids around it:
// qmllint disable unqualified
import QtQuick
import Undercowl
import Undercowl.Style

Column {
    id: root

    required property RestoreView view

    signal elsewhere

    spacing: Theme.grid * 3

    Label {
        text: qsTr("The shop on this device can only be looked at. Of every entry, photo and memo in it that can still be read, and of the copies beside it, a new one can be made.")
        visible: root.view.damaged
        width: parent.width
    }

    ActionButton {
        text: qsTr("Make a new shop of what can be read")
        visible: root.view.damaged
        width: parent.width

        onTriggered: root.view.salvage()
    }

    SectionHeader {
        text: qsTr("Backups")
        width: parent.width
    }

    Label {
        text: root.view.looking ? qsTr("Looking for backups") : qsTr("None here. Put in the stick or the card that they are on, then open this page again.")
        tone: Theme.quiet
        visible: root.view.looking || root.view.backups.count === 0
        width: parent.width
    }

    Repeater {
        model: root.view.backups

        ListRow {
            id: backup

            required title
            required property string lineId
            required property string detail
            required property string mark

            aside: backup.detail
            iconName: backup.mark === "sealed" ? "lock" : backup.mark === "wrong" ? "caution" : "archive"
            width: parent?.width ?? 0

            onTriggered: root.view.choose(backup.lineId)
        }
    }

    ActionButton {
        text: qsTr("From another folder")
        width: parent.width

        onTriggered: root.elsewhere()
    }

    SectionHeader {
        text: qsTr("Other shops on this device")
        visible: root.view.earlier.count > 0
        width: parent.width
    }

    Repeater {
        model: root.view.earlier

        ListRow {
            id: shop

            required title
            required property string lineId
            required property string detail
            required property string mark

            aside: shop.detail
            iconName: shop.mark === "wrong" ? "caution" : "machine"
            width: parent?.width ?? 0

            onTriggered: root.view.chooseShop(shop.lineId)
        }
    }
}
