// The head of a page: the way back, what the page is, and a few words at the other end or, where that is narrow, below.
//
//   title      what the page is about
//   aside      such as "3 / 6" or a job's number
//   canGoBack  whether the arrow is shown
//   canLock    whether the button that locks the glass is shown; it has the same place on every page
//   tools      children stand at the far end, such as IconButtons
//   titleRoom  the place of the title
//   back()     the arrow was tapped; the one way to leave, as the system's back
//   locks()    the glass is to be locked
// Qt 6.4 cannot bind a component to the ids around it:
// qmllint disable unqualified
import QtQuick

Item {
    id: root

    property string title: ""
    property string aside: ""
    property bool canGoBack: true
    property bool canLock: false
    default property alias tools: toolRow.data

    readonly property real from: arrow.visible ? arrow.x + arrow.width + Theme.grid * 2 : Theme.margin
    readonly property real room: toolRow.x - (toolRow.width > 0 || canLock ? Theme.grid : Theme.margin) - from
    // Large words beside many tools would be parted: then they have a line of their own below.
    readonly property bool below: Theme.largeText && large.advanceWidth > room && room < 0.6 * width
    readonly property real middle: (below ? row : height) / 2
    readonly property rect titleRoom: below ? Qt.rect(Theme.margin, row + Theme.grid, width - 2 * Theme.margin, height - row)
                                            : Qt.rect(from, Theme.grid, room, height - 2 * Theme.grid)
    // What the arrow and the tools stand in where the title is below.
    readonly property real row: Math.max(arrow.height, toolRow.height, lock.height) + Theme.grid * 2
    readonly property bool stacked: aside !== "" && !below && large.advanceWidth + remark.implicitWidth + Theme.grid * 2 > room
                                    && (small.advanceWidth <= room || small.advanceWidth > 1.8 * (room - remark.implicitWidth))

    signal back
    signal locks

    implicitHeight: below ? row + heading.implicitHeight + (aside === "" ? 0 : remark.implicitHeight) + Theme.grid
                          : Math.max(Theme.touch, Theme.icon + Theme.grid * 4, heading.implicitHeight + (stacked ? remark.implicitHeight : 0)) + Theme.grid * 2
    implicitWidth: Theme.liftKeyWidth * 3

    Loader {
        id: arrow

        active: root.canGoBack
        visible: active
        x: Theme.grid
        y: root.middle - height / 2

        sourceComponent: IconButton {
            iconName: "back"
            text: qsTr("Back")

            onTriggered: root.back()
        }
    }

    Label {
        id: heading

        Accessible.role: Accessible.Heading
        // A long name takes a second line of smaller words, not a higher head.
        font.pixelSize: root.stacked || large.advanceWidth > width ? Theme.textSize : Theme.titleSize
        kind: Label.Title
        text: root.title
        width: root.below ? root.width - 2 * Theme.margin
                          : root.room - (root.stacked || root.aside === "" ? 0 : remark.width + Theme.grid * 2)
        x: root.below ? Theme.margin : root.from
        y: root.below ? root.row : (root.height - height - (root.stacked ? remark.height : 0)) / 2
    }

    TextMetrics {
        id: large

        font.family: Theme.family
        font.pixelSize: Theme.titleSize
        font.weight: Font.Bold
        text: root.title
    }

    TextMetrics {
        id: small

        font.family: Theme.family
        font.pixelSize: Theme.textSize
        font.weight: Font.Bold
        text: root.title
    }

    Label {
        id: remark

        kind: Label.Aside
        mono: true
        text: root.aside
        width: Math.min(implicitWidth, root.below ? root.width - 2 * Theme.margin : root.stacked ? root.room : root.width / 3)
        x: root.below || root.stacked ? heading.x : root.from + root.room - width
        y: root.below || root.stacked ? heading.y + heading.height : (root.height - height) / 2
    }

    Row {
        id: toolRow

        anchors.right: lock.visible ? lock.left : parent.right
        anchors.rightMargin: lock.visible && width > 0 ? Theme.grid * 2 : 0
        spacing: Theme.grid * 2
        y: root.middle - height / 2
    }

    Loader {
        id: lock

        active: root.canLock
        anchors.right: parent.right
        visible: active
        y: root.middle - height / 2

        sourceComponent: IconButton {
            description: qsTr("Water and stray touches do nothing then")
            iconName: "lock"
            text: qsTr("Lock the screen")

            onTriggered: root.locks()
        }
    }
}
