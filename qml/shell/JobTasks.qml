// The tasks of a job: one may wait for a part while another goes on.
// Qt 6.4 knows no members of a url, a map or a list, cannot bind a delegate to the ids around it:
// qmllint disable type unqualified
import QtQuick
import Undercowl
import Undercowl.Style

Column {
    id: root

    required property JobView job

    signal opened(task: string)

    spacing: Theme.grid * 3

    SectionHeader {
        text: qsTr("Tasks")
        visible: root.job.tasks.count > 0
        width: parent.width
    }

    Repeater {
        model: root.job.tasks

        ListRow {
            id: task

            required title
            required property string lineId
            required property string detail
            required property string mark
            required property bool on

            aside: task.detail
            done: task.on
            iconName: task.mark === "waiting" || task.mark === "running" ? "clock" : "tools"
            width: parent?.width ?? 0

            onTriggered: root.opened(task.lineId)
        }
    }
}
