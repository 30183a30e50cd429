// The ways on from a job; the one that belongs to its moment is the main action.
import QtQuick
import Undercowl.Style

Column {
    id: root

    property string moment: ""

    readonly property bool refitting: moment === "refit"
    readonly property bool ending: moment === "hand over" || moment === "prove" || moment === "done"

    signal opens(page: string, properties: var)
    signal photo

    spacing: Theme.targetGap

    ActionButton {
        kind: ActionButton.Main
        lift: true
        text: root.ending ? qsTr("Hand over") : root.refitting ? qsTr("Refit") : qsTr("Strip")
        width: parent.width

        onTriggered: root.opens(root.ending ? "HandOverPage" : root.refitting ? "RefitPage" : "StripPage", {})
    }

    Grid {
        id: grid

        readonly property real cell: (width - spacing * (columns - 1)) / columns

        columns: root.width >= 560 ? 4 : 2
        spacing: Theme.targetGap
        width: parent.width

        ActionButton {
            iconName: "camera"
            lift: true
            text: qsTr("Photo")
            width: grid.cell

            onTriggered: root.photo()
        }

        ActionButton {
            lift: true
            text: root.refitting || root.ending ? qsTr("Strip") : qsTr("Refit")
            width: grid.cell

            onTriggered: root.opens(root.refitting || root.ending ? "StripPage" : "RefitPage", {})
        }

        ActionButton {
            lift: true
            text: qsTr("Measure")
            width: grid.cell

            onTriggered: root.opens("MeasurePage", {})
        }

        ActionButton {
            lift: true
            text: root.ending ? qsTr("Refit") : qsTr("Hand over")
            width: grid.cell

            onTriggered: root.opens(root.ending ? "RefitPage" : "HandOverPage", {})
        }
    }
}
