// One of the shop's lists of checks: a check is added, changed or taken out. Rounds that were begun keep their words.
// Qt 6.4 cannot bind a delegate to the ids around it:
// qmllint disable unqualified
import QtQuick
import Undercowl
import Undercowl.Style

ShopPage {
    id: root

    property string list: ""
    property int chosen: -1
    property string words: ""
    property string part: ""

    title: view.title
    footer: [
        ActionButton {
            kind: ActionButton.Main
            lift: true
            text: root.chosen < 0 ? qsTr("Add the check") : qsTr("Change it")
            width: parent.width

            onTriggered: {
                if (root.chosen < 0)
                    view.add(group.commit(), check.commit());
                else
                    view.change(root.chosen, check.commit());
            }
        },
        ActionButton {
            lift: true
            text: qsTr("Take it out")
            visible: root.chosen >= 0
            width: parent.width

            onTriggered: view.change(root.chosen, "")
        }
    ]

    RoundListsView {
        id: view

        key: root.list
        session: root.session

        onKept: {
            root.chosen = -1;
            root.words = "";
            check.clear();
        }
    }

    TextEntry {
        id: check

        error: view.error
        label: root.chosen < 0 ? qsTr("Another check") : qsTr("The check")
        placeholder: qsTr("lever: firm, does not creep")
        value: root.words
        width: parent.width
    }

    TextEntry {
        id: group

        label: qsTr("Part of the machine")
        placeholder: qsTr("front brake")
        readOnly: root.chosen >= 0
        value: root.part
        width: parent.width
    }

    Repeater {
        model: view.checks

        ListRow {
            id: row

            required title
            required property string lineId
            required property string detail

            aside: row.detail
            iconName: "step"
            opens: false
            remark: root.chosen === Number(row.lineId) ? "\u25CF" : ""
            width: parent?.width ?? 0

            onTriggered: {
                root.chosen = root.chosen === Number(row.lineId) ? -1 : Number(row.lineId);
                root.words = root.chosen < 0 ? "" : row.title;
                root.part = row.detail;
            }
        }
    }
}
