// The wire that a tap was taken for, enlarged, with its middle and both rims drawn.
//
//   source       the photo
//   at, points   place of the tap; the wire's middle: parts of the photo
//   across       its width, a part of the photo's width
// Qt 6.4 knows no members of a map or a list:
// qmllint disable type
import QtQuick
import Undercowl
import Undercowl.Style

Item {
    id: root

    property alias source: frame.source
    property point at: Qt.point(0.5, 0.5)
    property var points: []
    property real across: 0

    readonly property real wireSide: Theme.grid * 7

    Accessible.name: qsTr("The wire that was understood, enlarged")
    Accessible.role: Accessible.Graphic

    PhotoFrame {
        id: frame

        anchors.fill: parent
        centre: root.at
        description: ""
        ground: Theme.markDark
        zoom: root.across > 0 && wholeWidth > 0 ? Math.min(16, root.wireSide / (root.across * wholeWidth)) : 4
    }

    TracedPath {
        across: root.across * frame.wholeWidth * frame.zoom
        anchors.fill: parent
        clip: true
        dark: Theme.markDark
        light: Theme.markLight
        points: frame.ready ? root.points.map(place => frame.toItem(place.x, place.y)) : []
        thickness: Theme.hairline
    }

    Rectangle {
        anchors.fill: parent
        border.color: Theme.markLight
        border.width: Theme.stroke
        color: "transparent"
        radius: Theme.corner
    }
}
