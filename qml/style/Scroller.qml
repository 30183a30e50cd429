// A page that scrolls down when its content is taller, and brings the field being edited into view.
//
//   spacing   between the children, which stand in a column
//   content   the children
import QtQuick

Flickable {
    id: root

    property alias spacing: column.spacing
    default property alias content: column.data

    // Scrolls so that all of `item` can be seen, or its upper edge when it is taller than the page.
    function reveal(item: Item) {
        const top = item.mapToItem(column, 0, 0).y;
        const bottom = top + item.height + Theme.margin;
        if (top - Theme.margin < contentY)
            contentY = Math.max(0, top - Theme.margin);
        else if (bottom > contentY + height)
            contentY = Math.min(bottom - height, Math.max(0, contentHeight - height));
    }

    function holds(item: Item): bool {
        for (let at = item; at; at = at.parent) {
            if (at === column)
                return true;
        }
        return false;
    }

    boundsBehavior: Flickable.StopAtBounds
    clip: true
    contentHeight: column.implicitHeight + 2 * Theme.margin
    contentWidth: width
    flickableDirection: Flickable.VerticalFlick
    pixelAligned: true

    onHeightChanged: focusFollower.follow()

    Column {
        id: column

        spacing: Theme.grid * 3
        width: Math.min(root.width - 2 * Theme.margin, Theme.readingWidth)
        x: (root.width - width) / 2
        y: Theme.margin
    }

    QtObject {
        id: focusFollower

        readonly property Item focused: root.Window.activeFocusItem

        function follow() {
            if (focused && root.holds(focused))
                root.reveal(focused);
        }

        onFocusedChanged: follow()
    }

    Rectangle {
        color: Theme.line
        height: Math.max(Theme.touch, root.visibleArea.heightRatio * root.height)
        opacity: 0.6
        parent: root
        radius: width / 2
        visible: root.visibleArea.heightRatio < 1
        width: Theme.grid
        x: root.width - width - Theme.hairline
        y: root.visibleArea.yPosition * (root.height - height + root.visibleArea.heightRatio * root.height)
    }
}
