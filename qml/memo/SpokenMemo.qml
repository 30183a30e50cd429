// A spoken memo: play, faster, from mark to mark.
import QtQuick
import Undercowl
import Undercowl.Style

Column {
    id: root

    required property ShopSession session
    property Player player
    property string memo: ""

    spacing: Theme.grid * 2

    MemoPlayback {
        id: sound

        memo: root.memo
        player: root.player
        session: root.session
    }

    Waveform {
        levels: sound.levels
        marks: sound.marks
        place: sound.place
        width: parent.width

        onTouched: place => sound.go(place)
    }

    Label {
        kind: Label.Aside
        text: sound.problem !== "" ? sound.problem : sound.time
        tone: sound.problem !== "" ? Theme.caution : Theme.quiet
        width: parent.width
    }

    Flow {
        spacing: Theme.targetGap
        width: parent.width

        ActionButton {
            iconName: sound.playing ? "pause" : "play"
            lift: true
            text: sound.playing ? qsTr("Pause") : qsTr("Play")

            onTriggered: sound.toggle()
        }

        ActionButton {
            description: qsTr("How fast it is played")
            lift: true
            text: sound.pace > 1 ? "1.5 ×" : "1 ×"

            onTriggered: sound.pace = sound.pace > 1 ? 1 : 1.5
        }

        ActionButton {
            lift: true
            text: qsTr("Next mark")
            visible: sound.marks.length > 0

            onTriggered: sound.toNextMark()
        }

        ActionButton {
            lift: true
            text: qsTr("Mark")
            visible: sound.playing

            onTriggered: sound.mark()
        }
    }
}
