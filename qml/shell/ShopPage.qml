// What every page is made of: a head with the way back, a body that scrolls, and the actions below, where thumbs are.
//
//   session     handed on by whoever opens the page
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
    property string title: ""
    property string aside: ""
    property bool canGoBack: true
    property alias tools: header.tools
    property alias footer: actions.data
    property alias scroller: page
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

        anchors.bottom: actions.top
        anchors.bottomMargin: actions.height > 0 ? Theme.grid * 2 : 0
        anchors.top: header.bottom
        width: parent.width
    }

    Column {
        id: actions

        anchors.bottom: parent.bottom
        anchors.bottomMargin: height > 0 ? Theme.margin : 0
        anchors.horizontalCenter: parent.horizontalCenter
        spacing: Theme.targetGap
        width: Math.min(parent.width - 2 * Theme.margin, Theme.readingWidth)
    }
}
