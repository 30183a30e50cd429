// What putting the part back takes beyond the strip step backwards.
//
//   opened()   it is to be changed
// Qt 6.4 knows no members of a list, cannot bind a delegate to the ids around it:
// qmllint disable type unqualified
import QtQuick
import Undercowl
import Undercowl.Style

Column {
    id: root

    required property ShopSession session
    property alias step: view.step
    readonly property bool nothing: view.renew.length === 0 && view.afterwards.length === 0 && view.apply === ""
    readonly property string silent: qsTr("Nothing follows from the words of the step. Look in the manual.")
    readonly property string usual: qsTr("Suggested by the words of the step: common practice. The manual comes first.")

    signal opened

    spacing: Theme.grid * 3

    NeedsView {
        id: view

        session: root.session
    }

    Repeater {
        model: view.bans

        CautionBox {
            required property string modelData

            text: modelData
            width: parent?.width ?? 0
        }
    }

    Panel {
        title: qsTr("To put it back")
        visible: root.step !== ""
        width: parent.width

        Label {
            strong: true
            text: qsTr("New: %1").arg(view.renew.join(", "))
            visible: view.renew.length > 0
            width: parent.width
        }

        Label {
            text: qsTr("Goes on it: %1").arg(view.apply)
            visible: view.apply !== ""
            width: parent.width
        }

        Label {
            text: qsTr("Afterwards: %1").arg(view.afterwards.join("; "))
            visible: view.afterwards.length > 0
            width: parent.width
        }

        Label {
            kind: Label.Aside
            text: !view.suggested ? qsTr("As you set it.") : root.nothing ? root.silent : root.usual
            tone: Theme.quiet
            width: parent.width
        }

        ActionButton {
            lift: true
            text: qsTr("Change")
            width: parent.width

            onTriggered: root.opened()
        }
    }
}
