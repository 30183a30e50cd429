// 'Does not match' is written down; what next?
//
//   settle   which one is on the screen
// Qt 6.4 knows no string list as a list of strings:
// qmllint disable type
import QtQuick
import Undercowl
import Undercowl.Style

Column {
    id: root

    required property ReadBackWalk wire
    required property Settle settle

    readonly property real half: (width - Theme.targetGap) / 2

    signal photo

    spacing: Theme.targetGap

    Label {
        kind: Label.Title
        text: qsTr("Written down: %1 does not match.").arg(root.wire.place)
        tone: Theme.stop
        width: parent.width
    }

    Row {
        spacing: Theme.targetGap

        ActionButton {
            enabled: root.wire.otherPlaces.length > 0
            lift: true
            settle: root.settle
            text: qsTr("Swapped")
            width: root.half

            onTriggered: others.open()
        }

        ActionButton {
            iconName: "camera"
            lift: true
            settle: root.settle
            text: qsTr("Photo")
            width: root.half

            onTriggered: root.photo()
        }
    }

    ThumbRow {
        ActionButton {
            height: Theme.liftMain
            lift: true
            settle: root.settle
            text: qsTr("Next one")
            width: root.half

            onTriggered: root.wire.goOn()
        }

        ActionButton {
            kind: ActionButton.Main
            lift: true
            settle: root.settle
            text: qsTr("Look again")
            width: root.half

            onTriggered: root.wire.lookAgain()
        }
    }

    ChoiceSheet {
        id: others

        lift: true
        options: root.wire.otherPlaces
        title: qsTr("Swapped with which?")

        onChosen: index => root.wire.swappedWith(index)
    }
}
