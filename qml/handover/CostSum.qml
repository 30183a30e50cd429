// The sum, line by line, with what was expected beside what it took.
// Qt 6.4 knows no members of a list, cannot bind a delegate to the ids around it:
// qmllint disable type unqualified
import QtQuick
import Undercowl
import Undercowl.Style

Panel {
    id: root

    required property CostView view

    Label {
        kind: Label.Title
        text: root.view.gross
        width: parent.width
    }

    Label {
        text: [qsTr("without tax: %1").arg(root.view.net), root.view.tax].filter(word => word !== "").join(", ")
        tone: Theme.quiet
        width: parent.width
    }

    Repeater {
        model: root.view.rows

        Row {
            id: row

            required property string title
            required property string detail
            required property string aside

            spacing: Theme.grid * 2
            width: parent?.width ?? 0

            Label {
                text: row.detail === "" ? row.title : row.title + ", " + row.detail
                width: row.width - sum.width - row.spacing
            }

            Label {
                id: sum

                mono: true
                text: row.aside
                width: Math.min(implicitWidth, row.width / 2)
            }
        }
    }

    Label {
        text: qsTr("Expected: %1").arg(root.view.expected)
        width: parent.width
    }

    Label {
        text: qsTr("It took: %1").arg(root.view.spent)
        width: parent.width
    }

    Repeater {
        model: root.view.doubts

        Label {
            required property string modelData

            text: modelData
            tone: Theme.caution
            width: parent?.width ?? 0
        }
    }
}
