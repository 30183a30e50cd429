// The line that says what was done and offers to undo it, fed by the session: after the sync, never before.
// Qt 6.4 cannot bind a component to the ids around it:
// qmllint disable unqualified
import QtQuick
import Undercowl
import Undercowl.Style

Item {
    id: root

    required property ShopSession session

    height: loader.item?.visible ? loader.height + Theme.margin : 0

    Loader {
        id: loader

        active: false // until there is something to say
        anchors.horizontalCenter: parent.horizontalCenter
        width: Math.min(parent.width - 2 * Theme.margin, Theme.readingWidth)

        sourceComponent: Snackbar {
            onUndoRequested: root.session.undoLast()
        }
    }

    Connections {
        function onUndoChanged() {
            if (root.session.undoText !== "")
                loader.active = true;
            const line = loader.item as Snackbar;
            if (line === null)
                return;
            line.nextAction();
            if (root.session.undoText !== "")
                line.show(root.session.undoText, "last");
        }

        target: root.session
    }
}
