// The connectors, loose terminals, splices and earths of a step, or of the whole job.
//
//   step       strip step; empty for the whole job
//   refitting  the wires are read back instead of read
// Qt 6.4 knows no members of a url, a map or a list, cannot bind a delegate to the ids around it:
// qmllint disable type unqualified
import QtQuick
import Undercowl
import Undercowl.Style

ShopPage {
    id: root

    property string step: ""
    property bool refitting: false

    title: refitting ? qsTr("Read wires back") : qsTr("Wires")
    footer: ActionButton {
        iconName: "connector"
        kind: ActionButton.Main
        lift: true
        text: qsTr("New connector")
        visible: !root.refitting
        width: parent.width

        onTriggered: root.opens("GatheringPage", {
            "step": root.step
        })
    }

    GatheringList {
        id: list

        session: root.session
        step: root.step
    }

    EmptyState {
        iconName: "connector"
        text: qsTr("A connector, a row of loose terminals, a splice or a shared earth: say what it is before it is unplugged.")
        title: qsTr("No wires mapped yet")
        visible: list.ready && list.lines.count === 0
        width: parent.width
    }

    Repeater {
        model: list.lines

        ListRow {
            required title
            required property string lineId
            required property string detail
            required property string more

            aside: [detail, more].join("; ")
            iconName: "connector"
            width: parent?.width ?? 0

            onTriggered: root.opens(root.refitting ? "ReadBackPage" : "GatheringPage", {
                "gathering": lineId
            })
        }
    }
}
