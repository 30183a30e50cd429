// A few answers side by side, in words; wraps onto further lines.
//
//   label     what is asked
//   options   the words
//   current   index of the answer, -1 for none yet; may be bound: a touch leaves it as it is
//   shown     the answer that carries the tick: 'current', or what was touched since that changed last
//   lift      sized for gloved thumbs
//   chosen(index)
//   clear()   forgets the touch
// Qt 6.4 cannot bind a delegate to the ids around it, nor defer an item that has one, and knows no members of a list:
// qmllint disable unqualified deferred-property-id type
import QtQuick

Column {
    id: root

    property string label: ""
    property list<string> options
    property int current: -1
    property int shown: current
    property bool lift: false

    signal chosen(index: int)

    function clear() {
        shown = current;
    }

    Accessible.name: label
    Accessible.role: Accessible.Grouping
    spacing: Theme.grid

    onCurrentChanged: clear()

    QtObject {
        id: measure

        readonly property FontMetrics letters: FontMetrics {
            font.family: Theme.family
            font.pixelSize: Theme.textSize
            font.weight: Font.Bold
        }
        // Room for the tick that the chosen one carries.
        readonly property real widest: Math.max(Theme.touch, root.options.reduce((most, each) => Math.max(most, letters.advanceWidth(each)), 0)
                                                + Theme.smallIcon + Theme.grid * 8)
    }

    Label {
        kind: Label.Aside
        text: root.label
        visible: text !== ""
        width: parent.width
    }

    Grid {
        id: grid

        // As many to a line as fit, then as evenly as they go, so that none stands alone.
        readonly property real widest: measure.widest
        readonly property int most: Math.max(1, Math.floor((width + Theme.targetGap) / (widest + Theme.targetGap)))
        readonly property int lines: Math.ceil(root.options.length / most)
        readonly property real cell: Math.min((width - (columns - 1) * spacing) / columns, Math.max(widest, Theme.liftKeyWidth * 1.5))

        columns: Math.max(1, Math.ceil(root.options.length / Math.max(1, lines)))
        spacing: Theme.targetGap
        width: parent.width

        Repeater {
            model: root.options

            Chip {
                required property int index
                required property string modelData

                chosen: index === root.shown
                lift: root.lift
                text: modelData
                width: grid.cell

                onTriggered: {
                    root.shown = index;
                    root.chosen(index);
                }
            }
        }
    }
}
