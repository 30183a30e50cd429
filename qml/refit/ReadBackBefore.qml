// What was said of it on an earlier pass.
import QtQuick
import Undercowl
import Undercowl.Style

Label {
    id: root

    required property ReadBackWalk wire

    kind: Label.Aside
    text: wire.checked === "matches" ? qsTr("checked before: matches") : qsTr("checked before: does not match")
    tone: wire.checked === "matches" ? Theme.act : Theme.stop
    visible: wire.checked !== ""
}
