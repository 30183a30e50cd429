// The head of a page: the way back, what the page is, and a few words at the other end.
//
//   title      what the page is about
//   aside      such as "3 / 6" or a job's number
//   canGoBack  whether the arrow is shown
//   tools      children stand at the far end, such as IconButtons
//   back()     the arrow was tapped; the one way to leave, as the system's back
// Qt 6.4 cannot bind a component to the ids around it:
// qmllint disable unqualified
import QtQuick

Item {
    id: root

    property string title: ""
    property string aside: ""
    property bool canGoBack: true
    default property alias tools: toolRow.data

    signal back

    implicitHeight: Math.max(Theme.touch, heading.implicitHeight) + Theme.grid * 2
    implicitWidth: Theme.liftKeyWidth * 3

    Loader {
        id: arrow

        active: root.canGoBack
        anchors.verticalCenter: parent.verticalCenter
        visible: active
        x: Theme.grid

        sourceComponent: IconButton {
            iconName: "back"
            text: qsTr("Back")

            onTriggered: root.back()
        }
    }

    Label {
        id: heading

        Accessible.role: Accessible.Heading
        anchors.left: arrow.visible ? arrow.right : parent.left
        anchors.leftMargin: arrow.visible ? Theme.grid * 2 : Theme.margin
        anchors.right: remark.left
        anchors.rightMargin: Theme.grid * 2
        anchors.verticalCenter: parent.verticalCenter
        // A long name takes a second line of smaller words, not a higher head.
        font.pixelSize: metrics.advanceWidth > width ? Theme.textSize : Theme.titleSize
        kind: Label.Title
        text: root.title
    }

    TextMetrics {
        id: metrics

        font.family: Theme.family
        font.pixelSize: Theme.titleSize
        font.weight: Font.Bold
        text: root.title
    }

    Label {
        id: remark

        anchors.right: toolRow.left
        anchors.rightMargin: toolRow.width > 0 ? Theme.grid : Theme.margin
        anchors.verticalCenter: parent.verticalCenter
        kind: Label.Aside
        mono: true
        text: root.aside
        width: Math.min(implicitWidth, root.width / 3)
    }

    Row {
        id: toolRow

        anchors.right: parent.right
        anchors.verticalCenter: parent.verticalCenter
        spacing: Theme.grid * 2
    }
}
