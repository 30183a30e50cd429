// A raised surface that holds what belongs together; grows with its content, laid out in a column.
//
//   title     a heading within the panel; none when empty
//   tone      the outline's colour; none unless set (caution, stop, act)
//   spacing   between children
import QtQuick

Rectangle {
    id: root

    property string title: ""
    property color tone: "transparent"
    property alias spacing: column.spacing
    default property alias content: column.data

    border.color: tone.a > 0 ? tone : Theme.line
    border.width: tone.a > 0 ? Theme.stroke : Theme.mode === "night" ? 0 : Theme.hairline
    color: Theme.panel
    implicitHeight: column.implicitHeight + 2 * column.anchors.margins
    implicitWidth: column.implicitWidth + 2 * column.anchors.margins
    radius: Theme.corner

    Column {
        id: column

        anchors.left: parent.left
        anchors.margins: Theme.margin
        anchors.right: parent.right
        anchors.top: parent.top
        spacing: Theme.grid * 2

        Label {
            Accessible.role: Accessible.Heading
            // A sentence is no headline.
            kind: root.title.length > 60 ? Label.Body : Label.Title
            strong: true
            text: root.title
            visible: text !== ""
            width: parent.width
        }
    }
}
