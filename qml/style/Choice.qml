// A few answers side by side, in words; wraps onto further lines.
//
//   label     what is asked
//   options   the words
//   current   index of the answer, -1 for none yet
//   chosen(index)
// Qt 6.4 cannot bind a delegate to the ids around it, nor defer an item that has one:
// qmllint disable unqualified deferred-property-id
import QtQuick

Column {
    id: root

    property string label: ""
    property list<string> options
    property int current: -1

    signal chosen(index: int)

    Accessible.name: label
    Accessible.role: Accessible.Grouping
    spacing: Theme.grid

    Label {
        kind: Label.Aside
        text: root.label
        visible: text !== ""
        width: parent.width
    }

    Flow {
        spacing: Theme.targetGap
        width: parent.width

        Repeater {
            model: root.options

            Chip {
                required property int index
                required property string modelData

                chosen: index === root.current
                text: modelData

                onTriggered: {
                    root.current = index;
                    root.chosen(index);
                }
            }
        }
    }
}
