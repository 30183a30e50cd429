// What every page is made of: a head with the way back, a body that scrolls, and the actions below, where thumbs are. A wide
// window has them beside the body instead, on the side of the hand.
//
//   session     handed on by whoever opens the page
//   speaker, listener   the device's voice, and its microphone and ear; null where there is none
//   recorder, player    the same for memos
//   title, aside, canGoBack
//   body        children stand in a column that scrolls
//   footer      items below the body: the actions
//   opens(page, properties)   another page is wanted, by its file name without ".qml"
//   leaves()                  the one way out: the arrow, the system's back, Escape
//   leaving()                 about to go: pages commit what is being typed
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
    property alias tools: header.tools
    property alias footer: actions.data
    property alias scroller: page
    readonly property bool beside: Theme.wide && actions.visibleChildren.length > 0
    readonly property real side: Theme.handWidth + Theme.margin
    default property alias body: page.content

    signal opens(page: string, properties: var)
    signal leaves
    signal leaving

    PageHeader {
        id: header

        aside: root.aside
        canGoBack: root.canGoBack
        title: root.title
        width: parent.width

        onBack: root.leaves()
    }

    Scroller {
        id: page

        height: (root.beside || actions.height === 0 ? root.height : actions.y - Theme.grid * 2) - y
        width: root.width - (root.beside ? root.side : 0)
        x: root.beside && Theme.leftHanded ? root.side : 0
        y: header.height
    }

    Column {
        id: actions

        anchors.bottom: parent.bottom
        anchors.bottomMargin: height > 0 ? Theme.margin : 0
        spacing: Theme.targetGap
        width: root.beside ? Theme.handWidth : Math.min(root.width - 2 * Theme.margin, Theme.readingWidth)
        x: !root.beside ? (root.width - width) / 2 : Theme.leftHanded ? Theme.margin : root.width - width - Theme.margin
    }
}
