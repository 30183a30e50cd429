// The files that were made, and what the device can do with them: give them to a receiver of the mechanic's choice, or show
// them.
//
//   files    names in the folder; nothing is shown while there are none
//   folder   where they lie
//   receiverTitle   what they are, for whoever receives them
// Qt 6.4 cannot bind a delegate to the ids around it:
// qmllint disable unqualified
import QtQuick
import Undercowl
import Undercowl.Style

Panel {
    id: root

    required property ShopSession session
    property list<string> files
    property string folder: ""
    property string receiverTitle: ""

    title: qsTr("Written")
    tone: Theme.act
    visible: files.length > 0

    DeviceFiles {
        id: device

        onRefused: why => root.session.tell(why)
    }

    Repeater {
        model: root.files

        ListRow {
            required property string modelData

            iconName: "list"
            title: modelData
            width: parent?.width ?? 0

            onTriggered: device.show(root.folder, modelData)
        }
    }

    Label {
        kind: Label.Aside
        text: root.folder
        tone: Theme.quiet
        visible: !device.shares
        width: parent.width
    }

    ActionButton {
        iconName: device.shares ? "share" : "archive"
        lift: true
        text: device.shares ? qsTr("Share") : qsTr("Show the folder")
        width: parent.width

        onTriggered: device.share(root.folder, root.files, root.receiverTitle)
    }
}
