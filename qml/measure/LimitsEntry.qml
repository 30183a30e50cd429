// What is measured, with what, and what it is held against.
// Qt 6.4 knows no members of a url, a map or a list, knows no string list as a list of strings, cannot bind a delegate to
// the ids around it:
// qmllint disable type unqualified
import QtQuick
import Undercowl
import Undercowl.Style

Column {
    id: root

    required property FormDraft draft
    required property MeasureView measure
    required property ShopPage page

    spacing: Theme.grid * 3

    DraftEntry {
        draft: root.draft
        error: root.measure.errors.what ?? ""
        label: qsTr("What was measured")
        lift: true
        name: "what"
        page: root.page
        placeholder: qsTr("rear axle nut, torque")
        width: parent.width
    }

    Repeater {
        model: root.measure.proposals

        ListRow {
            required title
            required property string detail
            required property int index

            aside: detail
            done: title === (root.draft.values.what ?? "")
            iconName: "again"
            lift: true
            opens: false
            visible: index < 4
            width: parent?.width ?? 0

            onTriggered: root.measure.propose(index)
        }
    }

    ListRow {
        aside: qsTr("unit")
        iconName: "gauge"
        lift: true
        title: root.measure.unit === "" ? qsTr("plain number") : root.measure.unit
        width: parent.width

        onTriggered: units.open()
    }

    RemedyLine {
        error: root.measure.errors.unit ?? ""
        width: parent.width
    }

    ListRow {
        aside: root.measure.instrument === 0 ? qsTr("instrument") : root.measure.instrumentText
        iconName: "tools"
        lift: true
        title: root.measure.instruments[root.measure.instrument] ?? ""
        width: parent.width

        onTriggered: instruments.open()
    }

    ActionButton {
        lift: true
        text: qsTr("The shop's instruments")
        width: parent.width

        onTriggered: {
            root.page.leaving();
            root.page.opens("InstrumentsPage", {});
        }
    }

    DraftEntry {
        draft: root.draft
        error: root.measure.errors.low ?? ""
        inputHints: Qt.ImhFormattedNumbersOnly
        label: qsTr("At least, %1").arg(root.measure.limitUnit)
        lift: true
        name: "low"
        page: root.page
        width: parent.width
    }

    DraftEntry {
        draft: root.draft
        error: root.measure.errors.high ?? ""
        inputHints: Qt.ImhFormattedNumbersOnly
        label: qsTr("At most, %1").arg(root.measure.limitUnit)
        lift: true
        name: "high"
        page: root.page
        width: parent.width
    }

    Choice {
        current: root.draft.values.trust ?? -1
        label: qsTr("Where the limits come from")
        lift: true
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
        lift: true
        name: "reference"
        page: root.page
        placeholder: qsTr("page 7-12")
        width: parent.width
    }

    ChoiceSheet {
        id: units

        current: root.measure.units.indexOf(root.measure.unit)
        lift: true
        options: root.measure.units
        title: qsTr("Unit")

        onChosen: index => root.measure.chooseUnit(index)
    }

    ChoiceSheet {
        id: instruments

        current: root.measure.instrument
        lift: true
        options: root.measure.instruments
        title: qsTr("Instrument")

        onChosen: index => root.measure.chooseInstrument(index)
    }
}
