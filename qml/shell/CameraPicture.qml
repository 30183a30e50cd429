// What the camera sees, with what is said while it is aimed: a tap focuses there, a line lies level where the device knows, and
// words say what would spoil the photo.
//
//   camera, level   of the device; level may be null
//   hints           what is said
//   focusOn(at)     as a tap on this place of the item
// Qt 6.4 knows no members of a type from another library:
// qmllint disable type
import QtQuick
import Undercowl
import Undercowl.Style

Item {
    id: root

    required property Camera camera
    required property CameraHints hints
    property Level level

    readonly property bool levelKnown: level !== null && level.known
    readonly property bool isLevel: levelKnown && Math.abs(level.tilt) < 1.5
    readonly property real leastHeight: Theme.liftMain + (said.visible ? said.height : 0) // words never hide all of it

    function focusOn(at: point) {
        if (!camera.canFocus)
            return;
        camera.focusAt(view.inPicture(at));
        ring.x = at.x - ring.width / 2;
        ring.y = at.y - ring.height / 2;
        shown.restart();
    }

    Accessible.name: qsTr("Picture of the camera")
    Accessible.role: Accessible.Graphic
    clip: true

    CameraView {
        id: view

        anchors.fill: parent
        camera: root.camera
    }

    TapHandler {
        onTapped: eventPoint => root.focusOn(eventPoint.position)
    }

    PhotoMark {
        id: ring

        visible: shown.running
    }

    Timer {
        id: shown

        interval: Theme.undoTime / 4
    }

    // Two marks that stay, and between them a line that turns with the phone: level when they are one line.
    Item {
        anchors.centerIn: parent
        height: Theme.stroke * 3
        visible: root.levelKnown
        width: Math.min(parent.width, parent.height) * 0.6

        Repeater {
            model: 2

            Rectangle {
                required property int index

                border.color: Theme.markDark
                border.width: Theme.stroke
                color: Theme.markLight
                height: Theme.stroke * 3
                width: Theme.grid * 8
                x: index === 0 ? -width - Theme.stroke : (parent as Item).width + Theme.stroke
            }
        }

        Rectangle {
            anchors.fill: parent
            border.color: Theme.markDark
            border.width: Theme.stroke
            color: Theme.markLight
            rotation: root.level === null ? 0 : -root.level.tilt
        }
    }

    Rectangle {
        anchors.margins: Theme.grid * 2
        anchors.right: parent.right
        anchors.top: parent.top
        color: Theme.panel
        height: zoomed.height + Theme.grid * 2
        radius: Theme.smallCorner
        visible: root.camera.zoom > 1
        width: zoomed.width + Theme.grid * 4

        Label {
            id: zoomed

            anchors.centerIn: parent
            kind: Label.Title
            text: qsTr("%1x").arg(root.camera.zoom)
        }
    }

    Rectangle {
        id: said

        anchors.bottom: parent.bottom
        color: Theme.panel
        height: words.height + Theme.grid * 4
        visible: root.hints.words !== ""
        width: parent.width

        Label {
            id: words

            Accessible.role: Accessible.AlertMessage
            anchors.centerIn: parent
            kind: Theme.textScale < 1.5 ? Label.Title : Label.Body
            text: root.hints.words
            tone: Theme.caution
            width: parent.width - Theme.margin * 2
        }
    }
}
