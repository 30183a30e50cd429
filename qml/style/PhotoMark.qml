// A ring on a photo: dark in light, so that it shows on any picture. Its place is its middle.
//
//   label   a few letters in the ring, such as a place's number
import QtQuick

Rectangle {
    id: root

    property string label: ""

    border.color: Theme.markDark
    border.width: Theme.stroke * 3
    color: "transparent"
    height: width
    radius: width / 2
    width: Theme.touch

    Rectangle {
        anchors.fill: parent
        anchors.margins: Theme.stroke
        border.color: Theme.markLight
        border.width: Theme.stroke
        color: "transparent"
        radius: width / 2
    }

    Rectangle {
        anchors.centerIn: parent
        color: Theme.markDark
        height: number.implicitHeight
        radius: Theme.grid
        visible: root.label !== ""
        width: number.implicitWidth + Theme.grid * 2

        Label {
            id: number

            anchors.centerIn: parent
            kind: Label.Aside
            mono: true
            strong: true
            text: root.label
            tone: Theme.markLight
        }
    }
}
