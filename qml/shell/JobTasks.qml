// The tasks of a job: one may wait for a part while another goes on.
// Qt 6.4 knows no members of a url, a map or a list, cannot bind a delegate to the ids around it:
// qmllint disable type unqualified
import QtQuick
import Undercowl
import Undercowl.Style

Column {
    id: root

    required property JobView job
    property string holding: ""

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

            aside: task.mark === "waiting" ? qsTr("waits for %1; tap to go on").arg(task.detail) : qsTr("tap to let it wait")
            iconName: task.mark === "waiting" ? "clock" : "tools"
            opens: false
            width: parent?.width ?? 0

            onTriggered: {
                if (task.mark === "waiting")
                    root.job.resumeTask(task.lineId);
                else
                    root.holding = root.holding === task.lineId ? "" : task.lineId;
            }
        }
    }

    TextEntry {
        id: reason

        error: root.job.errors.waitingFor ?? ""
        label: qsTr("What does it wait for?")
        placeholder: qsTr("brake shoes, on order")
        visible: root.holding !== ""
        width: parent.width
    }

    ActionButton {
        text: qsTr("Let it wait")
        visible: root.holding !== ""
        width: parent.width

        onTriggered: root.job.holdTask(root.holding, reason.commit())
    }

    Connections {
        function onTaskSaid() {
            root.holding = "";
            reason.clear();
        }

        target: root.job
    }
}
