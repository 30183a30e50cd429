// The shutter, and beside it lamp and zoom where the device has them: by buttons, since two gloved fingers do not pinch. A small
// window has them in one row, so that the picture stays large; large text needs the room itself.
//
//   camera    of the device
//   capture   what the shutter releases
// Qt 6.4 knows no members of a type from another library:
// qmllint disable type
import QtQuick
import Undercowl
import Undercowl.Style

Item {
    id: root

    required property Camera camera
    required property PhotoCapture capture

    readonly property bool zooms: camera.mostZoom >= 2
    readonly property int tools: (camera.canLight ? 1 : 0) + (zooms ? 1 : 0)
    readonly property bool oneRow: tools === 0 || !Theme.roomy && Theme.textScale < 1.2
    readonly property real third: (width - 2 * Theme.targetGap) / 3
    readonly property real each: oneRow ? third : (width - (tools - 1) * Theme.targetGap) / Math.max(1, tools)
    readonly property real toolHeight: Math.max(torch.implicitHeight, zoom.implicitHeight, oneRow ? shutter.height : 0)

    // The next step, and after the last one back to all of the view.
    function nextZoom(): real {
        const next = camera.zoom * 2;
        return next > Math.min(camera.mostZoom, 4) ? 1 : next;
    }

    implicitHeight: Math.max(toolHeight, shutter.y + shutter.height)

    ActionButton {
        id: torch

        height: root.toolHeight
        iconName: "torch"
        lift: true
        text: root.camera.torch ? qsTr("Torch off") : qsTr("Torch on")
        visible: root.camera.canLight
        width: root.each

        onTriggered: root.camera.setTorch(!root.camera.torch)
    }

    ActionButton {
        id: shutter

        busy: root.capture.busy
        busyText: qsTr("Saving")
        enabled: root.capture.ready || root.capture.busy
        iconName: "camera"
        kind: ActionButton.Main
        lift: true
        text: qsTr("Shoot")
        width: root.oneRow ? parent.width - root.tools * (root.third + Theme.targetGap) : parent.width
        x: root.oneRow && root.camera.canLight ? root.third + Theme.targetGap : 0
        y: root.oneRow ? 0 : root.toolHeight + Theme.targetGap

        onTriggered: root.capture.shoot()
    }

    ActionButton {
        id: zoom

        height: root.toolHeight
        lift: true
        text: qsTr("Zoom %1x").arg(root.nextZoom())
        visible: root.zooms
        width: root.each
        x: parent.width - width

        onTriggered: root.camera.setZoom(root.nextZoom())
    }
}
