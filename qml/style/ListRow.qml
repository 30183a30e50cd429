// One line of a list that opens something.
//
//   title, aside   the line and what stands quietly below it
//   remark         a few mono letters at the end, such as a count
//   iconName       before the title
//   picture        a photo that stands there instead, with the icon in its corner; empty for none
//   severity       "unsafe", "soon" or "note": a mark with its word; empty for none
//   done           ticked off
//   chosen         framed: what is done next is done to it
//   opens          shows the arrow
//   lift           sized for gloved thumbs
//   text           defaults to the title, for screen readers
// Qt 6.4 cannot bind a delegate to the ids around it, nor defer an item that has one:
// Qt 6.4 knows no members of a url:
// qmllint disable unqualified deferred-property-id type
import QtQuick
import Undercowl.Style

Pressable {
    id: root

    property string title: ""
    property string aside: ""
    property string remark: ""
    property string iconName: ""
    property url picture
    property string severity: ""
    property bool done: false
    property bool chosen: false
    property bool opens: true
    property bool lift: false

    Accessible.name: title + (severity === "" ? "" : ", " + severity) + (aside === "" ? "" : ", " + aside)
                     + (remark === "" ? "" : ", " + remark)
    implicitHeight: Math.max(lift ? Theme.liftOther : Theme.touch + Theme.grid * 2, implicitContentHeight + topPadding + bottomPadding)
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
        id: content

        readonly property string sign: root.done ? "within" : root.iconName
        readonly property color signColor: root.done ? Theme.act : Theme.quiet
        readonly property Item first: photo.active ? photo : pictogram.visible ? pictogram : null

        implicitHeight: Math.max(words.implicitHeight, photo.active ? photo.height : 0)

        Icon {
            id: pictogram

            anchors.verticalCenter: parent.verticalCenter
            color: content.signColor
            height: width
            name: photo.active ? "" : content.sign
            visible: name !== ""
            width: Theme.icon
        }

        Loader {
            id: photo

            active: root.picture.toString() !== ""
            anchors.verticalCenter: parent.verticalCenter

            sourceComponent: Thumbnail {
                description: qsTr("Photo of %1").arg(root.title)
                ground: root.down ? Theme.pressed : Theme.panel
                mark: content.sign
                markColor: content.signColor
                source: root.picture
            }
        }

        // Without a graphics chip drawing letters takes most of a frame while a list is scrolled: there they are drawn
        // once, and the arrow with them. Not the photo, which such a layer would show late.
        Item {
            anchors.left: content.first !== null ? content.first.right : parent.left
            anchors.leftMargin: content.first !== null ? Theme.grid * 3 : 0
            anchors.right: parent.right
            anchors.verticalCenter: parent.verticalCenter
            height: Math.max(words.height, remark.height, arrow.height)
            layer.enabled: GraphicsInfo.api === GraphicsInfo.Software

            // Not a column, which places its children only with the next frame: a list that makes its rows while it is
            // scrolled has to know at once how high they are.
            Item {
                id: words

                readonly property real gap: Theme.grid / 2

                anchors.left: parent.left
                anchors.right: remark.left
                anchors.rightMargin: Theme.grid * 2
                anchors.verticalCenter: parent.verticalCenter
                height: implicitHeight
                implicitHeight: heading.height + (below.visible ? gap + below.height : 0) + (mark.active ? gap + mark.height : 0)

                Label {
                    id: heading

                    strong: true
                    text: root.title
                    width: parent.width
                }

                Label {
                    id: below

                    kind: Label.Aside
                    text: root.aside
                    visible: text !== ""
                    width: parent.width
                    y: heading.height + words.gap
                }

                Loader {
                    id: mark

                    active: root.severity !== ""
                    visible: active
                    y: words.height - height

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
                width: Math.min(implicitWidth, content.width / 3)
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
}
