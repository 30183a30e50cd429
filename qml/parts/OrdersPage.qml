// Everything that is to be ordered, for all machines in the shop, by supplier.
// Qt 6.4 knows no members of a list, cannot bind a delegate to the ids around it:
// qmllint disable type unqualified
import QtQuick
import Undercowl
import Undercowl.Style

ShopPage {
    id: root

    title: qsTr("To order")
    footer: [
        ActionButton {
            enabled: view.lines.count > 0
            kind: ActionButton.Main
            lift: true
            text: qsTr("Copy the list")
            width: parent.width

            onTriggered: view.copy()
        },
        ActionButton {
            enabled: view.lines.count > 0
            iconName: "printer"
            lift: true
            text: qsTr("Text, spreadsheet, PDF")
            width: parent.width

            onTriggered: view.write()
        }
    ]

    OrdersView {
        id: view

        session: root.session
    }

    FilesWritten {
        files: view.files
        folder: view.folder
        receiverTitle: root.title
        session: root.session
        width: parent.width
    }

    EmptyState {
        iconName: "parts"
        text: qsTr("Parts that are wanted or asked for stand here until they are ordered.")
        title: qsTr("Nothing to order")
        visible: view.ready && view.lines.count === 0
        width: parent.width
    }

    Repeater {
        model: view.lines

        Column {
            id: line

            required property string title
            required property string detail
            required property string more
            required property string mark

            width: parent?.width ?? 0

            SectionHeader {
                aside: line.detail
                text: line.title
                visible: line.mark === "supplier"
                width: parent.width
            }

            ListRow {
                aside: [line.detail, line.more].filter(word => word !== "").join("\n")
                iconName: "parts"
                opens: false
                title: line.title
                visible: line.mark === ""
                width: parent.width
            }
        }
    }
}
