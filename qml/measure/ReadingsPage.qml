// The readings of the job, newest first. Beside the keypad they are for looking at: there is enough to touch.
// Qt 6.4 cannot bind a delegate to the ids around it:
// qmllint disable unqualified
import QtQuick
import Undercowl
import Undercowl.Style

ShopPage {
    id: root

    property string followed: "" // id of the reading whose curve is shown

    lift: true
    title: qsTr("Readings")
    tools: PageTool {
        iconName: "calculate"
        offered: !root.aList
        text: qsTr("Calculations")

        onTriggered: root.opens("CalcListPage", {})
    }

    MeasureView {
        id: measure

        session: root.session
    }

    EmptyState {
        iconName: "gauge"
        text: qsTr("Each value that is kept stands here with its limits and its verdict.")
        title: qsTr("Nothing measured yet")
        visible: measure.ready && measure.readings.count === 0
        width: parent.width
    }

    Repeater {
        model: measure.readings

        ReadingRow {
            id: row

            course: measure.course
            enabled: !root.aList
            open: root.followed === row.lineId
            width: parent?.width ?? 0

            onTriggered: {
                root.followed = row.open ? "" : row.lineId;
                measure.follow(row.title);
            }
            onWithdrawn: measure.withdraw(row.lineId)
        }
    }
}
