// Nothing here yet: says what would be here and how it gets here.
//
//   iconName, title, text   the second line is the way on
import QtQuick
import Undercowl.Style

Column {
    id: root

    property string iconName: ""
    property string title: ""
    property string text: ""

    spacing: Theme.grid * 2

    Icon {
        anchors.horizontalCenter: parent.horizontalCenter
        color: Theme.line
        height: width
        name: root.iconName
        visible: name !== ""
        width: Theme.touch
    }

    Label {
        horizontalAlignment: Text.AlignHCenter
        kind: Label.Title
        text: root.title
        width: parent.width
    }

    Label {
        horizontalAlignment: Text.AlignHCenter
        text: root.text
        tone: Theme.quiet
        visible: text !== ""
        width: parent.width
    }
}
