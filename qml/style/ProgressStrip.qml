// Work in the background, with a way out.
//
//   text        what is under way
//   progress    0 to 1, or -1 where the length is not known
//   canCancel   whether it can be stopped
//   cancelled()
import QtQuick

Rectangle {
    id: root

    property string text: ""
    property real progress: -1
    property bool canCancel: true

    signal cancelled

    Accessible.name: text
    Accessible.role: Accessible.ProgressBar
    color: Theme.panel
    implicitHeight: Math.max(Theme.touch, words.implicitHeight) + Theme.grid * 3
    implicitWidth: Theme.liftKeyWidth * 3
    radius: Theme.corner

    Label {
        id: words

        anchors.left: parent.left
        anchors.leftMargin: Theme.margin
        anchors.right: stopper.visible ? stopper.left : parent.right
        anchors.verticalCenter: parent.verticalCenter
        text: root.text
    }

    ActionButton {
        id: stopper

        anchors.right: parent.right
        anchors.rightMargin: Theme.grid
        anchors.verticalCenter: parent.verticalCenter
        text: qsTr("Stop")
        visible: root.canCancel

        onTriggered: root.cancelled()
    }

    Rectangle {
        anchors.bottom: parent.bottom
        color: Theme.act
        height: Theme.grid
        radius: height / 2
        visible: root.progress >= 0
        width: parent.width * Math.min(1, root.progress)
    }

    BusyBar {
        anchors.bottom: parent.bottom
        running: root.visible && root.progress < 0
        tone: Theme.act
        width: parent.width
    }
}
