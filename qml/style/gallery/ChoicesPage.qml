// Choices, and the picker of wire colours in both of its steps.
import QtQuick
import Undercowl.Style

Scroller {
    id: root

    Choice {
        current: 1
        label: "Seen from"
        options: ["wire side", "mating face", "not sure"]
        width: parent.width
    }

    ActionButton {
        text: "Open a sheet"
        width: parent.width

        onTriggered: sheet.open()
    }

    WirePicker {
        width: parent.width
    }

    WirePicker {
        base: "GN"
        width: parent.width
    }

    ChoiceSheet {
        id: sheet

        current: 0
        options: ["blade 6.3", "blade 2.8", "bullet", "ring"]
        title: "Terminal"
    }
}
