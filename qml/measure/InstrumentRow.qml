// One instrument: what it is and when it is to be calibrated; overdue in words, with a mark.
import QtQuick
import Undercowl.Style

Column {
    id: root

    required property string lineId
    required property string title
    required property string aside
    required property string detail
    required property string mark

    signal chosen(id: string)

    spacing: Theme.grid

    ListRow {
        aside: root.mark === "" ? root.aside + "\n" + root.detail : root.aside
        iconName: "gauge"
        title: root.title
        width: parent.width

        onTriggered: root.chosen(root.lineId)
    }

    CautionBox {
        text: root.detail
        visible: root.mark !== ""
        width: parent.width
    }
}
