// Drawn wires: plain, with tracer, unknown, and in lines of a list.
import QtQuick
import Undercowl.Style

Scroller {
    id: root

    DrawnWire {
        base: "GN"
        tracer: "WH"
        width: parent.width
    }

    Label {
        kind: Label.Name
        text: Insulations.words("GN", "WH")
        width: parent.width
    }

    DrawnWire {
        base: "LBU"
        tracer: "LGN"
        width: parent.width
    }

    DrawnWire {
        base: "BK"
        width: parent.width
    }

    DrawnWire {
        base: "WH"
        tracer: "BK"
        width: parent.width
    }

    DrawnWire {
        width: parent.width
    }

    Repeater {
        model: Insulations.codes

        WireChip {
            required property string modelData
            required property int index

            base: modelData
            tracer: index % 3 === 0 ? "" : Insulations.codes[(index + 5) % Insulations.codes.length]
            withWords: true
        }
    }
}
