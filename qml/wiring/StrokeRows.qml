// The wires of the stroke in order of place; a tap chooses one.
// Qt 6.4 cannot bind a delegate to the ids around it:
// qmllint disable unqualified
import QtQuick
import Undercowl
import Undercowl.Style

Column {
    id: root

    required property StrokeView view

    spacing: Theme.grid

    ListView {
        id: list

        boundsBehavior: Flickable.StopAtBounds
        clip: true
        currentIndex: root.view.current
        height: Math.max(Theme.liftOther, Theme.touch + Theme.asideSize + Theme.grid * 3)
        model: root.view.rows
        orientation: ListView.Horizontal
        spacing: Theme.targetGap
        width: parent.width

        delegate: Pressable {
            id: cell

            required property int index
            required property int number
            required property string place
            required property string base
            required property string tracer
            required property string words
            required property string sureness
            required property bool sure
            required property bool confirmed
            required property bool empty

            property real letters: 0
            readonly property bool chosen: index === list.currentIndex

            Accessible.name: place + ", " + words + ", " + sureness
            height: list.height
            padding: Theme.grid
            tapGuard: 0
            text: place
            width: Math.max(Theme.liftKey, letters + 2 * padding)

            background: Rectangle {
                border.color: cell.chosen ? Theme.act : cell.confirmed || cell.empty || cell.sure ? Theme.line : Theme.caution
                border.width: cell.chosen ? Theme.ring : Theme.hairline
                color: Theme.panel
                radius: Theme.smallCorner
            }
            contentItem: Column {
                spacing: Theme.grid / 2

                Row {
                    anchors.horizontalCenter: parent.horizontalCenter
                    spacing: Theme.grid / 2

                    Label {
                        kind: Label.Aside
                        mono: true
                        strong: true
                        text: cell.number
                        tone: Theme.ink
                    }

                    Icon {
                        anchors.verticalCenter: parent.verticalCenter
                        color: cell.confirmed || cell.empty ? Theme.act : Theme.caution
                        height: width
                        name: cell.confirmed || cell.empty ? "within" : cell.sure ? "" : "close-call"
                        visible: name !== ""
                        width: Theme.grid * 4
                    }
                }

                WireStretch {
                    base: cell.base
                    edge: Theme.line
                    height: Theme.grid * 4
                    radius: Theme.grid
                    tracer: cell.tracer
                    visible: cell.base !== ""
                    width: parent.width
                }

                // The letters for eyes that tell the colours apart less well.
                Label {
                    horizontalAlignment: Text.AlignHCenter
                    kind: Label.Aside
                    mono: true
                    text: cell.tracer === "" ? cell.base : cell.base + "/" + cell.tracer
                    visible: cell.base !== ""
                    width: parent.width
                    wrapMode: Text.NoWrap

                    onImplicitWidthChanged: cell.letters = implicitWidth
                }
            }

            onTriggered: root.view.current = index
        }
    }

    Label {
        kind: Label.Aside
        text: root.view.note
        tone: Theme.caution
        visible: text !== ""
        width: parent.width
    }
}
