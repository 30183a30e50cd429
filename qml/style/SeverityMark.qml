// How grave a finding is: a shape that differs and always the word.
//
//   severity   "unsafe" (filled square), "soon" (half filled) or "note" (outline)
import QtQuick
import Undercowl.Style

Row {
    id: root

    required property string severity

    readonly property color tone: severity === "unsafe" ? Theme.stop : severity === "soon" ? Theme.caution : Theme.quiet
    readonly property string word: severity === "unsafe" ? qsTr("unsafe") : severity === "soon" ? qsTr("soon")
                                                                                               : qsTr("note")

    Accessible.name: word
    Accessible.role: Accessible.StaticText
    spacing: Theme.grid * 2

    Icon {
        anchors.verticalCenter: parent.verticalCenter
        color: root.tone
        height: width
        name: root.severity === "unsafe" || root.severity === "soon" ? root.severity : "note"
        width: Theme.smallIcon
    }

    Label {
        anchors.verticalCenter: parent.verticalCenter
        kind: Label.Aside
        strong: true
        text: root.word
        tone: root.tone
    }
}
