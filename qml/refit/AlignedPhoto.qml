// A photo laid so that the line through its places has a wanted length and direction, with marks at places.
//
//   source       where it lies
//   laid         what is in the middle, how it is turned and how long the line is: see CompareView
//   lineLength   wanted length of that line, dp
//   marks        list of { x, y, label }, parts of the photo
//   label        in the corner: which photo it is
// Qt 6.4 knows no members of a map, cannot bind a delegate to the ids around it:
// qmllint disable type unqualified
import QtQuick
import Undercowl.Style

Item {
    id: root

    property url source
    property var laid: ({})
    property real lineLength: 0
    property var marks: []
    property string label: ""

    readonly property real middleX: laid.x ?? 0.5
    readonly property real middleY: laid.y ?? 0.5
    readonly property real turn: laid.turn ?? 0
    readonly property real photoWidth: (laid.span ?? 0) > 0 ? lineLength / laid.span : width
    readonly property real photoHeight: picture.implicitWidth > 0 ? photoWidth * picture.implicitHeight / picture.implicitWidth : photoWidth * 3 / 4
    readonly property real cosine: Math.cos(turn * Math.PI / 180)
    readonly property real sine: Math.sin(turn * Math.PI / 180)

    Accessible.name: label
    Accessible.role: Accessible.Graphic
    clip: true

    Rectangle {
        anchors.fill: parent
        color: Theme.panel
    }

    Item {
        // Its origin is the middle of the frame and of the line.
        rotation: root.turn
        x: root.width / 2
        y: root.height / 2

        Image {
            id: picture

            asynchronous: true
            autoTransform: true
            cache: false
            height: root.photoHeight
            source: root.source
            width: root.photoWidth
            x: -root.middleX * root.photoWidth
            y: -root.middleY * root.photoHeight
        }
    }

    Repeater {
        model: picture.status === Image.Ready ? root.marks : []

        PhotoMark {
            required property var modelData

            readonly property real sideways: (modelData.x - root.middleX) * root.photoWidth
            readonly property real downwards: (modelData.y - root.middleY) * root.photoHeight

            label: modelData.label ?? ""
            x: root.width / 2 + sideways * root.cosine - downwards * root.sine - width / 2
            y: root.height / 2 + sideways * root.sine + downwards * root.cosine - height / 2
        }
    }

    Label {
        anchors.left: parent.left
        anchors.margins: Theme.grid * 2
        anchors.top: parent.top
        leftPadding: Theme.grid * 2
        rightPadding: Theme.grid * 2
        strong: true
        text: root.label
        tone: Theme.markLight

        Rectangle {
            anchors.fill: parent
            color: Theme.markDark
            radius: Theme.grid
            z: -1
        }
    }

    RoundedMask {
        anchors.fill: parent
        color: Theme.ground
        radius: Theme.corner
    }
}
