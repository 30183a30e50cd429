// The shop's lists of checks.
// Qt 6.4 cannot bind a delegate to the ids around it:
// qmllint disable unqualified
import QtQuick
import Undercowl
import Undercowl.Style

ShopPage {
    id: root

    title: qsTr("Lists of checks")

    RoundListsView {
        id: view

        session: root.session
    }

    Repeater {
        model: view.lists

        ListRow {
            id: row

            required title
            required property string lineId
            required property string detail

            aside: row.detail
            iconName: "list"
            width: parent?.width ?? 0

            onTriggered: root.opens("RoundListPage", {
                "list": row.lineId
            })
        }
    }
}
