// One reading: the value on the keypad and what follows from it; what is measured, with what and against which limits is set
// up on a panel of its own. The keypad stands with the actions, so that no key moves while the verdict changes.
//
//   about   step or task that it is about; may be empty
//   panel   "setup" or "working" while that is shown; empty for the value
// Qt 6.4 knows no members of a url, a map or a list:
// qmllint disable type
import QtQuick
import Undercowl
import Undercowl.Style

ShopPage {
    id: root

    property string about: ""
    property string panel: ""

    readonly property bool entering: panel === ""
    readonly property bool cramped: !beside && height < Theme.grid * 175 // the verdict's word stays in view, its reason scrolls
    readonly property string what: draft.values.what ?? ""

    function keep() {
        root.leaving();
        measure.keep();
        if (measure.errors.what !== undefined || measure.errors.unit !== undefined || measure.errors.low !== undefined || measure.errors.high !== undefined
                || measure.errors.trust !== undefined)
            root.panel = "setup";
    }

    layered: panel === "working"
    lift: true
    listPage: "ReadingsPage"
    scroller.inset: cramped && entering ? Theme.grid * 2 : Theme.margin
    scroller.spacing: cramped && entering ? Theme.targetGap - Theme.grid : Theme.grid * 3
    title: panel === "working" ? qsTr("Working") : panel === "setup" ? qsTr("What and how") : what !== "" ? what : qsTr("Measure")
    keys: Keypad {
        visible: root.entering && !talk.visible
        width: parent.width

        onErased: value.erase()
        onTyped: key => value.press(key)
    }
    footer: [
        TalkBar {
            id: talk

            commands: ({
                    "done": () => root.keep(),
                    "back": () => root.leaves(),
                    "undo": () => {
                        if (measure.unhear())
                            talk.ear.forget();
                        else
                            talk.undo();
                    }
                })
            page: root
            takesBack: measure.heard
            tall: true
            values: ["reading"]
            wanted: root.entering
            width: parent.width

            onReading: (what, digits, unit) => {
                measure.hear(what, digits, unit);
                if (measure.errors.value !== undefined)
                    talk.ear.refuse(measure.errors.value);
                else
                    talk.ear.remark(measure.spokenVerdict());
            }
        },
        MeasureActions {
            repeated: measure.aside.count > 0
            visible: root.entering
            width: parent.width

            onAgain: measure.again()
            onKept: root.keep()
        },
        ActionButton {
            kind: ActionButton.Main
            lift: true
            text: qsTr("To the value")
            visible: !root.entering
            width: parent.width

            onTriggered: {
                root.leaving();
                root.panel = "";
            }
        }
    ]
    tools: [
        TalkTool {
            page: root
            offered: root.entering && root.listener !== null
        },
        PageTool {
            iconName: "calculate"
            offered: root.entering && (measure.aside.count > 0 || measure.working.length > 0)
            text: qsTr("Working")

            onTriggered: {
                root.leaving();
                root.panel = "working";
            }
        },
        PageTool {
            iconName: "list"
            text: qsTr("Readings so far")

            onTriggered: {
                root.leaving();
                root.opens("ReadingsPage", {});
            }
        }
    ]

    onClosesLayer: panel = ""

    FormDraft {
        id: draft

        form: "reading/" + root.session.jobId + (root.about === "" ? "" : "/" + root.about)
        jobId: root.session.jobId
        session: root.session
        title: qsTr("Reading")

        onReadyChanged: {
            if (ready)
                measure.proposeFirst();
        }
    }

    MeasureView {
        id: measure

        about: root.about
        draft: draft
        session: root.session

        onKept: value.clear()
    }

    MeasureValue {
        id: value

        draft: draft
        measure: measure
        targeting: !root.cramped || measure.verdict === ""
        visible: root.entering
        width: parent.width
    }

    VerdictMark {
        reason: root.cramped ? "" : measure.reason
        verdict: measure.verdict
        visible: root.entering && measure.verdict !== ""
        width: parent.width
    }

    Label {
        kind: Label.Aside
        text: [value.targeting ? "" : measure.mean, measure.reason].filter(word => word !== "").join(", ")
        visible: root.entering && (measure.verdict === "" || root.cramped) && text !== ""
        width: parent.width
    }

    ListRow {
        aside: measure.aboutText === "" ? measure.setup : qsTr("at: %1 \u00b7 %2").arg(measure.aboutText).arg(measure.setup)
        iconName: "gauge"
        lift: true
        title: root.what === "" ? qsTr("What is measured?") : root.what
        visible: root.entering
        width: parent.width

        onTriggered: {
            root.leaving();
            root.panel = "setup";
        }
    }

    Label {
        kind: Label.Aside
        text: [measure.target, measure.targetSource].filter(word => word !== "").join(", ")
        visible: root.entering && text !== ""
        width: parent.width
    }

    MeasureMore {
        measure: measure
        visible: root.entering
        width: parent.width
    }

    LimitsEntry {
        draft: draft
        measure: measure
        page: root
        visible: root.panel === "setup"
        width: parent.width
    }

    MeasureWorking {
        measure: measure
        visible: root.panel === "working"
        width: parent.width
    }
}
