// The wire that is read back, readable from a metre away.
//
//   room   height that there is: the photo takes what the words leave
// Qt 6.4 knows no members of a url, a map or a list:
// qmllint disable type
import QtQuick
import Undercowl
import Undercowl.Style

Column {
    id: root

    required property ReadBackView wire
    property real room: 0

    readonly property real words: (drawn.visible ? drawn.height : 0) + name.height + place.height + answer.height + 5 * spacing + 2 * Theme.margin

    spacing: Theme.grid * 2

    PhotoFrame {
        centre: root.wire.centre
        description: qsTr("Photo, %1 marked").arg(root.wire.place)
        enlarges: true
        height: Math.max(Theme.touch + Theme.grid * 4, Math.min(width * 0.5, root.room - root.words))
        marks: root.wire.marks
        source: root.wire.photo
        visible: source.toString() !== ""
        width: parent.width
        zoom: root.wire.marks.length > 0 ? 1.6 : 1
    }

    DrawnWire {
        id: drawn

        base: root.wire.base
        tracer: root.wire.tracer
        visible: base !== ""
        width: parent.width
    }

    Label {
        id: name

        kind: Label.Name
        text: root.wire.words
        width: parent.width
    }

    Label {
        id: place

        text: [root.wire.place, root.wire.details].filter(word => word !== "").join("  ")
        width: parent.width
    }

    Label {
        id: answer

        kind: Label.Aside
        text: [root.wire.reads, root.wire.source, root.wire.twin].filter(word => word !== "").join("; ")
        tone: Theme.caution
        width: parent.width
    }

    ReadBackBefore {
        wire: root.wire
        width: parent.width
    }
}
