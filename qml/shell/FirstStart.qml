// Who works on this phone: asked once, before anything can be said, since each entry names its mechanic.
import QtQuick
import Undercowl
import Undercowl.Style

Rectangle {
    id: root

    required property ShopSession session

    signal opens(page: string, properties: var)

    color: Theme.ground

    // Nothing behind it may be touched.
    MouseArea {
        anchors.fill: parent
    }

    Scroller {
        anchors.fill: parent

        Label {
            kind: Label.Name
            text: qsTr("Who works here?")
            width: parent.width
        }

        Label {
            text: qsTr("Each entry names who made it. Your name stays on this phone and in the records that you hand over.")
            tone: Theme.quiet
            width: parent.width
        }

        TextEntry {
            id: name

            label: qsTr("Your name")
            hint: qsTr("as the owner will read it")
            width: parent.width

            // By Enter, not by leaving the field for the button below.
            onAccepted: {
                if (name.fieldFocus)
                    begin.act();
            }
        }

        ActionButton {
            id: begin

            enabled: name.text.trim() !== ""
            kind: ActionButton.Main
            lift: true
            text: qsTr("Begin")
            width: parent.width

            onTriggered: root.session.nameMechanic(name.commit())
        }

        ActionButton {
            text: qsTr("Bring a shop back")
            width: parent.width

            onTriggered: root.opens("RestorePage", {})
        }
    }
}
