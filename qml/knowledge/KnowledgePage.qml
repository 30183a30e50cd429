// What the shop knows of a model. Offered to the open job of that model: a touch takes a line over.
// Qt 6.4 knows no members of a list, cannot bind a delegate to the ids around it:
// qmllint disable type unqualified
import QtQuick
import Undercowl
import Undercowl.Style

ShopPage {
    id: root

    property string make: ""
    property string model: ""

    title: view.title
    footer: ActionButton {
        enabled: view.facts.count > 0
        lift: true
        text: qsTr("Write the file for other shops")
        width: parent.width

        onTriggered: view.write()
    }

    KnowledgeView {
        id: view

        make: root.make
        model: root.model
        session: root.session
    }

    Label {
        text: view.offered ? qsTr("A touch takes a line over into the open job. Nothing enters it by itself.")
                           : qsTr("Open a job of this model to take lines over.")
        tone: Theme.quiet
        visible: view.facts.count > 0
        width: parent.width
    }

    Label {
        text: qsTr("Written, without anything of any owner: %1").arg(view.file)
        visible: view.file !== ""
        width: parent.width
    }

    EmptyState {
        iconName: "list"
        text: qsTr("Limits, torques, parts that fitted or not, wiring maps and times of other jobs will stand here.")
        title: qsTr("Nothing known of this model yet")
        visible: view.ready && view.facts.count === 0
        width: parent.width
    }

    Repeater {
        model: view.facts

        Column {
            id: line

            required property string lineId
            required property string title
            required property string detail
            required property string more
            required property string mark

            readonly property bool heading: mark === "contradiction" || mark === "rest"

            width: parent?.width ?? 0

            SectionHeader {
                text: line.title
                visible: line.heading
                width: parent.width
            }

            ListRow {
                aside: [line.detail, line.more].filter(word => word !== "").join("\n")
                iconName: line.mark === "part" ? "parts" : line.mark === "map" ? "connector" : line.mark === "minutes" ? "clock"
                          : line.mark === "finding" ? "eye" : "gauge"
                opens: false
                remark: view.offered ? qsTr("take") : ""
                title: line.title
                visible: !line.heading
                width: parent.width

                onTriggered: view.takeOver(line.lineId)
            }
        }
    }
}
