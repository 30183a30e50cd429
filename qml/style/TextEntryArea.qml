// The one text field of several lines, as TextEntry in all else. Reports every change at once, so that a draft is kept while the cursor is still in it.
//
//   label         what is asked; always visible
//   value         what the store holds; shown unless the user is typing another
//   text          what the field shows now, with what the keyboard is still composing
//   placeholder   an example, not the label
//   error         names the field's fault and the remedy; empty when all is well
//   changed       it was typed otherwise since: the fault is not told any more
//   hint          a quiet line below, hidden by an error
//   mono          for frame numbers and part numbers
//   lift          at the lift: stray drops on the glass clear nothing, the keyboard does
//   inputHints, readOnly, fieldFocus, lines (how many are shown at least)
//   edited(text)    on each change by the user, composing included
//   accepted(text)  the field was left
//   commit()        ends composing and returns the text; screens call it before they leave
import QtQuick
import QtQuick.Templates as T

FocusScope {
    id: root

    property string label: ""
    property string value: ""
    property alias placeholder: field.placeholderText
    property string error: ""
    property bool changed: false
    readonly property string fault: changed ? "" : error
    property string hint: ""
    property bool mono: false
    property bool lift: false
    property int lines: 3
    property alias inputHints: field.inputMethodHints
    property alias readOnly: field.readOnly
    property alias fieldFocus: field.activeFocus

    readonly property string text: current()
    property string reported: value
    property bool touched: false // by the user, since it came into use

    signal edited(text: string)
    signal accepted(text: string)

    function commit(): string {
        if (field.activeFocus)
            Qt.inputMethod.commit(); // qmllint disable
        return current();
    }

    // Read afresh: while a change is being signalled, the text property may still hold what was before.
    function current(): string {
        const at = field.cursorPosition;
        return field.text.slice(0, at) + field.preeditText + field.text.slice(at);
    }

    // Sends a change once, whether it came by a key, by composing or by the clear button.
    function report() {
        const now = current();
        if (now === reported)
            return;
        reported = now;
        touched = field.activeFocus;
        edited(now);
    }

    function clear() {
        commit();
        field.clear();
        report();
    }

    activeFocusOnTab: false
    implicitHeight: column.implicitHeight
    implicitWidth: Theme.liftKeyWidth * 3

    Component.onCompleted: field.text = value
    onValueChanged: {
        // What is being typed belongs to the user; what comes from the store waits until the field is left.
        if (!(field.activeFocus && touched) && value !== text) {
            reported = value;
            field.text = value;
        }
    }

    FontMetrics {
        id: metrics

        font: field.font
    }

    Column {
        id: column

        spacing: Theme.grid
        width: parent.width

        Label {
            kind: Label.Aside
            text: root.label
            visible: text !== ""
            width: parent.width
        }

        T.TextArea {
            id: field

            Accessible.description: root.fault !== "" ? root.fault : root.hint
            Accessible.name: root.label
            activeFocusOnTab: true
            color: Theme.ink
            bottomPadding: Theme.grid * 3
            focus: true
            font.family: root.mono ? Theme.monoFamily : Theme.family
            font.pixelSize: Theme.textSize
            implicitHeight: Math.max(Theme.touch, contentHeight, root.lines * metrics.height, example.implicitHeight) + topPadding + bottomPadding
            leftPadding: Theme.grid * 3
            rightPadding: eraser.visible ? eraser.width : Theme.grid * 3
            selectByMouse: true
            selectedTextColor: Theme.actInk
            selectionColor: Theme.act
            topPadding: Theme.grid * 3
            width: parent.width
            wrapMode: TextEdit.Wrap

            background: Rectangle {
                border.color: root.fault !== "" ? Theme.stop : field.activeFocus ? Theme.act : Theme.line
                border.width: field.activeFocus || root.fault !== "" ? Theme.stroke : Theme.hairline
                color: Theme.panel
                radius: Theme.smallCorner
            }

            // A note has no use for a tab; the keyboard must get on.
            Keys.onBacktabPressed: nextItemInFocusChain(false).forceActiveFocus(Qt.BacktabFocusReason)
            Keys.onTabPressed: nextItemInFocusChain().forceActiveFocus(Qt.TabFocusReason)

            onActiveFocusChanged: {
                if (!activeFocus) {
                    root.report();
                    root.accepted(root.current());
                    root.touched = false;
                }
            }
            onPreeditTextChanged: {
                if (activeFocus)
                    root.report();
            }
            onTextChanged: {
                if (activeFocus)
                    root.report();
            }

            Label {
                id: example

                anchors.fill: parent
                anchors.leftMargin: field.leftPadding
                anchors.rightMargin: field.leftPadding
                text: field.placeholderText === "" ? "" : qsTr("e.g. %1").arg(field.placeholderText)
                tone: Theme.quiet
                anchors.topMargin: field.topPadding
                visible: field.text === "" && field.preeditText === ""
            }

            IconButton {
                id: eraser

                anchors.right: parent.right
                anchors.top: parent.top
                focusPolicy: Qt.NoFocus
                iconName: "close"
                text: qsTr("Clear %1").arg(root.label)
                tone: Theme.quiet
                visible: field.activeFocus && root.text !== "" && !root.readOnly && !root.lift

                onTriggered: root.clear()
            }
        }

        RemedyLine {
            error: root.fault
            hint: root.hint
            width: parent.width
        }
    }
}
