// A value shown large with its unit, typed on a Keypad or a keyboard. Keeps the digits as they were typed: comma and
// point are both the decimal mark, and a second one is refused.
//
//   label, unit, error, hint
//   quiet           the label is for screen readers alone
//   value           what the store holds;  text   what is shown
//   press(key), erase(), clear()   for a Keypad
//   edited(text)
import QtQuick

FocusScope {
    id: root

    property string label: ""
    property bool quiet: false
    property string unit: ""
    property string error: ""
    property string hint: ""
    property string value: ""
    property string text: value
    property int maximumLength: 9

    signal edited(text: string)

    function press(key: string) {
        const mark = key === "." || key === ",";
        if (text.length >= maximumLength || mark && /[.,]/.test(text) || !mark && !/^[0-9]$/.test(key))
            return;
        text = mark && text === "" ? "0" + key : text + key;
        edited(text);
    }

    function erase() {
        if (text === "")
            return;
        text = text.slice(0, -1);
        edited(text);
    }

    function clear() {
        if (text === "")
            return;
        text = "";
        edited(text);
    }

    Accessible.description: error !== "" ? error : hint
    Accessible.name: label + ", " + (text === "" ? qsTr("empty") : Theme.quantity(text, unit))
    Accessible.role: Accessible.EditableText
    activeFocusOnTab: true
    implicitHeight: column.implicitHeight
    implicitWidth: Theme.liftKeyWidth * 3

    Keys.onPressed: event => {
        if (event.key === Qt.Key_Backspace) {
            erase();
            event.accepted = true;
        } else if (/^[0-9.,]$/.test(event.text)) {
            press(event.text);
            event.accepted = true;
        }
    }
    onValueChanged: text = value

    TapHandler {
        onTapped: root.forceActiveFocus()
    }

    Column {
        id: column

        width: parent.width

        Label {
            kind: Label.Aside
            text: root.label
            visible: text !== "" && !root.quiet
            width: parent.width
        }

        Row {
            spacing: Theme.grid * 2

            Label {
                id: digits

                fontSizeMode: Text.HorizontalFit
                kind: Label.Value
                minimumPixelSize: Theme.titleSize
                text: root.text === "" ? "\u2013" : root.text
                tone: root.text === "" ? Theme.quiet : Theme.ink
                width: Math.min(implicitWidth, column.width - measure.width - Theme.grid * 2)
                wrapMode: Text.NoWrap
            }

            Label {
                id: measure

                anchors.baseline: digits.baseline
                kind: Label.Title
                strong: false
                text: root.unit
                tone: Theme.quiet
                wrapMode: Text.NoWrap
            }
        }

        RemedyLine {
            error: root.error
            hint: root.hint
            width: parent.width
        }
    }
}
