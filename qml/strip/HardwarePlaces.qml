// Where one piece of hardware sits: a tap on the photo draws a ring there, a tap on a ring takes it away.
// Qt 6.4 knows no members of a url, a map or a list:
// qmllint disable type
import QtQuick
import Undercowl
import Undercowl.Style

Column {
    id: root

    required property StripView strip

    signal removed

    spacing: Theme.grid * 3

    Label {
        kind: Label.Title
        strong: false
        text: root.strip.placed
        width: parent.width
    }

    EmptyState {
        iconName: "camera"
        text: qsTr("With a photo of this step, a tap on it shows later which hole each piece belongs to.")
        title: qsTr("No photo yet")
        visible: root.strip.photos.count === 0
        width: parent.width
    }

    PhotoFrame {
        crop: false
        description: qsTr("Photo to tap on: where it sits")
        height: width * 3 / 4
        marks: root.strip.marks
        source: visible ? root.strip.photo : ""
        visible: root.strip.photos.count > 0 && root.visible
        width: parent.width

        onTapped: (x, y) => root.strip.place(x, y)
    }

    RemedyLine {
        error: root.strip.errors.place ?? ""
        width: parent.width
    }

    ActionButton {
        iconName: "camera"
        lift: true
        text: qsTr("Another photo")
        visible: root.strip.photos.count > 1
        width: parent.width

        onTriggered: root.strip.otherPhoto()
    }

    ActionButton {
        lift: true
        text: qsTr("Take it off the list")
        width: parent.width

        onTriggered: root.removed()
    }
}
