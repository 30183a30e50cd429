// The wire in question: drawn, in words, and how sure the reader is.
import QtQuick
import Undercowl
import Undercowl.Style

Column {
    id: root

    required property StrokeView view

    readonly property var wire: view.wire
    readonly property bool settled: (wire.confirmed ?? false) || (wire.empty ?? false)

    spacing: Theme.grid

    DrawnWire {
        base: root.wire.base ?? ""
        tracer: root.wire.tracer ?? ""
        visible: !(root.wire.empty ?? false) && !root.view.named // then the loupe shows the wire itself
        width: parent.width
    }

    Label {
        kind: Label.Name
        text: root.wire.words ?? ""
        width: parent.width
    }

    Label {
        text: [root.wire.place ?? "", root.wire.sureness ?? ""].filter(word => word !== "").join(": ")
        tone: root.settled ? Theme.act : (root.wire.sure ?? false) ? Theme.ink : Theme.caution
        width: parent.width
    }

    Label {
        kind: Label.Aside
        text: root.wire.reason ?? ""
        visible: text !== ""
        width: parent.width
    }
}
