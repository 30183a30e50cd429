// The parts of a job: what is missing first; a tap says what became of it.
// Qt 6.4 knows no members of a url, a map or a list, knows no string list as a list of strings, cannot bind a
// delegate to the ids around it:
// qmllint disable type unqualified
import QtQuick
import Undercowl
import Undercowl.Style

ShopPage {
    id: root

    property string chosen: ""

    title: qsTr("Parts")
    footer: ActionButton {
        enabled: draft.begun
        kind: ActionButton.Main
        lift: true
        text: qsTr("Add the part")
        width: parent.width

        onTriggered: {
            root.leaving();
            parts.add(draft);
        }
    }

    PartsList {
        id: parts

        session: root.session
    }

    FormDraft {
        id: draft

        form: "part/" + root.session.jobId
        jobId: root.session.jobId
        session: root.session
        title: qsTr("Part")
    }

    Repeater {
        model: parts.parts

        ListRow {
            id: row

            required title
            required aside
            required property string lineId
            required property string detail
            required property bool on

            done: on
            iconName: "parts"
            opens: false
            remark: row.detail
            width: parent?.width ?? 0

            onTriggered: {
                root.chosen = row.lineId;
                sheet.current = parts.stateOf(row.lineId);
                sheet.open();
            }
        }
    }

    SectionHeader {
        text: qsTr("Another part")
        width: parent.width
    }

    DraftEntry {
        draft: draft
        error: parts.errors.name ?? ""
        label: qsTr("Part")
        name: "name"
        page: root
        placeholder: qsTr("switch cluster, right")
        width: parent.width
    }

    DraftEntry {
        draft: draft
        label: qsTr("Number")
        mono: true
        name: "number"
        page: root
        width: parent.width
    }

    DraftEntry {
        draft: draft
        label: qsTr("Remark")
        name: "note"
        page: root
        placeholder: qsTr("from the dealer, by Friday")
        width: parent.width
    }

    ChoiceSheet {
        id: sheet

        options: parts.states.concat([qsTr("Supplier, price, fit \u2026")])
        title: qsTr("What became of it?")

        onChosen: index => {
            if (index < parts.states.length)
                parts.setState(root.chosen, index);
            else
                root.opens("PartPage", {
                    "part": root.chosen
                });
        }
    }
}
