// What every page is made of: a head with the way back, a body that scrolls, and the actions below, where thumbs are. A wide
// window has them beside the body instead, on the side of the hand.
//
//   session     handed on by whoever opens the page
//   speaker, listener   the device's voice, and its microphone and ear; null where there is none
//   recorder, player    the same for memos
//   title, aside, canGoBack
//   listPage    the page that stands beside this one where there is room, by its file name: what this one is a detail of
//   lift        worked at the lift: the head is sized for gloved thumbs
//   aList       this is such a page beside its detail
//   anyone      may be seen before somebody has named himself
//   lockable    the head has the button that locks the glass; see Glass
//   tools       what the head offers besides, see PageTool
//   titleRoom   where the title stands, beside what can be touched in the head: the undo line lies there for a while
//   covered     it does; spareRoom: how much of that, at the far end, is the place of tools that are not there meanwhile
//   voiceSlot   stands above the actions, and stays while the glass is locked: for speaking
//   body        children stand in a column that scrolls; a list of many rows takes the place of all that by having the
//               scroller as its parent, see StepList
//   footer      items below the body: the actions
//   keys        stands above them, such as a Keypad. On a phone that lies on its side keys have the height of the window, and
//               the actions stay below the body.
//   opens(page, properties)   another page is wanted, by its file name without ".qml"
//   leaves()                  the one way out: the arrow, the system's back, Escape
//   layered     something lies over the page's own content: the way back takes that away first
//   closesLayer()   it is to be taken away
//   refuses()                 what was said could not be taken: the window shows it at its edge
//   leaving()                 about to go: pages commit what is being typed
// Qt 6.4 cannot bind a component to the ids around it, knows no Qt.callLater:
// qmllint disable unqualified type
import QtQuick
import Undercowl
import Undercowl.Style

FocusScope {
    id: root

    required property ShopSession session
    property Speaker speaker
    property Listener listener
    property Recorder recorder
    property Player player
    property string title: ""
    property string aside: ""
    property bool canGoBack: true
    property bool layered: false
    property string listPage: ""
    property bool lift: false
    property bool aList: false
    property bool anyone: false
    property bool lockable: canGoBack && session.jobId !== ""
    property alias covered: header.covered
    property alias tools: header.tools
    property alias footer: ways.data
    property alias keys: keyboard.data
    property alias scroller: page
    readonly property rect titleRoom: header.titleRoom
    readonly property real spareRoom: header.spareRoom
    readonly property Item voiceSlot: voice
    readonly property bool typed: keyboard.visibleChildren.length > 0
    readonly property bool parted: Theme.low && typed && !Glass.locked && width >= Theme.besideFrom
    readonly property bool beside: width >= Theme.besideFrom && (typed || ways.visibleChildren.length > 0 || voice.visibleChildren.length > 0 || Glass.locked)
    readonly property real hand: Theme.handWidth(width)
    readonly property real side: hand + Theme.margin
    // So much is to be touched that it needs the height of the head too.
    readonly property bool crowded: beside && actions.implicitHeight > height - (lift ? Theme.liftOther : Theme.touch + Theme.grid * 2) - Theme.margin - Theme.targetGap
    default property alias body: page.content

    signal opens(page: string, properties: var)
    signal leaves
    signal closesLayer
    signal refuses
    signal leaving

    // What the arrow, the system's back and Escape do.
    function back() {
        if (layered)
            closesLayer();
        else
            leaves();
    }

    // The first field whose fault is named, below anything.
    function faulty(under) {
        for (let i = 0; i < under.children.length; ++i) { // Qt 6.4 goes through no such list by "of"
            const child = under.children[i];
            const found = !child.visible ? null : child.fault || child.fault === undefined && child.error ? child : faulty(child);
            if (found !== null)
                return found;
        }
        return null;
    }

    // What was to be kept and could not be: its field comes into view.
    onLeaving: Qt.callLater(() => {
        const field = page === null ? null : faulty(page.contentItem); // null once the page has been left
        if (field !== null)
            page.reveal(field);
    })

    PageHeader {
        id: header

        aside: root.aside
        brief: root.typed
        canGoBack: root.canGoBack
        canLock: root.lockable
        lift: root.lift
        title: root.title
        width: parent.width - (root.crowded ? root.side + Theme.targetGap : 0)
        x: root.crowded && Theme.leftHanded ? root.side + Theme.targetGap : 0

        onBack: root.back()
        onLocks: {
            root.leaving(); // what is being typed is not left hanging
            Glass.locked = true;
        }
    }

    Scroller {
        id: page

        height: Math.max(0, (root.parted ? below.y - Theme.targetGap : root.beside || actions.height === 0 ? root.height : actions.y - Theme.targetGap) - y)
        width: root.width - (root.beside ? root.side : 0)
        x: root.beside && Theme.leftHanded ? root.side : 0
        y: header.height
    }

    Item {
        id: below

        anchors.bottom: parent.bottom
        anchors.bottomMargin: Theme.margin
        height: root.parted ? ways.height : 0
        width: page.width - 2 * Theme.margin
        x: page.x + Theme.margin
    }

    Column {
        id: actions

        anchors.bottom: parent.bottom
        anchors.bottomMargin: height > 0 ? Theme.margin : 0
        spacing: Theme.targetGap
        width: root.beside ? root.hand : Math.min(root.width - 2 * Theme.margin, Theme.readingWidth)
        x: !root.beside ? (root.width - width) / 2 : Theme.leftHanded ? Theme.margin : root.width - width - Theme.margin

        Column {
            id: keyboard

            spacing: Theme.targetGap
            visible: !Glass.locked
            width: parent.width
        }

        Column {
            id: voice

            spacing: Theme.targetGap
            width: parent.width
        }

        Loader {
            active: Glass.locked && root.visible && !root.aList
            height: active ? implicitHeight : 0
            width: parent.width

            sourceComponent: LockBar {
                corner: root
            }

            onActiveChanged: {
                if (!active && root.visible)
                    root.forceActiveFocus();
            }
        }

        Column {
            id: ways

            parent: root.parted ? below : actions
            spacing: Theme.targetGap
            visible: !Glass.locked
            width: parent.width
        }
    }
}
