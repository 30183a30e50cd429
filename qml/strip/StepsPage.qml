// The strip steps so far; each can be corrected.
// Qt 6.4 knows no members of a url, a map or a list, cannot bind a delegate to the ids around it:
// qmllint disable type unqualified
import QtQuick
import Undercowl
import Undercowl.Style

ShopPage {
    id: root

    aside: strip.steps.count.toString()
    title: qsTr("Steps so far")

    StripView {
        id: strip

        session: root.session
    }

    EmptyState {
        iconName: "step"
        text: qsTr("Each step that is stripped stands here, the last one first.")
        title: qsTr("Nothing stripped yet")
        visible: strip.ready && strip.steps.count === 0
        width: parent.width
    }

    Repeater {
        model: strip.steps

        ListRow {
            required title
            required property string lineId
            required property string detail
            required property bool on

            aside: [detail, on ? qsTr("refitted") : ""].filter(word => word !== "").join(", ")
            done: on
            iconName: "step"
            width: parent?.width ?? 0

            onTriggered: root.opens("StripPage", {
                "step": lineId
            })
        }
    }
}
