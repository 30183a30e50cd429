// A value and its keypad.
import QtQuick
import Undercowl.Style

Scroller {
    id: root

    NumberEntry {
        id: entry

        label: "Rear axle nut, torque"
        unit: "N.m"
        value: "84"
        width: parent.width
    }

    NumberEntry {
        error: "Type a number, such as 84"
        label: "Limit"
        unit: "bar"
        width: parent.width
    }

    Keypad {
        width: parent.width

        onErased: entry.erase()
        onTyped: key => entry.press(key)
    }

    ActionButton {
        kind: ActionButton.Main
        lift: true
        text: "Keep"
        width: parent.width
    }
}
