// One input of a calculation, entered: as a number with its unit, by a choice, or as words. Made anew for each input. The
// keypad for its number stands with the page's actions.
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

    function press(key: string) {
        number.press(key);
    }

    function erase() {
        number.erase();
    }

    function changeSign() {
        number.text = number.text.startsWith("-") ? number.text.slice(1) : "-" + number.text;
        calc.setValue(number.text);
    }

    spacing: Theme.grid * 3

    Row {
        spacing: Theme.targetGap
        visible: root.quantity
        width: parent.width

        NumberEntry {
            id: number

            label: root.calc.label
            quiet: true
            unit: unit.visible ? "" : root.calc.unit
            value: root.calc.value
            width: parent.width - (sign.visible ? sign.width + parent.spacing : 0) - (unit.visible ? unit.width + parent.spacing : 0)

            onEdited: text => root.calc.setValue(text)
        }

        ActionButton {
            id: sign

            anchors.verticalCenter: number.verticalCenter
            description: qsTr("changes the sign")
            lift: true
            text: qsTr("+/\u2212")
            visible: root.calc.signs
            width: Theme.liftKeyWidth * 0.75

            onTriggered: root.changeSign()
        }

        ActionButton {
            id: unit

            anchors.verticalCenter: number.verticalCenter
            description: qsTr("changes the unit")
            lift: true
            text: root.calc.unit === "" ? qsTr("unit") : root.calc.unit
            visible: root.calc.units.length > 0
            width: Theme.liftKeyWidth

            onTriggered: units.open()
        }
    }

    RemedyLine {
        error: root.calc.fault
        hint: root.calc.hint
        visible: root.quantity
        width: parent.width
    }

    Label {
        kind: Label.Aside
        text: root.calc.why
        visible: text !== ""
        width: parent.width
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
