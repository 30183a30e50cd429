// Buttons, by kind, size and state.
import QtQuick
import Undercowl.Style

Scroller {
    id: root

    component Pair: Row {
        id: pair

        readonly property real cell: (width - spacing) / 2

        spacing: Theme.targetGap
        width: parent.width
    }

    Pair {
        ActionButton {
            iconName: "camera"
            kind: ActionButton.Main
            lift: true
            text: "Photo"
            width: parent.cell
        }

        ActionButton {
            lift: true
            text: "Say"
            height: Theme.liftMain
            width: parent.cell
        }
    }

    Pair {
        ActionButton {
            iconName: "wire"
            lift: true
            text: "Wires"
            width: parent.cell
        }

        ActionButton {
            lift: true
            text: "Bag"
            width: parent.cell
        }
    }

    ActionButton {
        kind: ActionButton.Refuse
        lift: true
        text: "Does not match"
        width: parent.width
    }

    Pair {
        ActionButton {
            busy: true
            busyText: "Keeping"
            kind: ActionButton.Main
            text: "Keep"
            width: parent.cell
        }

        ActionButton {
            enabled: false
            text: "Not now"
            width: parent.cell
        }
    }

    Pair {
        ActionButton {
            iconName: "plus"
            text: "Add finding"
            width: parent.cell
        }

        ActionButton {
            kind: ActionButton.Refuse
            text: "Discard"
            width: parent.cell
        }
    }

    Pair {
        ActionButton {
            enabled: false
            kind: ActionButton.Main
            text: "Nothing yet"
            width: parent.cell
        }

        ActionButton {
            text: "By keyboard"
            width: parent.cell

            Component.onCompleted: forceActiveFocus(Qt.TabFocusReason)
        }
    }

    Pair {
        ActionButton {
            aside: "Marrowin Tern 125"
            iconName: "camera"
            kind: ActionButton.Main
            lift: true
            text: "Photo"
            width: parent.cell
        }

        ActionButton {
            busy: true
            height: Theme.liftMain
            kind: ActionButton.Refuse
            lift: true
            text: "Listening"
            width: parent.cell
        }
    }

    Pair {
        ActionButton {
            id: step

            property int number: 1

            settle: Settle {
                about: step.number
            }
            text: "Step %1 done".arg(number)
            width: parent.cell

            onTriggered: ++number
        }
    }

    Flow {
        spacing: Theme.grid * 2
        width: parent.width

        IconButton {
            iconName: "lock"
            text: "Bare"
        }

        IconButton {
            filled: true
            iconName: "lock"
            text: "Filled"
        }

        IconButton {
            enabled: false
            filled: true
            iconName: "lock"
            text: "Not now"
        }

        IconButton {
            busy: true
            filled: true
            iconName: "lock"
            text: "Working"
        }

        Chip {
            text: "one of several"
        }

        Chip {
            chosen: true
            text: "this one"
        }
    }

    ThumbRow {
        id: thumb

        width: parent.width

        ActionButton {
            lift: true
            text: "Again"
            width: (thumb.width - thumb.spacing) / 3
        }

        ActionButton {
            kind: ActionButton.Main
            lift: true
            text: "Keep"
            width: (thumb.width - thumb.spacing) * 2 / 3
        }
    }

    SectionHeader {
        aside: "58"
        text: "Icons"
        width: parent.width
    }

    Flow {
        spacing: Theme.grid * 2
        width: parent.width

        Repeater {
            model: ["camera", "memo", "wire", "connector", "bag", "bolt", "step", "search", "back", "next", "up", "down", "chevron", "expand", "undo", "again", "done", "close", "clear", "caution", "unsafe", "soon", "note", "within", "close-call", "outside", "printer", "share", "owner", "machine", "parts", "calendar", "photo", "photo-file", "plus", "minus", "edit", "tools", "gauge", "listen", "record", "stop", "play", "pause", "tag", "twin", "swap", "torch", "settings", "theme", "list", "archive", "clock", "road", "eye", "group", "delete", "lock", "more"]

            IconButton {
                required property string modelData

                filled: true
                iconName: modelData
                text: modelData
            }
        }
    }
}
