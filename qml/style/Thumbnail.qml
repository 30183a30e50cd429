// A photo so small that it only tells which one it is: made small off the touch thread, and kept for the next look. Its
// corners are not rounded as those of a PhotoFrame: many of them are drawn anew in each frame of a list that is scrolled.
//
//   source        where it lies
//   description   for screen readers
//   mark          icon in its corner that tells a state; empty for none
//   markColor
//   ground        what lies around it
// Qt 6.4 cannot bind a component to the ids around it:
// qmllint disable unqualified
import QtQuick
import Undercowl.Style

Rectangle {
    id: root

    property url source
    property string description: ""
    property string mark: ""
    property color markColor: Theme.quiet
    property color ground: Theme.panel

    Accessible.name: description
    Accessible.role: Accessible.Graphic
    color: picture.status === Image.Ready ? "transparent" : Theme.raised
    implicitHeight: Theme.touch
    implicitWidth: height * 4 / 3

    Image {
        id: picture

        anchors.fill: parent
        asynchronous: true
        autoTransform: true
        fillMode: Image.PreserveAspectCrop
        // Drawn as 1 is, but not taken for something that hides what lies under it: without a graphics chip the hole of each
        // photo would be cut out of all that is drawn below, which takes longer than to draw below the photos too.
        opacity: 0.999
        source: root.source
        sourceSize.height: height * Screen.devicePixelRatio
        sourceSize.width: width * Screen.devicePixelRatio
    }

    Loader {
        active: picture.status === Image.Error
        anchors.centerIn: parent

        sourceComponent: Icon {
            color: Theme.caution
            height: width
            name: "close-call"
            width: Theme.icon
        }
    }

    Loader {
        active: root.mark !== ""
        anchors.bottom: parent.bottom
        anchors.right: parent.right

        sourceComponent: Rectangle {
            color: root.ground
            height: width
            radius: Theme.smallCorner
            width: Theme.smallIcon + Theme.grid

            Icon {
                anchors.centerIn: parent
                color: root.markColor
                height: width
                name: root.mark
                width: Theme.smallIcon
            }
        }
    }
}
