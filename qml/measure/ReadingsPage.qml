// The readings of the job, newest first.
import QtQuick
import Undercowl
import Undercowl.Style

ShopPage {
    id: root

    title: qsTr("Readings")
    tools: IconButton {
        iconName: "calculate"
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

    CurvePlot {
        curve: measure.course
        width: parent.width
    }

    Repeater {
        model: measure.readings

        ReadingRow {
            width: parent?.width ?? 0

            onFollowed: what => measure.follow(what)
        }
    }
}
