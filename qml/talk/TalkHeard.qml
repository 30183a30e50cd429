// What was heard, to be read from a metre away, and the way to take it back; or why nothing was taken.
//
//   undoable   there is something to undo
import QtQuick
import Undercowl
import Undercowl.Style

Row {
    id: root

    required property LiftEar ear
    property string problem: ""
    property bool undoable: false

    readonly property string trouble: ear.told !== "" ? ear.told : problem

    signal undo

    spacing: Theme.targetGap
    visible: trouble !== "" || ear.heard !== ""

    Label {
        Accessible.role: Accessible.AlertMessage
        anchors.verticalCenter: parent.verticalCenter
        kind: root.trouble !== "" ? Label.Aside : root.ear.heard.length > 24 ? Label.Title : Label.Name
        text: root.trouble !== "" ? root.trouble : qsTr("Heard: %1").arg(root.ear.heard)
        tone: root.trouble !== "" ? Theme.caution : Theme.act
        width: parent.width - (button.visible ? button.width + parent.spacing : 0)
    }

    ActionButton {
        id: button

        anchors.verticalCenter: parent.verticalCenter
        description: qsTr("Takes back what was heard")
        lift: true
        text: qsTr("Undo")
        visible: root.undoable && root.trouble === ""
        width: Math.max(Theme.liftKeyWidth, implicitWidth)

        onTriggered: root.undo()
    }
}
