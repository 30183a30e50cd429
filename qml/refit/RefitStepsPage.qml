// All refit steps in their order; tasks that wait are marked, any step can be chosen.
// Qt 6.4 cannot bind a delegate to the ids around it:
// qmllint disable unqualified
import QtQuick
import Undercowl
import Undercowl.Style

ShopPage {
    id: root

    title: qsTr("Refit steps")

    RefitView {
        id: refit

        session: root.session
    }

    Repeater {
        model: refit.steps

        ListRow {
            required title
            required property string lineId
            required property string detail
            required property string mark
            required property bool on
            required property var model

            aside: mark === "waiting" ? qsTr("waits for %1").arg(model.aside) : detail
            done: on
            iconName: mark === "waiting" ? "clock" : "step"
            remark: on ? qsTr("done") : ""
            width: parent?.width ?? 0

            onTriggered: root.opens("RefitPage", {
                "step": lineId
            })
        }
    }
}
