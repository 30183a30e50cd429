// Says what was done and offers to undo it, on the little room that there is. The latest is in front; undoing it brings
// the one before back. It stays at least 8 seconds, or until nextAction().
//
//   lift                    sized for gloved thumbs
//   show(message, token)    token names what undo would take back; empty: nothing to undo
//   undoRequested(token)
//   nextAction()            the user has gone on to something else
//   message, count          what is shown, how many wait
// Qt 6.4 cannot bind a component to the ids around it:
// qmllint disable unqualified
import QtQuick

Item {
    id: root

    readonly property int count: entries.count
    // Little room leaves the button its icon alone.
    readonly property bool tight: width < Theme.liftKeyWidth * 3 * Theme.textScale
    property bool lift: false
    property string message: ""
    property string token: ""

    signal undoRequested(token: string)

    function show(text: string, undoToken: string) {
        entries.append({
            "said": text,
            "undo": undoToken
        });
        showLatest();
    }

    function nextAction() {
        entries.clear();
        showLatest();
    }

    function undo() {
        const taken = token;
        if (taken === "")
            return;
        entries.remove(entries.count - 1);
        showLatest();
        undoRequested(taken);
    }

    function showLatest() {
        if (entries.count === 0) {
            patience.stop();
            message = "";
            token = "";
            return;
        }
        const latest = entries.get(entries.count - 1);
        message = latest.said;
        token = latest.undo;
        patience.restart();
    }

    Accessible.name: message
    Accessible.role: Accessible.AlertMessage
    implicitHeight: Math.max(Theme.touch, undoer.height)
    implicitWidth: Theme.liftKeyWidth * 3
    visible: message !== ""

    Timer {
        id: patience

        interval: Theme.undoTime

        onTriggered: root.nextAction()
    }

    ListModel {
        id: entries
    }

    Rectangle {
        anchors.fill: parent
        border.color: Theme.line
        border.width: Theme.hairline
        color: Theme.panel
        radius: Theme.corner
    }

    Label {
        id: said

        anchors.verticalCenter: parent.verticalCenter
        elide: Text.ElideRight
        // Among the tools of the head there is little room: what was said stands on the page in the size that is wanted.
        font.pixelSize: root.tight ? Theme.asideSize / Theme.textScale : Theme.asideSize
        fontSizeMode: Text.Fit
        height: root.height - Theme.grid
        kind: Label.Aside
        minimumPixelSize: Math.round(Theme.asideSize / Theme.textScale)
        text: root.message
        tone: Theme.ink
        verticalAlignment: Text.AlignVCenter
        // Fewer letters to a line are no words, and half a sentence is none: then the button alone says it.
        visible: width >= Theme.touch && !(root.tight && truncated)
        width: undoer.x - Theme.grid - x
        x: Theme.grid * 2
    }

    Loader {
        id: undoer

        anchors.right: parent.right
        anchors.rightMargin: root.lift ? 0 : Theme.grid
        anchors.verticalCenter: parent.verticalCenter
        sourceComponent: root.token === "" ? null : root.tight ? asIcon : inWords
    }

    Component {
        id: inWords

        ActionButton {
            iconName: "undo"
            lift: root.lift
            text: qsTr("Undo")

            onTriggered: root.undo()
        }
    }

    Component {
        id: asIcon

        IconButton {
            description: root.message
            filled: true
            iconName: "undo"
            lift: root.lift
            text: qsTr("Undo")

            onTriggered: root.undo()
        }
    }
}
