// A photo to stroke and tap on. A short touch is a tap, a longer one a stroke; it never scrolls the page.
//
//   source, marks, description, crop, zoom, centre   see PhotoFrame
//   path       of the wire that was followed, parts of the photo
//   busy       a reading is under way: touches are ignored
//   stroked(points), tapped(x, y)   parts of the photo
import QtQuick
import Undercowl
import Undercowl.Style

Item {
    id: root

    property alias source: frame.source
    property alias marks: frame.marks
    property alias description: frame.description
    property alias crop: frame.crop
    property alias zoom: frame.zoom
    property alias centre: frame.centre
    property var path: []
    property bool busy: false
    property var drawn: []

    readonly property int stepLength: Theme.grid * 2
    readonly property int shortest: Theme.grid * 6

    signal stroked(points: var)
    signal tapped(x: real, y: real)

    function within(x: real, y: real): point {
        const place = frame.toPhoto(x, y);
        return Qt.point(Math.max(0, Math.min(1, place.x)), Math.max(0, Math.min(1, place.y)));
    }

    function finish() {
        const first = drawn[0];
        const last = drawn[drawn.length - 1];
        const far = Math.hypot(last.x - first.x, last.y - first.y) >= shortest;
        const points = drawn.map(place => root.within(place.x, place.y));
        drawn = [];
        if (far)
            stroked(points);
        else
            tapped(points[0].x, points[0].y);
    }

    implicitHeight: width * 3 / 4
    implicitWidth: Theme.liftKeyWidth * 3

    PhotoFrame {
        id: frame

        anchors.fill: parent
        crop: false
        description: qsTr("Photo of the wires")
    }

    TracedPath {
        anchors.fill: parent
        dark: Theme.markDark
        light: Theme.markLight
        points: frame.ready ? root.path.map(place => frame.toItem(place.x, place.y)) : []
        thickness: Theme.stroke
    }

    TracedPath {
        anchors.fill: parent
        dark: Theme.markDark
        light: Theme.markLight
        points: root.drawn
        thickness: Theme.stroke * 2
    }

    MouseArea {
        anchors.fill: parent
        enabled: frame.ready && !root.busy
        preventStealing: true

        onCanceled: root.drawn = []
        onPositionChanged: mouse => {
            const last = root.drawn[root.drawn.length - 1];
            if (last !== undefined && Math.hypot(mouse.x - last.x, mouse.y - last.y) >= root.stepLength)
                root.drawn = root.drawn.concat([Qt.point(mouse.x, mouse.y)]);
        }
        onPressed: mouse => root.drawn = [Qt.point(mouse.x, mouse.y)]
        onReleased: mouse => {
            if (root.drawn.length === 0)
                return;
            root.drawn = root.drawn.concat([Qt.point(mouse.x, mouse.y)]);
            root.finish();
        }
    }
}
