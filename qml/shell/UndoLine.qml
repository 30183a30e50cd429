// The line that says what was done and offers to undo it, fed by the session: after the sync, never before. It lies on the
// title of the page, so that nothing below gives way: a second touch on the same place meets the same button.
// Qt 6.4 cannot bind a component to the ids around it:
// qmllint disable unqualified
import QtQuick
import Undercowl
import Undercowl.Style

Item {
    id: root

    required property ShopSession session
    property bool lift: false // sized for gloved thumbs
    property real spare: 0    // see Snackbar

    readonly property alias used: loader.active // something was said since the start
    readonly property bool shown: loader.item?.visible ?? false

    implicitHeight: loader.item?.implicitHeight ?? 0

    Loader {
        id: loader

        active: false // until there is something to say
        anchors.fill: parent

        sourceComponent: Snackbar {
            lift: root.lift
            spare: root.spare

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
