// Any wire colour in two touches: the base, then the tracer or none. Each swatch is a drawn wire with its letters, its
// word and its own hatching, so that hue is never needed.
//
//   base       what the first touch chose; empty while it is asked
//   picked(base, tracer)   tracer is empty for none
//   reset()    asks for the base again
// Qt 6.4 cannot bind a delegate to the ids around it, nor defer an item that has one:
// qmllint disable unqualified deferred-property-id
import QtQuick
import Undercowl.Style

Column {
    id: root

    property string base: ""

    readonly property int columns: Math.max(1, Math.floor((width + Theme.targetGap)
                                                          / (Theme.scaled(Theme.liftKeyWidth) + Theme.targetGap)))

    signal picked(base: string, tracer: string)

    function reset() {
        base = "";
    }

    function choose(code: string) {
        if (base === "") {
            base = code;
            return;
        }
        const first = base;
        base = "";
        picked(first, code);
    }

    spacing: Theme.grid * 3

    Row {
        spacing: Theme.grid * 2
        width: parent.width

        IconButton {
            id: again

            iconName: "back"
            lift: true
            text: qsTr("Choose the base colour again")
            visible: root.base !== ""

            onTriggered: root.reset()
        }

        Label {
            anchors.verticalCenter: parent.verticalCenter
            kind: Label.Title
            text: root.base === "" ? qsTr("Base colour") : qsTr("%1: which tracer?").arg(Insulations.word(root.base))
            width: parent.width - (again.visible ? again.width + parent.spacing : 0)
        }
    }

    Grid {
        columnSpacing: Theme.targetGap
        columns: root.columns
        rowSpacing: Theme.targetGap

        Repeater {
            model: root.base === "" ? Insulations.codes : Insulations.tracersFor(root.base)

            WireKey {
                required property string modelData

                base: root.base === "" ? modelData : root.base
                hatched: root.base === ""
                tracer: root.base === "" ? "" : modelData
                text: root.base === "" ? Insulations.word(modelData)
                                       : modelData === "" ? qsTr("no tracer") : Insulations.word(modelData)
                width: (root.width - (root.columns - 1) * Theme.targetGap) / root.columns

                onTriggered: root.choose(modelData)
            }
        }
    }
}
