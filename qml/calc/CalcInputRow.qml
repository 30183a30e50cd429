// One input of a calculation: what is asked, why, and what stands.
//
//   title, detail, aside, more   as CalcView's inputs have them
//   mark     "given", "default", "open" or "needed": told in words
import QtQuick
import Undercowl.Style

Column {
    id: root

    required property string lineId
    required property string title
    required property string detail
    required property string aside
    required property string more
    required property string mark

    signal chosen(key: string)

    spacing: Theme.grid

    ListRow {
        aside: root.detail
        done: root.mark === "given" && root.more === ""
        remark: ""
        title: root.aside !== "" ? qsTr("%1: %2").arg(root.title).arg(root.aside) : root.title
        width: parent.width

        onTriggered: root.chosen(root.lineId)
    }

    RemedyLine {
        error: root.more
        hint: root.mark === "job" ? qsTr("from the job; tap to change") : root.mark === "default" ? qsTr("assumed; tap to change")
                                  : root.mark === "open" ? qsTr("may stay empty") : ""
        width: parent.width
    }
}
