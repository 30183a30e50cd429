// One picture or folder to choose.
// Qt 6.4 cannot defer an item that has an id:
// qmllint disable deferred-property-id
import QtQuick
import Undercowl.Style

Pressable {
    id: root

    required property string lineId
    required property string title
    required property string mark
    required property url picture

    signal chosen(path: string, isFolder: bool)

    Accessible.name: title
    implicitHeight: width * 3 / 4 + name.implicitHeight + Theme.grid * 2
    text: title

    background: Rectangle {
        color: root.down ? Theme.pressed : Theme.panel
        radius: Theme.corner

        FocusRing {
            target: root
        }
    }
    contentItem: Item {
        Image {
            anchors.bottom: name.top
            anchors.bottomMargin: Theme.grid
            asynchronous: true
            autoTransform: true
            fillMode: Image.PreserveAspectCrop
            height: parent.height - name.height - Theme.grid
            source: root.mark === "folder" ? "" : root.picture
            sourceSize.width: 320
            width: parent.width
        }

        Icon {
            anchors.centerIn: parent
            height: width
            name: "list"
            visible: root.mark === "folder"
            width: Theme.bigIcon
        }

        Label {
            id: name

            anchors.bottom: parent.bottom
            elide: Text.ElideMiddle
            horizontalAlignment: Text.AlignHCenter
            kind: Label.Aside
            maximumLineCount: 1
            text: root.title
            width: parent.width
        }
    }

    onTriggered: root.chosen(lineId, mark === "folder")
}
