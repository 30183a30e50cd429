// The wire said aloud, each as its turn comes, while 'on': again, slower, or its colour alone. Whoever holds the button
// answers by voice: done, does not match, next, back, again, slower, undo, stop.
//
//   wire      what is read back
//   speaker   the device's voice; null where there is none
//   listener  the device's microphone and ear; null where there is none
//   on        whether it speaks
//   silenced()   'stop' was said
import QtQuick
import Undercowl
import Undercowl.Style

Column {
    id: root

    required property ReadBackView wire
    property Speaker speaker
    property Listener listener
    property bool on: false

    readonly property real third: (width - 2 * Theme.targetGap) / 3

    signal silenced

    function slower() {
        settings.slowness = settings.slowness >= 0.9 ? 0 : settings.slowness + 0.3;
        voice.say(wire.sentence);
    }

    spacing: Theme.targetGap
    visible: on

    Voice {
        id: voice

        sentence: root.on ? root.wire.sentence : ""
        slowness: settings.slowness
        speaker: root.speaker
    }

    ReadBackEar {
        id: ear

        listener: root.listener
        wire: root.wire

        onAgain: voice.say(root.wire.sentence)
        onRefused: voice.say("say it again")
        onSlower: root.slower()
        onStop: root.silenced()
    }

    ShopSettings {
        id: settings

        session: root.wire.session
    }

    Label {
        kind: Label.Aside
        text: voice.problem !== "" ? voice.problem : ear.told
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

            onTriggered: root.slower()
        }

        ActionButton {
            description: qsTr("Says its colour alone")
            lift: true
            text: qsTr("Wire only")
            width: root.third

            onTriggered: voice.say(root.wire.colourSentence)
        }
    }

    ActionButton {
        busy: ear.thinking
        busyText: qsTr("Hearing")
        description: qsTr("While it is held, say done, does not match, next, back, again, slower, undo or stop")
        iconName: "record"
        kind: ear.listening ? ActionButton.Refuse : ActionButton.Other
        lift: true
        text: ear.listening ? qsTr("Listening") : qsTr("Hold and speak")
        visible: root.listener !== null
        width: root.width

        onDownChanged: {
            if (down)
                ear.press();
            else
                ear.release();
        }
    }
}
