// What is to be known of an instrument: kind, range, limit of error, calibration. Only what fits its kind is asked.
// Qt 6.4 knows no members of a url, a map or a list, cannot bind an inline component to the ids around it:
// qmllint disable type unqualified
import QtQuick
import Undercowl
import Undercowl.Style

Column {
    id: root

    required property FormDraft draft
    required property InstrumentsView view
    required property ShopPage page

    readonly property int kind: root.draft.values.kind ?? -1
    readonly property bool wrench: root.kind === 0
    readonly property bool gauge: root.kind === 1
    readonly property bool byStandard: root.wrench && (root.draft.values.wrench ?? "") !== "" || root.gauge
                                       && (root.draft.values.gaugeClass ?? "") !== ""

    component Field: DraftEntry {
        draft: root.draft
        error: root.view.errors[name] ?? ""
        page: root.page
        width: parent?.width ?? 0
    }

    spacing: Theme.grid * 3

    Field {
        label: qsTr("Name, as the shop calls it")
        name: "name"
        placeholder: qsTr("wrench red")
    }

    ListRow {
        aside: qsTr("kind")
        iconName: "tools"
        title: root.view.kinds[root.kind] ?? qsTr("Choose the kind")
        width: parent.width

        onTriggered: kinds.open()
    }

    RemedyLine {
        error: root.view.errors.kind ?? ""
        width: parent.width
    }

    Field {
        label: qsTr("Largest reading, with its unit")
        name: "high"
        placeholder: root.wrench ? "25 N.m" : root.gauge ? "4 bar" : root.kind === 2 ? "20 V" : "150 mm"
    }

    Field {
        label: qsTr("Least reading")
        name: "low"
        placeholder: root.wrench ? "5" : "0"
    }

    Field {
        label: qsTr("One division, or the last digit")
        name: "resolution"
        placeholder: root.wrench ? "0.1" : "0.01"
    }

    Field {
        hint: root.view.advice(root.kind)
        label: qsTr("Type and class by ISO 6789-1")
        name: "wrench"
        placeholder: "II A"
        visible: root.wrench
    }

    Field {
        label: qsTr("Class by EN 837-1, as on the dial")
        name: "gaugeClass"
        placeholder: "1.6"
        visible: root.gauge
    }

    Field {
        label: qsTr("Limit of error: per cent of the reading")
        name: "percent"
        placeholder: "0.5"
        visible: !root.byStandard
    }

    Field {
        label: qsTr("and digits")
        name: "digits"
        placeholder: "2"
        visible: !root.byStandard && (root.kind === 2 || root.kind === 7)
    }

    Field {
        label: qsTr("and a fixed part")
        name: "error"
        placeholder: "0.03"
        visible: !root.byStandard
    }

    Field {
        label: qsTr("Feel of the hand: half of what two people read differently")
        name: "feel"
        placeholder: "0.02"
        visible: root.kind === 4 || (root.draft.values.feel ?? "") !== ""
    }

    Field {
        label: qsTr("Where the limit of error stands")
        name: "source"
        placeholder: qsTr("maker's sheet")
        visible: !root.byStandard
    }

    Field {
        label: qsTr("Calibrated on")
        name: "calibrated"
        placeholder: "2026-03-01"
    }

    Field {
        label: qsTr("Due again on")
        name: "due"
        placeholder: "2027-03-01"
    }

    ChoiceSheet {
        id: kinds

        current: root.kind
        options: root.view.kinds
        title: qsTr("Kind of instrument")

        onChosen: index => root.draft.set("kind", index)
    }
}
