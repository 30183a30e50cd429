// The machine: what it is, its frame number, how far it has run, where it will be ridden.
// Qt 6.4 knows no members of a url, a map or a list, cannot bind a delegate to the ids around it:
// qmllint disable type unqualified
import QtQuick
import Undercowl
import Undercowl.Style

Column {
    id: root

    required property FormDraft draft
    required property TakeIn form
    required property ShopPage page
    readonly property list<string> distances: ["km", "mi"]

    spacing: Theme.grid * 3

    SectionHeader {
        text: qsTr("Machine")
        width: parent.width
    }

    DraftEntry {
        draft: root.draft
        label: qsTr("Make")
        name: "make"
        page: root.page
        width: parent.width
    }

    DraftEntry {
        draft: root.draft
        error: root.form.errors.model ?? ""
        label: qsTr("Model")
        name: "model"
        page: root.page
        width: parent.width
    }

    DraftEntry {
        draft: root.draft
        error: root.form.errors.year ?? ""
        inputHints: Qt.ImhDigitsOnly
        label: qsTr("Year")
        name: "year"
        page: root.page
        width: parent.width
    }

    DraftEntry {
        draft: root.draft
        hint: root.form.frameHint(root.draft.values.frame ?? "")
        inputHints: Qt.ImhUppercaseOnly | Qt.ImhNoPredictiveText
        label: qsTr("Frame number")
        mono: true
        name: "frame"
        page: root.page
        width: parent.width

        onTextChanged: root.form.lookForReturn(text)
    }

    Repeater {
        model: root.form.returns

        ListRow {
            id: before

            required title
            required property string lineId
            required property string detail
            required property string more
            required property bool on

            aside: [before.detail, before.more].join("\n")
            done: on
            iconName: "again"
            opens: false
            width: parent?.width ?? 0

            onTriggered: root.form.comesBackFrom(before.lineId)
        }
    }

    DraftEntry {
        draft: root.draft
        error: root.form.errors.odometer ?? ""
        inputHints: Qt.ImhFormattedNumbersOnly
        label: qsTr("Odometer")
        name: "odometer"
        page: root.page
        width: parent.width
    }

    Choice {
        current: Math.max(0, root.distances.indexOf(root.draft.values.odometerUnit ?? "km"))
        label: qsTr("Odometer counts")
        options: [qsTr("km"), qsTr("miles")]
        width: parent.width

        onChosen: index => root.draft.set("odometerUnit", root.distances[index])
    }

    DraftEntry {
        draft: root.draft
        error: root.form.errors.altitude ?? ""
        inputHints: Qt.ImhFormattedNumbersOnly
        label: qsTr("Ridden at, metres above the sea")
        name: "altitude"
        page: root.page
        width: parent.width
    }

    DraftEntry {
        draft: root.draft
        error: root.form.errors.rider ?? ""
        inputHints: Qt.ImhFormattedNumbersOnly
        label: qsTr("Rider with clothes, kg")
        name: "rider"
        page: root.page
        width: parent.width
    }

    DraftEntry {
        draft: root.draft
        error: root.form.errors.luggage ?? ""
        inputHints: Qt.ImhFormattedNumbersOnly
        label: qsTr("Luggage or second rider, kg")
        name: "luggage"
        page: root.page
        width: parent.width
    }

    DraftEntry {
        draft: root.draft
        label: qsTr("Load")
        name: "load"
        page: root.page
        placeholder: qsTr("two riders on Sundays, parcels")
        width: parent.width
    }
}
