// One swatch of WirePicker: a drawn wire with letters, and its word below.
//
//   base, tracer, hatched   see WireStretch
// Qt 6.4 cannot bind a delegate to the ids around it, nor defer an item that has one:
// qmllint disable unqualified deferred-property-id
import QtQuick
import Undercowl.Style

Pressable {
    id: root

    property string base: ""
    property string tracer: ""
    property bool hatched: false

    implicitHeight: Math.max(Theme.liftKey, implicitContentHeight + topPadding + bottomPadding)
    padding: Theme.grid

    background: Rectangle {
        border.color: Theme.line
        border.width: Theme.mode === "night" ? 0 : Theme.hairline
        color: root.down ? Theme.pressed : Theme.raised
        radius: Theme.corner

        FocusRing {
            target: root
        }
    }
    contentItem: Item {
        implicitHeight: sleeve.height + word.implicitHeight + 2 * Theme.grid

        WireStretch {
            id: stretch

            base: root.base
            edge: Theme.line
            gap: sleeve.width
            hatched: root.hatched
            height: Math.max(sleeve.height + Theme.grid, parent.height - word.implicitHeight - Theme.grid)
            radius: Theme.smallCorner
            tracer: root.tracer
            width: parent.width
        }

        Rectangle {
            id: sleeve

            anchors.centerIn: stretch
            border.color: Theme.sleeveInk
            border.width: Theme.hairline
            color: Theme.sleeve
            height: letters.implicitHeight + Theme.grid / 2
            radius: Theme.grid
            width: letters.implicitWidth + Theme.grid * 2

            Label {
                id: letters

                anchors.centerIn: parent
                kind: Label.Aside
                mono: true
                strong: true
                text: root.tracer === "" ? Insulations.codeText(root.base, "") : Insulations.codeText(root.tracer, "")
                tone: Theme.sleeveInk
            }
        }

        Label {
            id: word

            anchors.bottom: parent.bottom
            horizontalAlignment: Text.AlignHCenter
            kind: Label.Aside
            text: root.text
            tone: Theme.ink
            width: parent.width
        }
    }
}
