// The steps of a job, a row each: only the rows in view are made, since a machine may have hundreds. Takes the place of what
// a page scrolls: its parent is the page's scroller.
//
//   model       lines of steps: title, detail, mark "waiting" with what for in aside, picture, on
//   doneWord    what is said of a step that is on again
//   chosenId    of the step that is framed: the rows choose and open nothing; see choosing
//   choosing    a row is chosen instead of opened
//   picked(id)  the row was touched
//   children    stand above the rows, in a column
// Tab and the arrow keys go from row to row, as Tab does on every page; Home and End to the first and the last.
// Qt 6.4 cannot bind a delegate to the ids around it, and knows no members of a map:
// qmllint disable unqualified type
import QtQuick
import Undercowl
import Undercowl.Style

ListView {
    id: root

    property string doneWord: ""
    property string chosenId: ""
    property bool choosing: false
    property real beginning: 0
    default property alias above: column.data

    signal picked(id: string)

    // The row that the key leads to has the focus then; false where the key leads to none.
    function walk(key: int, from: int): bool {
        const screenful = Math.max(1, Math.floor(height / (currentItem?.height ?? height)) - 1);
        let to = from;
        if (key === Qt.Key_Tab || key === Qt.Key_Down)
            to = from + 1;
        else if (key === Qt.Key_Backtab || key === Qt.Key_Up)
            to = from - 1;
        else if (key === Qt.Key_PageDown)
            to = Math.min(count - 1, from + screenful);
        else if (key === Qt.Key_PageUp)
            to = Math.max(0, from - screenful);
        else if (key === Qt.Key_Home)
            to = 0;
        else if (key === Qt.Key_End)
            to = count - 1;
        if (to === from || to < 0 || to >= count)
            return false;
        positionViewAtIndex(to, ListView.Contain); // what is far away is made only then
        forceLayout(); // how high it all is was a guess until then
        itemAtIndex(to).forceActiveFocus(Qt.TabFocusReason);
        return true;
    }

    // Tab comes to the first row in view, unless one was left here.
    function beginHere() {
        if (activeFocus)
            return;
        const at = indexAt(column.x, contentY);
        currentIndex = contentY <= originY ? 0 : Math.max(0, at >= 0 ? at : indexAt(column.x, contentY + spacing));
    }

    anchors.fill: parent
    bottomMargin: Theme.margin
    boundsBehavior: Flickable.StopAtBounds
    flickableDirection: Flickable.VerticalFlick
    highlightFollowsCurrentItem: false
    keyNavigationEnabled: false
    pixelAligned: true
    reuseItems: true
    spacing: Theme.grid * 3

    delegate: ListRow {
        id: row

        required title
        required picture
        required property int index
        required property string lineId
        required property string detail
        required property string mark
        required property bool on
        required property var model

        activeFocusOnTab: ListView.isCurrentItem // the other rows are reached from it, in their order
        aside: mark === "waiting" ? qsTr("waits for %1").arg(model.aside) : !on ? detail : detail === "" ? root.doneWord : detail + ", " + root.doneWord
        chosen: root.choosing && root.chosenId === lineId
        done: on
        iconName: mark === "waiting" ? "clock" : picture.toString() === "" ? "step" : ""
        lift: true
        opens: !root.choosing
        width: column.width
        x: column.x

        Keys.onPressed: event => event.accepted = root.walk(event.key, index)
        onActiveFocusChanged: {
            if (activeFocus)
                root.currentIndex = index;
        }
        onTriggered: root.picked(lineId)
    }
    header: Item {
        height: column.height + Theme.margin + (column.height > 0 ? root.spacing : 0)
        width: root.width
    }

    onCountChanged: Qt.callLater(beginHere) // not before the rows have their places
    onHeightChanged: follower.follow()
    onMovementEnded: beginHere()
    // What comes above the first row is seen by who is at the beginning.
    onOriginYChanged: {
        if (contentY <= beginning)
            contentY = originY;
        beginning = originY;
    }

    Column {
        id: column

        parent: root.headerItem
        spacing: root.spacing
        width: Math.min(root.width - 2 * Theme.margin, Theme.readingWidth)
        x: (root.width - width) / 2
        y: Theme.margin
    }

    FocusFollower {
        id: follower

        flickable: root
    }

    ScrollMark {
        flickable: root
    }
}
