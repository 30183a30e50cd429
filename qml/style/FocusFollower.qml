// Brings what has the focus into view, wherever it comes from: the keyboard, a screen reader, the field being edited.
//
//   flickable   what scrolls; calls follow() when its height changes
import QtQuick

QtObject {
    id: root

    required property Flickable flickable
    readonly property Item focused: flickable.Window.activeFocusItem

    function follow() {
        if (focused && holds(focused))
            reveal(focused);
    }

    // Scrolls so that all of `item` can be seen, or its upper edge when it is taller than the page.
    function reveal(item: Item) {
        const top = item.mapToItem(flickable.contentItem, 0, 0).y;
        const bottom = top + item.height + Theme.margin;
        const first = flickable.originY - flickable.topMargin;
        const last = flickable.originY + flickable.contentHeight + flickable.bottomMargin - flickable.height;
        if (top - Theme.margin < flickable.contentY)
            flickable.contentY = Math.max(first, top - Theme.margin);
        else if (bottom > flickable.contentY + flickable.height)
            flickable.contentY = Math.min(bottom - flickable.height, Math.max(first, last));
    }

    function holds(item: Item): bool {
        for (let at = item; at; at = at.parent) {
            if (at === flickable.contentItem)
                return true;
        }
        return false;
    }

    onFocusedChanged: follow()
}
