// Shows or hides the button that is held for speaking, on all screens at the lift.
import QtQuick
import Undercowl
import Undercowl.Style

IconButton {
    id: root

    required property ShopPage page

    filled: settings.voice
    iconName: "memo"
    text: settings.voice ? qsTr("Buttons only") : qsTr("Speak")
    visible: page.listener !== null

    onTriggered: settings.voice = !settings.voice

    ShopSettings {
        id: settings

        session: root.page.session
    }
}
