// The shutter, what the device offers besides, and the way out once something was taken.
import QtQuick
import Undercowl
import Undercowl.Style

Column {
    id: root

    required property Camera camera
    required property PhotoCapture capture

    readonly property bool taken: capture.taken.count > 0

    signal finished
    signal noted

    spacing: Theme.targetGap

    CameraShutter {
        camera: root.camera
        capture: root.capture
        visible: root.capture.hasCamera
        width: parent.width
    }

    Flow {
        id: ways

        readonly property bool beside: root.taken && Theme.textScale < 1.2
        readonly property real each: beside ? (width - spacing) / 2 : width

        spacing: Theme.targetGap
        width: parent.width

        ActionButton {
            lift: true
            text: qsTr("Note to this photo")
            visible: root.taken
            width: ways.each

            onTriggered: root.noted()
        }

        ActionButton {
            lift: true
            text: root.taken ? qsTr("Done, %n kept", "photos", root.capture.taken.count) : qsTr("Done")
            width: ways.each

            onTriggered: root.finished()
        }
    }
}
