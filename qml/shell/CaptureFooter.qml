// The shutter, and the way out once something was taken.
import QtQuick
import Undercowl
import Undercowl.Style

Column {
    id: root

    required property PhotoCapture capture

    signal finished
    signal noted

    spacing: Theme.targetGap

    ActionButton {
        busy: root.capture.busy
        busyText: qsTr("Saving")
        enabled: root.capture.ready || root.capture.busy
        iconName: "camera"
        kind: ActionButton.Main
        lift: true
        text: qsTr("Shoot")
        visible: root.capture.hasCamera
        width: parent.width

        onTriggered: root.capture.shoot()
    }

    ActionButton {
        iconName: "edit"
        lift: true
        text: qsTr("Note to this photo")
        visible: root.capture.taken.count > 0
        width: parent.width

        onTriggered: root.noted()
    }

    ActionButton {
        lift: true
        text: root.capture.taken.count > 0 ? qsTr("Done, %n kept", "photos", root.capture.taken.count) : qsTr("Done")
        width: parent.width

        onTriggered: root.finished()
    }
}
