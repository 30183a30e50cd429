// One reading: what, the value, and what it is held against.
//
//   about   step or task that it is about; may be empty
// Qt 6.4 knows no members of a url, a map or a list:
// qmllint disable type
import QtQuick
import Undercowl
import Undercowl.Style

ShopPage {
    id: root

    property string about: ""

    title: qsTr("Measure")
    footer: ActionButton {
        kind: ActionButton.Main
        lift: true
        text: qsTr("Keep")
        width: parent.width

        onTriggered: {
            root.leaving();
            measure.keep();
        }
    }
    tools: [
        IconButton {
            iconName: "calculate"
            text: qsTr("Calculations")

            onTriggered: {
                root.leaving();
                root.opens("CalcListPage", {});
            }
        },
        IconButton {
            iconName: "list"
            text: qsTr("Readings so far")

            onTriggered: root.opens("ReadingsPage", {})
        }
    ]

    FormDraft {
        id: draft

        form: "reading/" + root.session.jobId
        jobId: root.session.jobId
        session: root.session
        title: qsTr("Reading")
    }

    MeasureView {
        id: measure

        about: root.about
        draft: draft
        session: root.session

        onKept: value.clear()
    }

    DraftEntry {
        draft: draft
        error: measure.errors.what ?? ""
        label: qsTr("What was measured")
        name: "what"
        page: root
        placeholder: qsTr("what: rear axle nut, torque")
        quiet: true
        width: parent.width
    }

    NumberEntry {
        id: value

        error: measure.errors.value ?? ""
        label: qsTr("Value")
        quiet: true
        unit: measure.unit
        value: draft.values.value ?? ""
        width: parent.width

        onEdited: text => draft.set("value", text)
    }

    VerdictMark {
        reason: measure.reason
        verdict: measure.verdict
        visible: measure.verdict !== ""
        width: parent.width
    }

    Label {
        kind: Label.Aside
        text: measure.reason
        visible: measure.verdict === "" && text !== ""
        width: parent.width
    }

    BandPlot {
        band: measure.band
        width: parent.width
    }

    Repeater {
        model: measure.cautions

        CautionBox {
            required property string modelData

            text: modelData
            width: parent?.width ?? 0
        }
    }

    Keypad {
        width: parent.width

        onErased: value.erase()
        onTyped: key => value.press(key)
    }

    LimitsEntry {
        draft: draft
        measure: measure
        page: root
        width: parent.width
    }

    CalcMore {
        lines: measure.working
        title: qsTr("Working")
        visible: lines.length > 0
        width: parent.width
    }
}
