// A button that carries a verb.
//
//   kind       ActionButton.Main (the one colour that means 'act'), Other, or Refuse (outlined: says no)
//   main       true makes it the main action; for bindings, which the compiler of Qt 6.4 cannot put together from 'kind's
//   lift       sized for gloved thumbs at the lift instead of 48 dp
//   iconName   an icon of assets/icons before the verb
//   aside      a quieter line below the verb: what it acts on
//   busyText   what the verb turns into while busy
//   text, busy, enabled, triggered(): see Pressable
// Qt 6.4 cannot bind a delegate to the ids around it, nor defer an item that has one:
// qmllint disable unqualified deferred-property-id
import QtQuick
import Undercowl.Style

Pressable {
    id: root

    enum Kind {
        Other,
        Main,
        Refuse
    }

    property bool main: false
    property int kind: main ? 1 : 0 // ActionButton.Main, ActionButton.Other
    property bool lift: false
    property string iconName: ""
    property string aside: ""
    property string busyText: text

    readonly property color tone: !enabled ? Theme.quiet : kind === ActionButton.Main ? Theme.actInk
                                                             : kind === ActionButton.Refuse ? Theme.stop : Theme.ink
    readonly property int minimumHeight: !lift ? Theme.touch : kind === ActionButton.Main ? Theme.liftMain
                                                                                         : Theme.liftOther

    bottomPadding: Theme.grid * 2
    implicitHeight: Math.max(minimumHeight, implicitContentHeight + topPadding + bottomPadding)
    leftPadding: Theme.grid * 3
    rightPadding: Theme.grid * 3
    topPadding: Theme.grid * 2

    background: Rectangle {
        border.color: root.enabled && root.kind === ActionButton.Refuse ? Theme.stop : Theme.line
        border.width: !root.enabled ? Theme.hairline : root.kind === ActionButton.Refuse ? Theme.stroke
                                                        : root.kind === ActionButton.Other && Theme.mode === "sun"
                                                          ? Theme.hairline : 0
        color: !root.enabled ? Theme.ground : root.kind === ActionButton.Main ? (root.down ? Theme.actPressed : Theme.act)
                                               : root.down ? Theme.pressed
                                                           : root.kind === ActionButton.Refuse ? Theme.panel
                                                                                               : Theme.raised
        radius: Theme.corner

        FocusRing {
            target: root
        }

        BusyBar {
            running: root.busy
            tone: root.tone

            anchors {
                bottom: parent.bottom
                bottomMargin: Theme.grid
                left: parent.left
                leftMargin: Theme.corner
                right: parent.right
                rightMargin: Theme.corner
            }
        }
    }
    contentItem: Item {
        // Large words need a second line, for which the buttons at the lift have the height.
        readonly property int lines: !root.lift && Theme.largeText && words.implicitWidth > words.width ? 2 : 1

        implicitHeight: Math.max(line.height * lines, pictogram.visible ? pictogram.height : 0) + object.height
        implicitWidth: words.implicitWidth + (root.iconName !== "" ? pictogram.width + Theme.grid * 2 : 0)

        Loader {
            id: pictogram

            active: root.iconName !== "" // few buttons have one
            anchors.verticalCenter: words.verticalCenter
            height: width
            // Large text needs the room more than the icon does.
            visible: root.iconName !== "" && words.implicitWidth + width + Theme.grid * 2 <= root.availableWidth
            width: root.lift && root.kind === ActionButton.Main ? Theme.bigIcon : Theme.icon
            x: Math.max(0, (parent.width - words.paintedWidth - words.shift) / 2)

            sourceComponent: Icon {
                color: root.tone
                name: root.iconName
            }
        }

        Label {
            id: words

            readonly property real shift: pictogram.visible ? pictogram.width + Theme.grid * 2 : 0

            font.pixelSize: root.lift ? (root.kind === ActionButton.Main ? Theme.mainActionSize : Theme.actionSize)
                                      : Theme.textSize
            // Onto a second line before it becomes smaller. Trying sizes is dear: only for words that need it.
            fontSizeMode: implicitWidth > width ? Text.Fit : Text.FixedSize
            height: parent.height - object.height
            horizontalAlignment: Text.AlignHCenter
            minimumPixelSize: 15 // as in the smallest ordinary text
            strong: true
            text: root.busy ? root.busyText : root.text
            tone: root.tone
            verticalAlignment: Text.AlignVCenter
            width: parent.width - shift
            wrapMode: Text.WordWrap
            x: shift
        }

        FontMetrics {
            id: line

            font: words.font
        }

        Loader {
            id: object

            active: root.aside !== ""
            anchors.bottom: parent.bottom
            height: active ? implicitHeight : 0
            width: parent.width

            sourceComponent: Label {
                horizontalAlignment: Text.AlignHCenter
                kind: Label.Aside
                text: root.aside
                tone: root.tone
            }
        }
    }
}
