// Digits for gloved thumbs.
//
//   decimal   the decimal mark on its key, "." or ","; empty for whole numbers
//   typed(key)   a digit or the mark;  erased()   the last one goes
// Qt 6.4 cannot bind a delegate to the ids around it, nor defer an item that has one:
// qmllint disable unqualified deferred-property-id
import QtQuick

Grid {
    id: root

    property string decimal: Qt.locale().decimalPoint

    signal typed(key: string)
    signal erased

    readonly property real cell: (width - 2 * Theme.targetGap) / 3

    columnSpacing: Theme.targetGap
    columns: 3
    rowSpacing: Theme.targetGap

    Repeater {
        model: ["1", "2", "3", "4", "5", "6", "7", "8", "9", root.decimal, "0", "del"]

        ActionButton {
            required property string modelData

            enabled: modelData !== ""
            height: Math.max(Theme.liftKey, implicitContentHeight + topPadding + bottomPadding)
            lift: true
            opacity: enabled ? 1 : 0 // its place is kept
            tapGuard: 0
            text: modelData === "del" ? qsTr("del", "erases the last digit") : modelData
            width: root.cell

            onTriggered: {
                if (modelData === "del")
                    root.erased();
                else
                    root.typed(modelData);
            }
        }
    }
}
