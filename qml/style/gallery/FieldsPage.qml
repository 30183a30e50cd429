// Fields and surfaces.
import QtQuick
import Undercowl.Style

Scroller {
    id: root

    TextEntry {
        hint: "As it stands on the plate"
        label: "Model"
        placeholder: "Zephyr 125"
        width: parent.width
    }

    TextEntry {
        error: "A frame number has no letter O: type the digit 0"
        label: "Frame number"
        mono: true
        value: "QZ7 1O4482"
        width: parent.width
    }

    TextEntryArea {
        error: "Say in a few words why it is left out"
        label: "How, or why not"
        value: "read aloud"
        width: parent.width
    }

    TextEntryArea {
        label: "Why it is here"
        placeholder: "In the owner's words"
        width: parent.width
    }

    Panel {
        title: "Unsafe"
        tone: Theme.stop
        width: parent.width

        Label {
            text: "brake hose cracked"
            width: parent.width
        }
    }

    Panel {
        title: "Where it stopped"
        width: parent.width

        Label {
            text: "Step 4, 6-place connector unplugged. Next: left grip."
            width: parent.width
        }
    }
}
