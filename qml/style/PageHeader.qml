// The head of a page: the way back, what the page is, and a few words at the other end or, where that is narrow, below.
//
// At the lift its buttons have the size of gloved thumbs. Where the title would have less room than a button, the tools, and
// if need be the lock, stand behind one that opens them as large lines.
//
//   title      what the page is about
//   aside      such as "3 / 6" or a job's number
//   canGoBack  whether the arrow is shown
//   canLock    whether the glass can be locked here; the button for it has the same place on every page where there is room for it
//   lift       sized for gloved thumbs
//   brief      one button at the far end, at most: there is much else to touch on the page
//   tools      children: what stands at the far end
//   covered    the line that offers undo lies on the title. At the lift the tools are not there meanwhile, where it needs
//              their room or one more button would be too many; their place is kept.
//   titleRoom  a place for a line that hides the title for a while, and no button
//   spareRoom  how much of it, at the far end, is the place of tools that are not there: no button belongs there, a thumb that
//              looks for a tool would press it
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
    property bool lift: false
    property bool brief: false
    property bool covered: false
    default property list<PageTool> tools

    readonly property int gap: lift ? Theme.targetGap : Theme.grid * 2
    readonly property int pad: lift ? 0 : Theme.grid // around buttons: those at the lift reach the edge of the glass
    readonly property list<int> offered: {
        const at = [];
        for (let i = 0; i < tools.length; ++i)
            if (tools[i].offered)
                at.push(i);
        return at;
    }
    readonly property bool stays: {
        for (let i = 0; i < tools.length; ++i)
            if (tools[i].offered && tools[i].stays)
                return true;
        return false;
    }
    readonly property int slots: !lift ? tools.length + 1 : brief ? 1
                                       : Math.max(1, Math.floor((width - from - Theme.liftWidth) / (Theme.liftWidth + gap)))
    readonly property bool gathered: offered.length + (canLock ? 1 : 0) > slots
    readonly property bool lockShown: canLock && (!gathered || slots > 1)
    readonly property real from: arrow.visible ? arrow.x + arrow.width + Theme.grid * 2 : Theme.margin
    readonly property string lockWords: qsTr("Lock the screen")
    readonly property real room: toolRow.x - (toolRow.width > 0 || lockShown ? Theme.grid : Theme.margin) - from
    // Large words beside many tools would be parted: then they have a line of their own below. Beside a keypad there is no room for
    // that: there they become smaller.
    readonly property bool below: Theme.largeText && !brief && large.advanceWidth > room && room < 0.6 * width
    readonly property real middle: (below ? row : height) / 2
    readonly property real plainRoom: toolRow.x - arrow.x - arrow.width - 2 * gap // at the lift, of the line
    readonly property bool withdrawn: covered && lift && (brief || plainRoom < Theme.undoRoom) && !stays
    readonly property real spareRoom: withdrawn && toolRow.width > 0 ? toolRow.width + gap : 0
    readonly property rect titleRoom: lift ? Qt.rect(arrow.x + arrow.width + gap, 0, plainRoom + spareRoom, row)
                                      : below ? Qt.rect(Theme.margin, row + Theme.grid, width - 2 * Theme.margin, height - row)
                                              : Qt.rect(from, Theme.grid, room, height - 2 * Theme.grid)
    readonly property bool squeezed: Theme.largeText && brief
    // What the arrow and the tools stand in where the title is below.
    readonly property real row: Math.max(arrow.height, toolRow.height, lock.height) + 2 * pad
    readonly property bool stacked: aside !== "" && !below && large.advanceWidth + remark.implicitWidth + Theme.grid * 2 > room
                                    && (lift || small.advanceWidth <= room || small.advanceWidth > 1.8 * (room - remark.implicitWidth))

    // Of large words. Buttons at the lift are so high that two of them stand beside these, where there are two.
    readonly property real lines: lift && !stacked && !below && title.includes(" ") ? 1.6 : 1

    signal back
    signal locks

    // What stands behind the button for more: the tools, and the lock after them.
    function chosen(index: int) {
        if (index < offered.length)
            tools[offered[index]].triggered();
        else
            locks();
    }

    implicitHeight: below ? row + heading.implicitHeight + (aside === "" ? 0 : remark.implicitHeight) + Theme.grid
                          : Math.max(lift ? Theme.liftOther : Theme.touch, Theme.icon + Theme.grid * 4, squeezed ? 0 : heading.implicitHeight + (stacked ? remark.implicitHeight : 0)) + 2 * pad
    implicitWidth: Theme.liftKeyWidth * 3

    Loader {
        id: arrow

        active: root.canGoBack
        visible: active
        x: Theme.split ? Theme.targetGap : root.pad // beside a list, whose own buttons end there
        y: root.middle - height / 2

        sourceComponent: IconButton {
            iconName: "back"
            lift: root.lift
            text: qsTr("Back")

            onTriggered: root.back()
        }
    }

    Label {
        id: heading

        Accessible.role: Accessible.Heading
        // A long name takes a second line of smaller words, not a higher head.
        font.pixelSize: large.advanceWidth > width * root.lines || root.stacked && !root.lift ? Theme.textSize : Theme.titleSize
        fontSizeMode: root.squeezed ? Text.Fit : Text.FixedSize
        height: root.squeezed ? root.height - 2 * root.pad - (root.stacked ? remark.height : 0) : implicitHeight
        kind: Label.Title
        minimumPixelSize: Theme.headAside
        text: root.title
        verticalAlignment: Text.AlignVCenter
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

        font.pixelSize: root.lift && !root.below ? Theme.headAside : Theme.asideSize
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
        anchors.rightMargin: lock.visible && width > 0 ? root.gap : 0
        enabled: !root.withdrawn
        opacity: root.withdrawn ? 0 : 1
        spacing: root.gap
        y: root.middle - height / 2

        Repeater {
            model: root.tools

            IconButton {
                required property PageTool modelData

                filled: modelData.filled
                iconName: modelData.iconName
                lift: root.lift
                text: modelData.text
                visible: modelData.offered && !root.gathered

                onTriggered: modelData.triggered()
            }
        }

        Loader {
            active: root.gathered
            visible: active

            sourceComponent: IconButton {
                iconName: "more"
                lift: root.lift
                text: qsTr("More on this page")

                onTriggered: more.open()

                ChoiceSheet {
                    id: more

                    icons: root.offered.map(at => root.tools[at].iconName).concat(root.canLock && !root.lockShown ? ["lock"] : [])
                    lift: root.lift
                    options: root.offered.map(at => root.tools[at].text).concat(root.canLock && !root.lockShown ? [root.lockWords] : [])
                    title: root.title

                    onChosen: index => root.chosen(index)
                }
            }
        }
    }

    Loader {
        id: lock

        active: root.lockShown
        anchors.right: parent.right
        visible: active
        y: root.middle - height / 2

        sourceComponent: IconButton {
            description: qsTr("Water and stray touches do nothing then")
            iconName: "lock"
            lift: root.lift
            text: root.lockWords

            onTriggered: root.locks()
        }
    }
}
