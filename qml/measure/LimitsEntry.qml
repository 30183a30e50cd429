// What a reading is measured with and held against.
// Qt 6.4 knows no members of a url, a map or a list, knows no string list as a list of strings:
// qmllint disable type
import QtQuick
import Undercowl
import Undercowl.Style

Column {
    id: root

    required property FormDraft draft
    required property MeasureView measure
    required property ShopPage page

    spacing: Theme.grid * 3

    ListRow {
        aside: qsTr("unit")
        iconName: "gauge"
        title: root.measure.unit
        width: parent.width

        onTriggered: units.open()
    }

    ListRow {
        aside: qsTr("instrument; ordinary ones, with assumed uncertainty")
        iconName: "tools"
        title: root.measure.instruments[root.draft.values.instrument ?? 0] ?? ""
        width: parent.width

        onTriggered: instruments.open()
    }

    DraftEntry {
        draft: root.draft
        error: root.measure.errors.low ?? ""
        inputHints: Qt.ImhFormattedNumbersOnly
        label: qsTr("At least, %1").arg(root.measure.unit)
        name: "low"
        page: root.page
        width: parent.width
    }

    DraftEntry {
        draft: root.draft
        error: root.measure.errors.high ?? ""
        inputHints: Qt.ImhFormattedNumbersOnly
        label: qsTr("At most, %1").arg(root.measure.unit)
        name: "high"
        page: root.page
        width: parent.width
    }

    Choice {
        current: root.draft.values.trust ?? -1
        label: qsTr("Where the limits come from")
        options: root.measure.trusts
        width: parent.width

        onChosen: index => root.draft.set("trust", index)
    }

    RemedyLine {
        error: root.measure.errors.trust ?? ""
        width: parent.width
    }

    DraftEntry {
        draft: root.draft
        label: qsTr("Page or place")
        name: "reference"
        page: root.page
        placeholder: qsTr("page 7-12")
        width: parent.width
    }

    ChoiceSheet {
        id: units

        current: root.draft.values.unit ?? 0
        options: root.measure.units
        title: qsTr("Unit")

        onChosen: index => {
            root.draft.set("instrument", 0);
            root.draft.set("unit", index);
        }
    }

    ChoiceSheet {
        id: instruments

        current: root.draft.values.instrument ?? 0
        options: root.measure.instruments
        title: qsTr("Instrument")

        onChosen: index => root.draft.set("instrument", index)
    }
}
