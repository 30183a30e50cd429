// The trade's calculations, each a form of its own.
// Qt 6.4 knows no members of a url, a map or a list, cannot bind a delegate to the ids around it:
// qmllint disable type unqualified
import QtQuick
import Undercowl
import Undercowl.Style

ShopPage {
    id: root

    title: qsTr("Calculations")

    CalcList {
        id: list

        words: field.text
    }

    TextEntry {
        id: field

        label: qsTr("Words to look for")
        placeholder: qsTr("words, such as torque or tyre")
        quiet: true
        width: parent.width
    }

    Label {
        text: qsTr("No calculation has these words. Try fewer, or only their beginnings.")
        tone: Theme.quiet
        visible: list.lines.count === 0
        width: parent.width
    }

    Repeater {
        model: list.lines

        ListRow {
            id: row

            required title
            required property string lineId
            required property string detail

            aside: row.detail
            iconName: "calculate"
            width: parent?.width ?? 0

            onTriggered: root.opens("CalcPage", {
                "name": row.lineId
            })
        }
    }
}
