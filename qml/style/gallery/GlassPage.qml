// What the edge of the window tells, state by state, and the glass locked and dim.
import QtQuick
import Undercowl.Style

Scroller {
    id: root

    component Edge: Rectangle {
        id: edge

        property alias sound: strip.sound
        property alias told: strip.told
        property alias locked: strip.locked
        property string words: ""

        color: Theme.panel
        height: Theme.liftMain
        width: parent.width

        Label {
            anchors.centerIn: parent
            text: edge.words
        }

        EdgeStrip {
            id: strip

            anchors.fill: parent
        }
    }

    Edge {
        sound: "recording"
        words: "recording"
    }

    Edge {
        sound: "listening"
        words: "listening"
    }

    Edge {
        sound: "waiting"
        words: "waiting for the wake phrase"
    }

    Edge {
        told: "saved"
        words: "saved"
    }

    Edge {
        told: "refused"
        words: "refused"
    }

    Edge {
        locked: true
        words: "locked"
    }

    LockBar {
        corner: root
        width: parent.width
    }

    Rectangle {
        border.color: Theme.line
        border.width: Theme.hairline
        color: Theme.night.ground
        height: Theme.liftMain
        width: parent.width

        Label {
            anchors.centerIn: parent
            kind: Label.Name
            text: "dim"
            tone: Theme.night.ink
        }

        Rectangle {
            anchors.fill: parent
            color: Theme.dimness
        }
    }
}
