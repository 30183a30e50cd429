// "Saved", and only when told so: set `saved` after the store has answered, never before.
//
//   saved    the sync has returned
//   saving   it is under way
import QtQuick
import Undercowl.Style

Row {
    id: root

    property bool saved: false
    property bool saving: false

    Accessible.name: words.text
    Accessible.role: Accessible.StaticText
    spacing: Theme.grid
    visible: saved || saving

    Icon {
        anchors.verticalCenter: parent.verticalCenter
        color: Theme.act
        height: width
        name: "within"
        visible: root.saved && !root.saving
        width: Theme.smallIcon
    }

    Label {
        id: words

        anchors.verticalCenter: parent.verticalCenter
        kind: Label.Aside
        text: root.saving ? qsTr("Saving") : root.saved ? qsTr("Saved") : ""
    }
}
