// Stands in the place of the actions while the glass is locked. Two targets, one after the other and far apart, unlock it:
// what runs down the glass or rests on it does not touch the one and then, alone, the other.
//
//   corner   the item at whose top the second target appears, at the other side than the first
import QtQuick
import Undercowl.Style

Item {
    id: root

    required property Item corner
    property bool begun: false

    implicitHeight: Math.max(first.height, words.height)

    Component.onCompleted: first.forceActiveFocus(Qt.TabFocusReason)

    Timer {
        id: patience

        interval: Theme.unlockTime

        onTriggered: root.begun = false
    }

    Connections {
        function onStrayed() {
            root.begun = false;
        }

        target: Glass
    }

    Label {
        id: words

        Accessible.role: Accessible.AlertMessage
        anchors.verticalCenter: parent.verticalCenter
        strong: true
        text: root.begun ? qsTr("Now the button above, in the other corner.") : qsTr("Locked. What is touched here does nothing; speaking works.")
        width: parent.width - first.width - Theme.targetGap
        x: Theme.leftHanded ? first.width + Theme.targetGap : 0
    }

    ActionButton {
        id: first

        anchors.verticalCenter: parent.verticalCenter
        description: qsTr("The first of two touches")
        iconName: "lock"
        lift: true
        text: qsTr("Unlock")
        throughLock: true
        width: Math.max(Theme.liftKeyWidth * 1.3, implicitWidth)
        x: Theme.leftHanded ? 0 : parent.width - width

        onTriggered: {
            root.begun = true;
            patience.restart();
            second.forceActiveFocus(Qt.TabFocusReason);
        }
    }

    ActionButton {
        id: second

        description: qsTr("The second of two touches")
        height: Math.max(Theme.liftOther, implicitHeight)
        kind: ActionButton.Main
        lift: true
        parent: root.corner
        text: qsTr("Unlock now")
        throughLock: true
        visible: root.begun
        width: Math.max(Theme.liftKeyWidth * 1.3, implicitWidth)
        x: Theme.leftHanded ? parent.width - width - Theme.grid * 2 : Theme.grid * 2
        y: Theme.grid * 2
        z: 1

        onTriggered: Glass.locked = false
    }
}
