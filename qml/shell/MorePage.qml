// What belongs to the shop and to no single machine.
import QtQuick
import Undercowl
import Undercowl.Style

ShopPage {
    id: root

    title: qsTr("The shop")

    ListRow {
        iconName: "parts"
        title: qsTr("To order")
        width: parent.width

        onTriggered: root.opens("OrdersPage", {})
    }
}
