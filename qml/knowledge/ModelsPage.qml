// The models that the shop knows, and files of other shops to learn from.
// Qt 6.4 cannot bind a delegate to the ids around it:
// qmllint disable unqualified
import QtQuick
import Undercowl
import Undercowl.Style

ShopPage {
    id: root

    title: qsTr("What the shop knows")
    footer: ActionButton {
        enabled: path.text !== ""
        lift: true
        text: qsTr("Learn from the file")
        width: parent.width

        onTriggered: view.learn(path.commit())
    }

    ModelsView {
        id: view

        session: root.session

        onChosen: (make, model) => root.opens("KnowledgePage", {
            "make": make,
            "model": model
        })
    }

    Repeater {
        model: view.models

        ListRow {
            id: one

            required title
            required property string lineId
            required property string detail

            aside: one.detail
            iconName: "machine"
            width: parent?.width ?? 0

            onTriggered: view.choose(one.lineId)
        }
    }

    SectionHeader {
        text: qsTr("Learn from another shop")
        width: parent.width
    }

    TextEntry {
        id: path

        property string chosen: ""

        error: view.error
        hint: view.learned === "" ? view.folder : qsTr("Learned: %1").arg(view.learned)
        label: qsTr("Its file")
        mono: true
        value: chosen
        width: parent.width
    }

    Repeater {
        model: view.files

        ListRow {
            id: file

            required title
            required property string lineId

            iconName: "archive"
            opens: false
            width: parent?.width ?? 0

            onTriggered: path.chosen = file.lineId
        }
    }
}
