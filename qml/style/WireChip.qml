// A wire in a line of text: a short length of it and its code. For lists.
//
//   base, tracer   codes; see DrawnWire
//   withWords      the words beside the code too
import QtQuick
import Undercowl.Style

Row {
    id: root

    property string base: ""
    property string tracer: ""
    property bool withWords: false

    Accessible.name: Insulations.words(base, tracer)
    Accessible.role: Accessible.Graphic
    spacing: Theme.grid * 2

    WireStretch {
        anchors.verticalCenter: parent.verticalCenter
        base: root.base
        edge: Theme.line
        height: Theme.smallIcon
        radius: Theme.grid
        tracer: root.tracer
        width: height * 3
    }

    Label {
        anchors.verticalCenter: parent.verticalCenter
        mono: true
        strong: true
        text: Insulations.codeText(root.base, root.tracer)
    }

    Label {
        anchors.verticalCenter: parent.verticalCenter
        text: Insulations.words(root.base, root.tracer)
        tone: Theme.quiet
        visible: root.withWords
    }
}
