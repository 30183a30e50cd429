// The line that says what was done and offers to undo it, fed by the session: after the sync, never before.
import QtQuick
import Undercowl
import Undercowl.Style

Item {
    id: root

    required property ShopSession session

    height: line.visible ? line.height + Theme.margin : 0

    Snackbar {
        id: line

        anchors.horizontalCenter: parent.horizontalCenter
        width: Math.min(parent.width - 2 * Theme.margin, Theme.readingWidth)

        onUndoRequested: root.session.undoLast()
    }

    Connections {
        function onUndoChanged() {
            line.nextAction();
            if (root.session.undoText !== "")
                line.show(root.session.undoText, "last");
        }

        target: root.session
    }
}
