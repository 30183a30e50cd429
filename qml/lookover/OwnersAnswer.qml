// Who answered, and how.
// Qt 6.4 knows no members of a url, a map or a list:
// qmllint disable type
import QtQuick
import Undercowl
import Undercowl.Style

Column {
    id: root

    required property OwnersWord word
    required property FormDraft draft
    required property ShopPage page

    spacing: Theme.grid * 3

    DraftEntry {
        draft: root.draft
        error: root.word.errors.by ?? ""
        label: qsTr("Who said so")
        name: "by"
        page: root.page
        width: parent.width
    }

    Choice {
        current: parseInt(root.draft.values.way ?? "-1")
        label: qsTr("How")
        options: root.word.ways
        width: parent.width

        onChosen: index => root.draft.set("way", String(index))
    }

    RemedyLine {
        error: root.word.errors.way ?? ""
        width: parent.width
    }
}
