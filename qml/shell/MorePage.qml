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

    ListRow {
        iconName: "connector"
        title: qsTr("What the shop knows")
        width: parent.width

        onTriggered: root.opens("ModelsPage", {})
    }

    ListRow {
        iconName: "tag"
        title: qsTr("Scan a bag or a part")
        width: parent.width

        onTriggered: root.opens("ScanPage", {})
    }

    ListRow {
        iconName: "archive"
        title: qsTr("Spreadsheets in and out")
        width: parent.width

        onTriggered: root.opens("SheetsPage", {})
    }

    ListRow {
        iconName: "calendar"
        title: qsTr("Rechecks due")
        width: parent.width

        onTriggered: root.opens("DuePage", {})
    }
}
