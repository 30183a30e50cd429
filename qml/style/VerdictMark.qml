// A verdict: tick in a circle, diamond with a wavy line, or cross in a square, its word, and why.
//
//   verdict   "within", "undecided" or "outside"
//   reason    such as the probability and where the limit comes from
import QtQuick
import Undercowl.Style

Rectangle {
    id: root

    required property string verdict
    property string reason: ""

    readonly property color tone: verdict === "within" ? Theme.act : verdict === "outside" ? Theme.stop : Theme.caution
    readonly property string word: verdict === "within" ? qsTr("within") : verdict === "outside" ? qsTr("outside")
                                                                                               : qsTr("too close to call")

    Accessible.description: reason
    Accessible.name: word
    Accessible.role: Accessible.StaticText
    border.color: tone
    border.width: Theme.stroke
    color: Theme.panel
    implicitHeight: words.implicitHeight + Theme.grid * 4
    implicitWidth: Theme.liftKeyWidth * 3
    radius: Theme.corner

    Icon {
        id: shape

        anchors.verticalCenter: parent.verticalCenter
        color: root.tone
        height: width
        name: root.verdict === "within" ? "within" : root.verdict === "outside" ? "outside" : "close-call"
        width: Theme.bigIcon
        x: Theme.margin
    }

    Column {
        id: words

        anchors.left: shape.right
        anchors.margins: Theme.margin
        anchors.right: parent.right
        anchors.verticalCenter: parent.verticalCenter

        Label {
            kind: Label.Name
            text: root.word
            width: parent.width
        }

        Label {
            kind: Label.Aside
            text: root.reason
            visible: text !== ""
            width: parent.width
        }
    }
}
