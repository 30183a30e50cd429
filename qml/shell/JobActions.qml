// The ways on from a job; the one that belongs to its moment is the main action.
import QtQuick
import Undercowl.Style

Column {
    id: root

    property string moment: ""

    readonly property bool arriving: moment === "take in" || moment === "look over"
    readonly property bool refitting: moment === "refit"
    readonly property bool ending: moment === "hand over" || moment === "prove" || moment === "done"
    readonly property bool stripNext: !arriving && !refitting && !ending

    signal opens(page: string, properties: var)
    signal photo(purpose: string)

    spacing: Theme.targetGap

    ActionButton {
        height: Theme.low ? Theme.liftOther : implicitHeight // beside a voice there is no more on a phone that lies
        kind: ActionButton.Main
        lift: true
        iconName: root.moment === "take in" ? "camera" : ""
        text: root.moment === "take in" ? qsTr("Photos as found") : root.arriving ? qsTr("Look over")
                                        : root.ending ? qsTr("Hand over") : root.refitting ? qsTr("Refit") : qsTr("Strip")
        width: parent.width

        onTriggered: {
            if (root.moment === "take in")
                root.photo("as found");
            else
                root.opens(root.arriving ? "LookOverPage" : root.ending ? "HandOverPage" : root.refitting ? "RefitPage"
                                                                                                          : "StripPage", {});
        }
    }

    Grid {
        id: grid

        readonly property real cell: (width - spacing * (columns - 1)) / columns

        columns: root.width >= 560 ? 4 : 2
        spacing: Theme.targetGap
        width: parent.width

        ActionButton {
            iconName: root.moment === "take in" ? "" : "camera"
            lift: true
            text: root.moment === "take in" ? qsTr("Look over") : qsTr("Photo")
            width: grid.cell

            onTriggered: {
                if (root.moment === "take in")
                    root.opens("LookOverPage", {});
                else
                    root.photo("other");
            }
        }

        ActionButton {
            lift: true
            text: root.stripNext ? qsTr("Refit") : qsTr("Strip")
            width: grid.cell

            onTriggered: root.opens(root.stripNext ? "RefitPage" : "StripPage", {})
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
