// The strip steps so far; each can be corrected.
// Qt 6.4 knows no members of a url, a map or a list:
// qmllint disable type
import QtQuick
import Undercowl
import Undercowl.Style

ShopPage {
    id: root

    aside: strip.steps.count.toString()
    lift: true
    title: qsTr("Steps so far")

    StripView {
        id: strip

        session: root.session
    }

    StepList {
        doneWord: qsTr("refitted")
        model: strip.steps
        parent: root.scroller

        onPicked: id => root.opens("StripPage", {
            "step": id
        })

        EmptyState {
            iconName: "step"
            text: qsTr("Each step that is stripped stands here, the last one first.")
            title: qsTr("Nothing stripped yet")
            visible: strip.ready && strip.steps.count === 0
            width: parent.width
        }
    }
}
