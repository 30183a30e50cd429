// What can be done in a strip step. Until there is a photo, taking it is the main thing.
import QtQuick
import Undercowl
import Undercowl.Style

Column {
    id: root

    required property StripView strip

    readonly property real half: (width - Theme.targetGap) / 2
    // Qt 6.4 compiles an enum in a condition wrongly.
    readonly property int main: ActionButton.Main
    readonly property int other: ActionButton.Other
    readonly property bool pictured: strip.photos.count > 0

    signal photo
    signal wires
    signal hardware
    signal bag
    signal next

    spacing: Theme.targetGap

    Row {
        spacing: Theme.targetGap

        ActionButton {
            height: Theme.liftMain
            iconName: "camera"
            kind: root.pictured ? root.other : root.main
            lift: true
            text: qsTr("Photo")
            width: root.half

            onTriggered: root.photo()
        }

        ActionButton {
            height: Theme.liftMain
            iconName: "wire"
            lift: true
            text: qsTr("Wires")
            width: root.half

            onTriggered: root.wires()
        }
    }

    Row {
        spacing: Theme.targetGap

        ActionButton {
            lift: true
            text: qsTr("Hardware")
            width: root.half

            onTriggered: root.hardware()
        }

        ActionButton {
            lift: true
            text: root.strip.bag === "" ? qsTr("Bag") : qsTr("Bag %1").arg(root.strip.bag)
            width: root.half

            onTriggered: root.bag()
        }
    }

    ActionButton {
        busy: root.strip.saying
        busyText: qsTr("Saving")
        height: Math.max(Theme.liftOther, implicitContentHeight + topPadding + bottomPadding)
        kind: root.pictured ? root.main : root.other
        lift: true
        text: root.strip.corrects === "" ? qsTr("Next step") : qsTr("Keep the correction")
        width: parent.width

        onTriggered: root.next()
    }
}
