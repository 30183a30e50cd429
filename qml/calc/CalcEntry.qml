// One input of a calculation, entered: on the keypad with its unit, by a choice, or as words. Made anew for each input.
//
//   calc   the calculation; its open input is shown
//   page   the page it stands on
// Qt 6.4 knows no members of a url, a map or a list:
// qmllint disable type
import QtQuick
import Undercowl
import Undercowl.Style

Column {
    id: root

    required property CalcView calc
    required property ShopPage page

    readonly property bool quantity: calc.kind === "quantity"
    readonly property bool words: calc.kind === "text" || calc.kind === "date"

    function changeSign() {
        number.text = number.text.startsWith("-") ? number.text.slice(1) : "-" + number.text;
        calc.setValue(number.text);
    }

    spacing: Theme.grid * 3

    Label {
        kind: Label.Aside
        text: root.calc.why
        visible: text !== ""
        width: parent.width
    }

    NumberEntry {
        id: number

        error: root.calc.fault
        hint: root.calc.hint
        label: root.calc.label
        quiet: true
        unit: root.calc.unit
        value: root.calc.value
        visible: root.quantity
        width: parent.width

        onEdited: text => root.calc.setValue(text)
    }

    Row {
        id: sides

        readonly property int shown: (sign.visible ? 1 : 0) + (unit.visible ? 1 : 0)

        spacing: Theme.targetGap
        visible: root.quantity && shown > 0
        width: parent.width

        ActionButton {
            id: sign

            lift: true
            text: qsTr("+ / \u2212")
            visible: root.calc.signs
            width: (parent.width - (sides.shown - 1) * parent.spacing) / Math.max(1, sides.shown)

            onTriggered: root.changeSign()
        }

        ActionButton {
            id: unit

            lift: true
            text: root.calc.unit === "" ? qsTr("unit") : qsTr("unit: %1").arg(root.calc.unit)
            visible: root.calc.units.length > 0
            width: (parent.width - (sides.shown - 1) * parent.spacing) / Math.max(1, sides.shown)

            onTriggered: units.open()
        }
    }

    Keypad {
        visible: root.quantity
        width: parent.width

        onErased: number.erase()
        onTyped: key => number.press(key)
    }

    Choice {
        current: root.calc.choice
        options: root.calc.choices
        visible: root.calc.kind === "choice"
        width: parent.width

        onChosen: index => root.calc.setChoice(index)
    }

    TextEntry {
        id: field

        error: root.calc.fault
        hint: root.calc.hint
        label: root.calc.label
        placeholder: root.calc.kind === "date" ? "2026-11-25" : root.calc.example
        quiet: true
        value: root.calc.value
        visible: root.words
        width: parent.width

        onEdited: text => root.calc.setValue(text)
    }

    ChoiceSheet {
        id: units

        current: root.calc.units.indexOf(root.calc.unit)
        options: root.calc.units
        title: qsTr("Unit")

        onChosen: index => root.calc.setUnit(index)
    }

    Connections {
        function onLeaving() {
            field.commit();
        }

        target: root.page
    }
}
