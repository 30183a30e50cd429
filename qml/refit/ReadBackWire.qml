// The wire that is read back, readable from a metre away.
import QtQuick
import Undercowl
import Undercowl.Style

Column {
    id: root

    required property ReadBackView wire

    spacing: Theme.grid * 2

    PhotoFrame {
        centre: root.wire.centre
        description: qsTr("Photo, %1 marked").arg(root.wire.place)
        height: Math.round(width * 0.36)
        marks: root.wire.marks
        source: root.wire.photo
        visible: source.toString() !== ""
        width: parent.width
        zoom: root.wire.marks.length > 0 ? 1.6 : 1
    }

    DrawnWire {
        base: root.wire.base
        tracer: root.wire.tracer
        width: parent.width
    }

    Label {
        kind: Label.Name
        text: root.wire.words
        width: parent.width
    }

    Label {
        text: [root.wire.place, root.wire.details].filter(word => word !== "").join("  ")
        width: parent.width
    }

    Label {
        kind: Label.Aside
        text: [root.wire.reads, root.wire.source, root.wire.twin].filter(word => word !== "").join("; ")
        tone: Theme.caution
        width: parent.width
    }

    Label {
        kind: Label.Aside
        text: root.wire.checked === "matches" ? qsTr("checked before: matches") : qsTr("checked before: does not match")
        tone: root.wire.checked === "matches" ? Theme.act : Theme.stop
        visible: root.wire.checked !== ""
        width: parent.width
    }
}
