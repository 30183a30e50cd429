// The value as it is typed, and its unit, which a touch changes to the next one of the same quantity.
// Qt 6.4 knows no members of a url, a map or a list:
// qmllint disable type
import QtQuick
import Undercowl
import Undercowl.Style

Column {
    id: root

    required property FormDraft draft
    required property MeasureView measure
    property bool targeting: true // the target and the mean are shown: on a small screen they make room for the verdict

    function press(key: string) {
        value.press(key);
    }

    function erase() {
        value.erase();
    }

    function clear() {
        value.clear();
    }

    spacing: Theme.grid

    Row {
        spacing: Theme.targetGap
        width: parent.width

        NumberEntry {
            id: value

            anchors.verticalCenter: parent.verticalCenter
            label: qsTr("Value in %1").arg(root.measure.unit)
            quiet: true
            value: root.draft.values.value ?? ""
            width: parent.width - toggle.width - parent.spacing

            onEdited: text => root.draft.set("value", text)
        }

        ActionButton {
            id: toggle

            anchors.verticalCenter: parent.verticalCenter
            description: qsTr("changes the unit")
            lift: true
            text: root.measure.unit === "" ? qsTr("number") : root.measure.unit
            width: Theme.liftKeyWidth

            onTriggered: root.measure.toggleUnit()
        }
    }

    Label {
        kind: Label.Title
        text: root.measure.target
        visible: root.targeting && text !== ""
        width: parent.width
    }

    RemedyLine {
        error: root.measure.errors.value ?? ""
        hint: root.targeting ? root.measure.mean : ""
        width: parent.width
    }
}
