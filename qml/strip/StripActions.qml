// What can be done in a strip step. Until there is a photo, taking it is the main thing.
import QtQuick
import Undercowl
import Undercowl.Style

Column {
    id: root

    required property StripView strip

    readonly property real third: (width - 2 * Theme.targetGap) / 3
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
            lift: true
            text: qsTr("Wires")
            width: root.third

            onTriggered: root.wires()
        }

        ActionButton {
            lift: true
            text: qsTr("Held by")
            width: root.third

            onTriggered: root.hardware()
        }

        ActionButton {
            lift: true
            text: root.strip.bag === "" ? qsTr("Bag") : qsTr("Bag %1").arg(root.strip.bag)
            width: root.third

            onTriggered: root.bag()
        }
    }

    ThumbRow {
        ActionButton {
            height: Math.max(Theme.liftMain, implicitContentHeight + topPadding + bottomPadding)
            iconName: "camera"
            main: !root.pictured
            lift: true
            text: qsTr("Photo")
            width: root.pictured ? root.third : root.width - root.third - Theme.targetGap

            onTriggered: root.photo()
        }

        ActionButton {
            busy: root.strip.saying
            busyText: qsTr("Saving")
            height: Math.max(Theme.liftMain, implicitContentHeight + topPadding + bottomPadding)
            main: root.pictured
            lift: true
            text: root.strip.corrects === "" ? qsTr("Next step") : qsTr("Keep")
            width: root.pictured ? root.width - root.third - Theme.targetGap : root.third

            onTriggered: root.next()
        }
    }
}
