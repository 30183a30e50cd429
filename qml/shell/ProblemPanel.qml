// What went wrong, with its remedy; stays until it is read.
import QtQuick
import Undercowl
import Undercowl.Style

Item {
    id: root

    required property ShopSession session

    height: panel.visible ? panel.height + Theme.margin : 0

    Panel {
        id: panel

        anchors.horizontalCenter: parent.horizontalCenter
        tone: Theme.stop
        visible: root.session.problem !== ""
        width: Math.min(parent.width - 2 * Theme.margin, Theme.readingWidth)

        Label {
            text: root.session.problem
            tone: Theme.stop
            width: parent.width
        }

        ActionButton {
            text: root.session.state === ShopSession.Failed ? qsTr("Try again") : qsTr("Read")
            width: parent.width

            onTriggered: root.session.state === ShopSession.Failed ? root.session.tryAgain() : root.session.clearProblem()
        }
    }
}
