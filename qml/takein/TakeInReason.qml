// Why the machine is here, what works and what does not.
// Qt 6.4 knows no members of a url, a map or a list:
// qmllint disable type
import QtQuick
import Undercowl
import Undercowl.Style

Column {
    id: root

    required property FormDraft draft
    required property TakeIn form
    required property ShopPage page

    spacing: Theme.grid * 3

    DraftEntry {
        draft: root.draft
        error: root.form.errors.reason ?? ""
        label: qsTr("Why it is here")
        name: "reason"
        page: root.page
        placeholder: qsTr("no lights, stood six winters")
        width: parent.width
    }

    DraftEntry {
        draft: root.draft
        label: qsTr("Keys and papers received")
        name: "received"
        page: root.page
        placeholder: qsTr("two keys, registration")
        width: parent.width
    }

    DraftEntry {
        draft: root.draft
        label: qsTr("What works")
        name: "works"
        page: root.page
        placeholder: qsTr("kicks over, front brake holds")
        width: parent.width
    }

    DraftEntry {
        draft: root.draft
        label: qsTr("What does not work")
        name: "worksNot"
        page: root.page
        placeholder: qsTr("horn, all lamps")
        width: parent.width
    }
}
