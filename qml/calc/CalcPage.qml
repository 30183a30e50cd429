// One calculation: its result, its inputs, and the entry of one of them at a time.
//
//   name   of the calculation
// Qt 6.4 knows no members of a url, a map or a list, cannot bind a delegate to the ids around it:
// qmllint disable type unqualified
import QtQuick
import Undercowl
import Undercowl.Style

ShopPage {
    id: root

    required property string name

    readonly property bool entering: calc.key !== ""

    title: entering ? calc.label : calc.title
    footer: [
        StripEntryActions {
            text: qsTr("Next")
            visible: root.entering
            width: parent.width

            onClosed: {
                root.leaving();
                calc.open("");
            }
            onKept: {
                root.leaving();
                calc.next();
            }
        },
        ActionButton {
            kind: ActionButton.Main
            lift: true
            text: qsTr("Keep in the job")
            visible: !root.entering && root.session.jobId !== "" && calc.results.count > 0
            width: parent.width

            onTriggered: calc.keep()
        },
        Row {
            spacing: Theme.targetGap
            visible: !root.entering
            width: parent.width

            ActionButton {
                enabled: draft.begun
                lift: true
                text: qsTr("Clear")
                width: (parent.width - parent.spacing) / 2

                onTriggered: draft.discard()
            }

            ActionButton {
                lift: true
                text: draft.canBringBack ? qsTr("Bring back") : qsTr("Example")
                width: (parent.width - parent.spacing) / 2

                onTriggered: {
                    if (draft.canBringBack)
                        draft.bringBack();
                    else
                        calc.showExample();
                }
            }
        }
    ]

    FormDraft {
        id: draft

        form: "calc/" + root.name
        session: root.session
        title: calc.title
    }

    CalcView {
        id: calc

        draft: draft
        name: root.name
        session: root.session
    }

    Label {
        text: calc.purpose
        tone: Theme.quiet
        visible: !root.entering
        width: parent.width
    }

    Repeater {
        model: root.entering ? [calc.key] : []

        CalcEntry {
            calc: calc
            page: root
            width: parent?.width ?? 0
        }
    }

    CalcResults {
        calc: calc
        visible: !root.entering
        width: parent.width
    }

    SectionHeader {
        text: qsTr("What goes in")
        visible: !root.entering
        width: parent.width
    }

    Repeater {
        model: root.entering ? null : calc.inputs

        CalcInputRow {
            width: parent?.width ?? 0

            onChosen: key => calc.open(key)
        }
    }

    CalcMore {
        lines: calc.working
        title: qsTr("Working")
        visible: !root.entering && lines.length > 0
        width: parent.width
    }

    CalcMore {
        lines: calc.formula.concat(calc.validity).concat(calc.sources)
        title: qsTr("Formula, limits and sources")
        visible: !root.entering
        width: parent.width
    }
}
