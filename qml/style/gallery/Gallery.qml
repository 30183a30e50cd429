// Shows every control in every state. Pages by name, so that pictures can be taken of each.
//
//   page   the page that is open: see pages
import QtQuick
import Undercowl.Style

AppWindow {
    id: root

    property string page: "Actions"
    readonly property list<string> pages: ["Actions", "Wires", "Fields", "Marks", "Choices", "Measure", "Photos", "Words", "Glass"]
    readonly property list<string> themes: ["night", "day", "sun"]

    height: 640
    title: qsTr("Undercowl controls")
    visible: true
    width: 360

    Row {
        id: bar

        padding: Theme.grid
        spacing: Theme.grid * 2

        IconButton {
            iconName: "theme"
            text: qsTr("Next theme")

            onTriggered: root.theme = root.themes[(root.themes.indexOf(root.theme) + 1) % root.themes.length]
        }

        IconButton {
            iconName: "next"
            text: qsTr("Next page")

            onTriggered: root.page = root.pages[(root.pages.indexOf(root.page) + 1) % root.pages.length]
        }

        Label {
            anchors.verticalCenter: parent.verticalCenter
            kind: Label.Title
            text: root.page
        }
    }

    Loader {
        anchors.bottom: parent.bottom
        anchors.left: parent.left
        anchors.right: parent.right
        anchors.top: bar.bottom
        source: root.page + "Page.qml"
    }
}
