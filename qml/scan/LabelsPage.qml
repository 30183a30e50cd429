// Labels with a QR code for the bags of this machine, on plain label stock.
// Qt 6.4 knows no members of a url, a map or a list, cannot bind a delegate to the ids around it:
// qmllint disable type unqualified
import QtQuick
import Undercowl
import Undercowl.Style

ShopPage {
    id: root

    property int stock: 0

    title: qsTr("Labels for the bags")
    footer: ActionButton {
        enabled: view.chosen > 0
        iconName: "printer"
        kind: ActionButton.Main
        lift: true
        text: qsTr("Make the sheet")
        width: parent.width

        onTriggered: view.write(root.stock, first.commit())
    }

    LabelsView {
        id: view

        session: root.session
    }

    EmptyState {
        iconName: "bag"
        text: qsTr("Steps that were bagged while stripping stand here.")
        title: qsTr("No bags yet")
        visible: view.ready && view.labels.count === 0
        width: parent.width
    }

    Label {
        text: qsTr("Written: %1. Print it at 100 %.").arg(view.file)
        visible: view.file !== ""
        width: parent.width
    }

    Choice {
        current: root.stock
        label: qsTr("Sheets")
        options: [qsTr("A4, 3 × 8"), qsTr("Letter, 3 × 10")]
        visible: view.labels.count > 0
        width: parent.width

        onChosen: index => root.stock = index
    }

    TextEntry {
        id: first

        error: view.errors.first ?? ""
        inputHints: Qt.ImhDigitsOnly
        label: qsTr("Place of the first label")
        placeholder: "1"
        visible: view.labels.count > 0
        width: parent.width
    }

    Repeater {
        model: view.labels

        ListRow {
            id: bag

            required title
            required property string lineId
            required property string detail
            required property string more
            required property bool on

            aside: [bag.detail, bag.more].filter(word => word !== "").join("\n")
            done: on
            iconName: "bag"
            opens: false
            width: parent?.width ?? 0

            onTriggered: view.choose(bag.lineId)
        }
    }
}
