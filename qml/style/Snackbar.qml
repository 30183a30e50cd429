// Says what was done and offers to undo it, on the little room that there is. The latest is in front; undoing it brings
// the one before back. It stays at least 8 seconds, or until nextAction().
//
// At the lift the button comes first, and on less room the words become smaller; on the least what was done stands on the
// button itself, if it can be told there.
//
//   lift                    sized for gloved thumbs
//   spare                   so much at the far end is for words alone: a thumb may look for another button there
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
    readonly property bool tight: width < Theme.undoRoom
    // The button has no room for more than its icon; what it does stands beside it then, at the lift.
    readonly property bool iconic: lift ? !alone && width < Theme.liftKeyWidth * 2.1 : tight
    readonly property bool alone: lift && width < Theme.liftKeyWidth * 1.5
    // Room for the longest word in any language, and no more than that: the rest is for what was done.
    readonly property real wordWidth: Math.max(width * 0.45, Theme.liftKeyWidth + Theme.grid * 3)
    readonly property int leastSize: Math.round(Theme.asideSize / Theme.textScale)
    property bool lift: false
    property real spare: 0
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
        anchors.leftMargin: root.lift ? Theme.grid * 2 - Theme.targetGap : 0 // no letter of the title is seen beside it
        border.color: Theme.line
        border.width: Theme.hairline
        color: Theme.panel
        radius: Theme.corner
    }

    SnackWords {
        id: said

        height: root.height - 2 * Theme.edge
        largest: root.lift ? Theme.actionSize : root.tight ? root.leastSize : Theme.asideSize
        named: root.lift && root.iconic && root.token !== ""
        text: root.message
        visible: !root.alone && width >= Theme.touch
        whole: root.tight // half a sentence is none
        width: root.lift ? root.width - x - Theme.grid : undoer.x - Theme.grid - x
        x: root.lift ? undoer.width + Theme.grid * 2 : Theme.grid * 2
        y: (root.height - height) / 2
    }

    Loader {
        id: undoer

        anchors.verticalCenter: parent.verticalCenter
        sourceComponent: root.token === "" ? null : root.iconic ? asIcon : root.alone ? withWords : inWords
        width: root.alone ? root.width : root.lift && !root.iconic ? Math.min(implicitWidth, root.wordWidth, root.width - root.spare) : implicitWidth
        x: root.lift ? 0 : root.width - width - Theme.grid
    }

    Component {
        id: inWords

        ActionButton {
            description: root.message
            iconName: "undo"
            leftPadding: Theme.grid * 2
            lift: root.lift
            rightPadding: leftPadding
            text: qsTr("Undo")

            onTriggered: root.undo()
        }
    }

    Component {
        id: withWords

        ActionButton {
            bottomPadding: Theme.grid
            description: root.message
            leftPadding: Theme.grid / 2
            lift: true
            rightPadding: leftPadding
            text: qsTr("Undo")
            topPadding: Theme.edge

            contentItem: SnackWords {
                alone: true
                largest: Theme.textSize
                named: true
                text: root.message
                whole: true
            }

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
