// What else has to be known when the part goes on again. Kept in the step's draft as it is typed.
//
//   commit()   takes what is being typed
// Qt 6.4 knows no members of a url, a map or a list, cannot bind a delegate to the ids around it:
// qmllint disable type unqualified
import QtQuick
import Undercowl
import Undercowl.Style

Column {
    id: root

    required property StripView strip

    function commit() {
        for (const field of [routing, ends, found, out])
            root.strip.setDetail(field.name, field.commit());
    }

    component Detail: TextEntry {
        required property string name

        lift: true
        value: root.strip.details[name] ?? ""
        width: root.width

        onEdited: text => root.strip.setDetail(name, text)
    }

    spacing: Theme.grid * 3

    Detail {
        id: routing

        label: qsTr("Where it runs, what it passes")
        name: "routing"
        placeholder: qsTr("left of the headstock, over the clutch cable")
    }

    Detail {
        id: ends

        label: qsTr("Where its ends sit: hose, vent, cable")
        name: "ends"
        placeholder: qsTr("tap, upper nipple; carburettor, right")
    }

    Detail {
        id: found

        label: qsTr("Adjustment as found: turns, marks, shims")
        name: "asFound"
        placeholder: qsTr("adjuster 7 turns out, mark at 2 o'clock")
    }

    Detail {
        id: out

        label: qsTr("Fluid let out, and how much")
        name: "letOut"
        placeholder: qsTr("brake fluid, 40 ml")
    }
}
