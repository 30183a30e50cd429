// A page that scrolls down when its content is taller, and brings the field being edited into view.
//
//   spacing   between the children, which stand in a column
//   content   the children
//   inset     above and below them
//   reveal(item)   scrolls until the whole item is seen
import QtQuick

Flickable {
    id: root

    property alias spacing: column.spacing
    property real inset: Theme.margin
    default property alias content: column.data

    function reveal(item: Item) {
        const top = item.mapToItem(contentItem, 0, 0).y;
        if (top < contentY)
            contentY = Math.max(0, top - Theme.margin);
        else if (top + item.height > contentY + height)
            contentY = Math.max(0, Math.min(top - Theme.margin, contentHeight - height));
    }

    boundsBehavior: Flickable.StopAtBounds
    clip: true
    contentHeight: column.implicitHeight + 2 * inset
    contentWidth: width
    flickableDirection: Flickable.VerticalFlick
    pixelAligned: true

    onHeightChanged: follower.follow()

    Column {
        id: column

        spacing: Theme.grid * 3
        width: Math.min(root.width - 2 * Theme.margin, Theme.readingWidth)
        x: (root.width - width) / 2
        y: root.inset
    }

    FocusFollower {
        id: follower

        flickable: root
    }

    ScrollMark {
        flickable: root
    }
}
