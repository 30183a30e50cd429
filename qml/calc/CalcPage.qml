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

    readonly property bool entering: view.key !== ""

    listPage: "CalcListPage"
    title: entering ? view.label : view.title
    keys: Keypad {
        visible: root.entering && view.kind === "quantity"
        width: parent.width

        onErased: (entries.itemAt(0) as CalcEntry)?.erase()
        onTyped: key => (entries.itemAt(0) as CalcEntry)?.press(key)
    }
    footer: [
        StripEntryActions {
            text: qsTr("Next")
            visible: root.entering
            width: parent.width

            onClosed: {
                root.leaving();
                view.open("");
            }
            onKept: {
                root.leaving();
                view.next();
            }
        },
        ActionButton {
            kind: ActionButton.Main
            lift: true
            text: qsTr("Keep in the job")
            visible: !root.entering && root.session.jobId !== "" && view.results.count > 0
            width: parent.width

            onTriggered: view.keep()
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
                        view.showExample();
                }
            }
        }
    ]

    FormDraft {
        id: draft

        form: "calc/" + root.name
        session: root.session
        title: view.title
    }

    CalcView {
        id: view

        draft: draft
        name: root.name
        session: root.session
    }

    Label {
        text: view.purpose
        tone: Theme.quiet
        visible: !root.entering
        width: parent.width
    }

    Repeater {
        id: entries

        model: root.entering ? [view.key] : []

        CalcEntry {
            calc: view
            page: root
            width: parent?.width ?? 0
        }
    }

    CalcResults {
        calc: view
        visible: !root.entering
        width: parent.width
    }

    SectionHeader {
        text: qsTr("What goes in")
        visible: !root.entering
        width: parent.width
    }

    Repeater {
        model: root.entering ? null : view.inputs

        CalcInputRow {
            width: parent?.width ?? 0

            onChosen: key => view.open(key)
        }
    }

    CalcMore {
        lines: view.working
        title: qsTr("Working")
        visible: !root.entering && lines.length > 0
        width: parent.width
    }

    CalcMore {
        lines: view.formula.concat(view.validity).concat(view.sources)
        title: qsTr("Formula, limits and sources")
        visible: !root.entering
        width: parent.width
    }
}
