// Says what was done and offers to undo it. The latest is in front; undoing it brings the one before back. It stays at
// least 8 seconds, or until nextAction().
//
//   show(message, token)    token names what undo would take back; empty: nothing to undo
//   undoRequested(token)
//   nextAction()            the user has gone on to something else
//   message, count          what is shown, how many wait
import QtQuick

Item {
    id: root

    readonly property int count: entries.count
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
    implicitHeight: Math.max(Theme.touch, words.implicitHeight) + Theme.grid * 4
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
        id: words

        anchors.left: parent.left
        anchors.leftMargin: Theme.margin
        anchors.right: undoButton.visible ? undoButton.left : parent.right
        anchors.rightMargin: Theme.grid * 2
        anchors.verticalCenter: parent.verticalCenter
        text: root.message
    }

    ActionButton {
        id: undoButton

        anchors.right: parent.right
        anchors.rightMargin: Theme.grid * 2
        anchors.verticalCenter: parent.verticalCenter
        iconName: "undo"
        text: qsTr("Undo")
        visible: root.token !== ""

        onTriggered: root.undo()
    }
}
