// Whose machine it is. Stays on this phone and in the records that are handed over.
import QtQuick
import Undercowl
import Undercowl.Style

Column {
    id: root

    required property FormDraft draft
    required property ShopPage page

    spacing: Theme.grid * 3

    SectionHeader {
        text: qsTr("Owner")
        width: parent.width
    }

    DraftEntry {
        draft: root.draft
        label: qsTr("Owner's name")
        name: "owner"
        page: root.page
        width: parent.width
    }

    DraftEntry {
        draft: root.draft
        inputHints: Qt.ImhDialableCharactersOnly
        label: qsTr("Phone")
        name: "phone"
        page: root.page
        width: parent.width
    }

    DraftEntry {
        draft: root.draft
        inputHints: Qt.ImhEmailCharactersOnly
        label: qsTr("Mail")
        name: "mail"
        page: root.page
        width: parent.width
    }
}
