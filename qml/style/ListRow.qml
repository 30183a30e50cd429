// One line of a list that opens something.
//
//   title, aside   the line and what stands quietly below it
//   remark         a few mono letters at the end, such as a count
//   iconName       before the title
//   severity       "unsafe", "soon" or "note": a mark with its word; empty for none
//   done           ticked off
//   chosen         framed: what is done next is done to it
//   opens          shows the arrow
//   text           defaults to the title, for screen readers
// Qt 6.4 cannot bind a delegate to the ids around it, nor defer an item that has one:
// qmllint disable unqualified deferred-property-id
import QtQuick
import Undercowl.Style

Pressable {
    id: root

    property string title: ""
    property string aside: ""
    property string remark: ""
    property string iconName: ""
    property string severity: ""
    property bool done: false
    property bool chosen: false
    property bool opens: true

    Accessible.name: title + (severity === "" ? "" : ", " + severity) + (aside === "" ? "" : ", " + aside)
                     + (remark === "" ? "" : ", " + remark)
    implicitHeight: Math.max(Theme.touch + Theme.grid * 2, implicitContentHeight + topPadding + bottomPadding)
    implicitWidth: Theme.liftKeyWidth * 3
    padding: Theme.grid * 3
    text: title

    background: Rectangle {
        border.color: root.chosen ? Theme.act : Theme.line
        border.width: root.chosen ? Theme.stroke * 2 : Theme.mode === "night" ? 0 : Theme.hairline
        color: root.down ? Theme.pressed : Theme.panel
        radius: Theme.corner

        FocusRing {
            target: root
        }
    }
    contentItem: Item {
        implicitHeight: words.implicitHeight

        Icon {
            id: pictogram

            anchors.verticalCenter: parent.verticalCenter
            color: root.done ? Theme.act : Theme.quiet
            height: width
            name: root.done ? "within" : root.iconName
            visible: name !== ""
            width: Theme.icon
        }

        Column {
            id: words

            anchors.left: pictogram.visible ? pictogram.right : parent.left
            anchors.leftMargin: pictogram.visible ? Theme.grid * 3 : 0
            anchors.right: remark.left
            anchors.rightMargin: Theme.grid * 2
            anchors.verticalCenter: parent.verticalCenter
            spacing: Theme.grid / 2

            Label {
                strong: true
                text: root.title
                width: parent.width
            }

            Label {
                kind: Label.Aside
                text: root.aside
                visible: text !== ""
                width: parent.width
            }

            Loader {
                active: root.severity !== ""
                visible: active

                sourceComponent: SeverityMark {
                    severity: root.severity
                }
            }
        }

        Label {
            id: remark

            anchors.right: arrow.left
            anchors.rightMargin: text === "" ? 0 : Theme.grid
            anchors.verticalCenter: parent.verticalCenter
            kind: Label.Aside
            mono: true
            text: root.remark
            width: Math.min(implicitWidth, parent.width / 3)
        }

        Icon {
            id: arrow

            anchors.right: parent.right
            anchors.verticalCenter: parent.verticalCenter
            color: Theme.quiet
            height: Theme.smallIcon
            name: root.opens ? "chevron" : ""
            width: root.opens ? Theme.smallIcon : 0
        }
    }
}
