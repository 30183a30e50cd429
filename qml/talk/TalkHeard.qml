// What was heard, to be read from a metre away, and the way to take it back; or why nothing was taken; or that the microphone
// is open, and for what.
//
//   handsFree   the microphone is open without a touch
//   undoable    what was heard can be taken back here
import QtQuick
import Undercowl
import Undercowl.Style

Row {
    id: root

    required property LiftEar ear
    property string problem: ""
    property bool handsFree: false
    property bool undoable: false

    readonly property string trouble: ear.told !== "" ? ear.told : problem
    readonly property string open: !handsFree ? "" : ear.listening ? qsTr("Listening: say it.") : ear.waiting ? qsTr("Microphone on. Say \"%1\" first.").arg(ear.wakePhrase) : ""
    readonly property bool quiet: trouble === "" && ear.heard === ""

    signal undo

    spacing: Theme.targetGap
    visible: !quiet || open !== ""

    Icon {
        id: microphone

        anchors.verticalCenter: parent.verticalCenter
        color: root.ear.listening ? Theme.stop : Theme.caution
        height: width
        name: "record"
        visible: root.open !== ""
        width: Theme.icon
    }

    Label {
        // Large text is not to cover the page: what is long grows less.
        readonly property int most: text.length > 60 ? 20 : text.length > 24 ? 26 : Theme.titleSize
        readonly property int wanted: root.trouble !== "" ? Theme.asideSize : root.quiet || root.ear.heard.length > 16 ? Theme.textSize : Theme.titleSize

        Accessible.role: Accessible.AlertMessage
        anchors.verticalCenter: parent.verticalCenter
        font.pixelSize: Math.min(wanted, most)
        strong: root.trouble === ""
        text: root.trouble !== "" ? root.trouble : root.quiet ? root.open : qsTr("Heard: %1").arg(root.ear.heard)
        tone: root.trouble !== "" ? Theme.caution : !root.quiet ? Theme.act : root.ear.listening ? Theme.stop : Theme.caution
        width: parent.width - (microphone.visible ? microphone.width + parent.spacing : 0) - (button.visible ? button.width + parent.spacing : 0)
    }

    IconButton {
        id: button

        anchors.verticalCenter: parent.verticalCenter
        description: qsTr("Takes back what was heard")
        filled: true
        iconName: "undo"
        lift: true
        text: qsTr("Undo")
        visible: root.undoable && !root.quiet && root.trouble === ""

        onTriggered: root.undo()
    }
}
