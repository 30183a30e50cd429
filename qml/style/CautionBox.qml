// A caution: a triangle and what to heed, before the work that it is about.
//
//   text   what to heed
import QtQuick
import Undercowl.Style

Rectangle {
    id: root

    required property string text

    Accessible.name: qsTr("Caution: %1").arg(text)
    Accessible.role: Accessible.AlertMessage
    border.color: Theme.caution
    border.width: Theme.stroke
    color: Theme.panel
    implicitHeight: Math.max(words.implicitHeight, shape.height) + Theme.grid * 5
    implicitWidth: Theme.liftKeyWidth * 3
    radius: Theme.corner

    Icon {
        id: shape

        anchors.verticalCenter: parent.verticalCenter
        color: Theme.caution
        height: width
        name: "caution"
        width: Theme.icon
        x: Theme.margin
    }

    Label {
        id: words

        anchors.left: shape.right
        anchors.margins: Theme.margin
        anchors.right: parent.right
        anchors.verticalCenter: parent.verticalCenter
        strong: true
        text: root.text
        tone: Theme.caution
    }
}
