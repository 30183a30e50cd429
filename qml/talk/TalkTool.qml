// Shows or hides the button that is held for speaking, on all screens at the lift.
import QtQuick
import Undercowl
import Undercowl.Style

PageTool {
    id: root

    required property ShopPage page
    readonly property ShopSettings settings: ShopSettings {
        session: root.page.session
    }

    filled: settings.voice
    iconName: "memo"
    offered: page.listener !== null
    text: settings.voice ? qsTr("Buttons only") : qsTr("Speak")

    onTriggered: settings.voice = !settings.voice
}
