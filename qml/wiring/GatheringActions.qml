// What can be done with a gathering.
// Qt 6.4 knows no members of a url, a map or a list:
// qmllint disable type
import QtQuick
import Undercowl
import Undercowl.Style

Column {
    id: root

    required property GatheringView view

    readonly property real half: (width - Theme.targetGap) / 2
    readonly property bool pictured: view.photo.toString() !== ""

    signal strokes
    signal photo
    signal readsBack

    spacing: Theme.targetGap

    ActionButton {
        iconName: root.pictured ? "wire" : "camera"
        kind: ActionButton.Main
        lift: true
        text: root.pictured ? qsTr("Read the wires") : qsTr("Photo")
        width: parent.width

        onTriggered: root.pictured ? root.strokes() : root.photo()
    }

    Row {
        spacing: Theme.targetGap
        visible: root.pictured

        ActionButton {
            iconName: "camera"
            lift: true
            text: qsTr("Photo")
            width: root.half

            onTriggered: root.photo()
        }

        ActionButton {
            enabled: root.view.found > 0
            lift: true
            text: qsTr("Read back")
            width: root.half

            onTriggered: root.readsBack()
        }
    }
}
