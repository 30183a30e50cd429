// A photo to stroke and tap on. A short touch is a tap, a longer one a stroke; it never scrolls the page.
//
//   source, marks, description, crop, zoom, centre   see PhotoFrame
//   path       of the wire that was followed, parts of the photo
//   across     its width, a part of the photo's width
//   loupe      shows that wire enlarged, on the other side of the photo than the thumb
//   outlines   of more wires: see StrokeView
//   busy       a reading is under way: touches are ignored
//   stroked(points), tapped(x, y)   parts of the photo
// Qt 6.4 cannot bind a delegate to the ids around it:
// qmllint disable unqualified
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
    property real across: 0
    property bool loupe: false
    property var outlines: []
    property bool busy: false
    property var drawn: []

    readonly property real loupeSide: Math.max(0, Math.min(height - 2 * Theme.grid, width * 0.45))
    readonly property int stepLength: Theme.grid * 2
    readonly property int shortest: Theme.grid * 6

    signal stroked(points: var)
    signal tapped(x: real, y: real)

    function within(x: real, y: real): point {
        const place = frame.toPhoto(x, y);
        return Qt.point(Math.max(0, Math.min(1, place.x)), Math.max(0, Math.min(1, place.y)));
    }

    // Of the wire, to where it was tapped.
    function nearest(): point {
        const mark = marks.length > 0 ? marks[marks.length - 1] : path[0];
        const away = place => Math.hypot(place.x - mark.x, place.y - mark.y);
        return path.reduce((best, place) => away(place) < away(best) ? place : best);
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

    Repeater {
        model: frame.ready ? root.outlines : []

        TracedPath {
            required property var modelData

            across: modelData.accepted ? modelData.across * frame.wholeWidth * frame.zoom : 0
            anchors.fill: parent
            dark: Theme.markDark
            light: modelData.accepted ? Theme.act : Theme.markLight
            opacity: modelData.perhaps && !modelData.accepted ? 0.6 : 1
            points: modelData.points.map(place => frame.toItem(place.x, place.y))
            thickness: modelData.perhaps ? Theme.hairline : Theme.stroke
        }
    }

    TracedPath {
        across: root.across * frame.wholeWidth * frame.zoom
        anchors.fill: parent
        dark: Theme.markDark
        light: Theme.markLight
        points: frame.ready ? root.path.map(place => frame.toItem(place.x, place.y)) : []
        thickness: root.loupe ? Theme.hairline : Theme.stroke
    }

    // The thumb is at the wire, so the loupe is at the other side.
    WireLoupe {
        readonly property bool wanted: root.loupe && frame.ready && root.path.length > 1
        readonly property bool wireIsLeft: frame.toItem(at.x, at.y).x < root.width / 2

        across: root.across
        at: wanted ? root.nearest() : Qt.point(0.5, 0.5)
        height: root.loupeSide
        points: root.path
        source: wanted ? root.source : ""
        visible: wanted
        width: root.loupeSide
        x: wireIsLeft ? root.width - root.loupeSide - Theme.grid : Theme.grid
        y: Theme.grid
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
