// The wire said aloud, each as its turn comes, while 'on': again, slower, or its colour alone.
//
//   wire      what is read back
//   speaker   the device's voice; null where there is none
//   on        whether it speaks
import QtQuick
import Undercowl
import Undercowl.Style

Column {
    id: root

    required property ReadBackView wire
    property Speaker speaker
    property bool on: false

    readonly property real third: (width - 2 * Theme.targetGap) / 3

    spacing: Theme.targetGap
    visible: on

    Voice {
        id: voice

        sentence: root.on ? root.wire.sentence : ""
        slowness: settings.slowness
        speaker: root.speaker
    }

    ShopSettings {
        id: settings

        session: root.wire.session
    }

    Label {
        kind: Label.Aside
        text: voice.problem
        tone: Theme.caution
        visible: text !== ""
        width: parent.width
    }

    Row {
        spacing: Theme.targetGap

        ActionButton {
            lift: true
            text: qsTr("Say again")
            width: root.third

            onTriggered: voice.say(root.wire.sentence)
        }

        ActionButton {
            description: qsTr("Says it again, more slowly; after the slowest comes the usual pace")
            lift: true
            text: qsTr("Slower")
            width: root.third

            onTriggered: {
                settings.slowness = settings.slowness >= 0.9 ? 0 : settings.slowness + 0.3;
                voice.say(root.wire.sentence);
            }
        }

        ActionButton {
            description: qsTr("Says its colour alone")
            lift: true
            text: qsTr("Wire only")
            width: root.third

            onTriggered: voice.say(root.wire.colourSentence)
        }
    }
}
