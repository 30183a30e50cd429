// What is to be looked at again on machines that left, by day.
// Qt 6.4 cannot bind a delegate to the ids around it:
// qmllint disable unqualified
import QtQuick
import Undercowl
import Undercowl.Style

ShopPage {
    id: root

    title: qsTr("Rechecks due")

    DueView {
        id: view

        session: root.session
    }

    EmptyState {
        iconName: "calendar"
        text: qsTr("Rechecks with a number of days stand here from the hand-over on.")
        title: qsTr("Nothing is due")
        visible: view.ready && view.lines.count === 0
        width: parent.width
    }

    Repeater {
        model: view.lines

        ListRow {
            id: row

            required title
            required property string lineId
            required property string detail
            required property string mark

            aside: row.detail
            iconName: row.mark === "due" ? "caution" : "calendar"
            remark: row.mark === "due" ? qsTr("due") : ""
            width: parent?.width ?? 0

            onTriggered: {
                root.session.openJob(row.lineId);
                root.opens("RoadPage", {});
            }
        }
    }
}
