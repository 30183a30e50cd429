// One reading that was kept; a tap shows it among others of the same thing, as a curve, and lets it be taken out.
//
//   lineId, title, aside, detail, mark   as MeasureView's readings have them
//   course   the curve that is shown while open
//   withdrawn()   it was a mistake
// Qt 6.4 cannot bind a delegate to the ids around it:
// qmllint disable unqualified
import QtQuick
import Undercowl
import Undercowl.Style

Pressable {
    id: root

    required property string lineId
    required property string title
    required property string detail
    required property string aside
    required property string mark
    required property Curve course
    property bool open: false

    signal withdrawn

    readonly property string verdictWord: mark === "" ? qsTr("no verdict") : mark

    Accessible.name: title + ", " + aside + ", " + verdictWord
    description: enabled ? qsTr("Shows the curve of its readings") : ""
    implicitHeight: implicitContentHeight + topPadding + bottomPadding
    padding: Theme.grid * 3
    text: title

    background: Rectangle {
        border.color: Theme.line
        border.width: Theme.mode === "night" ? 0 : Theme.hairline
        color: root.down ? Theme.pressed : Theme.panel
        radius: Theme.corner

        FocusRing {
            target: root
        }
    }
    contentItem: Column {
        spacing: Theme.grid * 2

        Label {
            strong: true
            text: root.title
            width: parent.width
        }

        Label {
            kind: Label.Title
            text: root.aside
            width: parent.width
        }

        Label {
            kind: Label.Aside
            text: root.detail
            visible: text !== ""
            width: parent.width
        }

        Loader {
            active: root.mark !== ""
            visible: active
            width: parent.width

            sourceComponent: VerdictMark {
                verdict: root.mark === "too close to call" ? "undecided" : root.mark
            }
        }

        Label {
            kind: Label.Aside
            text: qsTr("no verdict: limits or the instrument's uncertainty are not known")
            visible: root.mark === ""
            width: parent.width
        }

        Loader {
            active: root.open
            visible: active
            width: parent.width

            sourceComponent: Column {
                spacing: Theme.targetGap

                CurvePlot {
                    curve: root.course
                    width: parent.width
                }

                Label {
                    kind: Label.Aside
                    text: qsTr("Measured once so far: a second reading makes a curve.")
                    visible: root.course.across.length < 2
                    width: parent.width
                }

                ActionButton {
                    description: qsTr("It does not count any more, and can be brought back")
                    lift: true
                    text: qsTr("This reading was a mistake")
                    width: parent.width

                    onTriggered: root.withdrawn()
                }
            }
        }
    }
}
