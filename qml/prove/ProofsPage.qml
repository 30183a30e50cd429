// All that is to be proved on one page. Each is ticked by its own touch, then all of them are said at once; nothing ticks
// them together. What a reading or reading back proves is proved there.
// Qt 6.4 knows no members of a url, a map or a list, cannot bind a delegate to the ids around it:
// qmllint disable type unqualified
import QtQuick
import Undercowl
import Undercowl.Style

ShopPage {
    id: root

    readonly property list<string> kept: (draft.values.ticked ?? "") === "" ? [] : draft.values.ticked.split("\n")

    title: qsTr("To be proved")
    footer: [
        ActionButton {
            enabled: view.ticked.length > 0
            iconName: "done"
            kind: ActionButton.Main
            lift: true
            text: view.ticked.length > 0 ? qsTr("Keep %n proved", "proofs", view.ticked.length) : qsTr("Touch what works")
            width: parent.width

            onTriggered: {
                root.leaving();
                view.keep(draft);
            }
        },
        ActionButton {
            lift: true
            text: qsTr("One by one, or leave out")
            width: parent.width

            onTriggered: root.opens("ProvePage", {})
        }
    ]

    ProofsView {
        id: view

        session: root.session
        ticked: root.kept
    }

    FormDraft {
        id: draft

        form: "proofs/" + root.session.jobId
        jobId: root.session.jobId
        session: root.session
        title: root.title
    }

    component Proof: ListRow {
        id: proof

        required title
        required property string lineId
        required property string detail
        required property string mark
        required property bool on

        aside: proof.detail !== "" ? proof.detail : proof.mark === "torque" ? qsTr("measure it") : proof.mark === "wires" ? qsTr("read it back") : proof.on ? qsTr("works") : qsTr("touch when it works")
        chosen: on
        done: on
        iconName: proof.detail !== "" ? "caution" : mark === "torque" ? "gauge" : mark === "wires" ? "wire" : "step"
        opens: mark !== ""
        width: parent?.width ?? 0

        onTriggered: {
            if (mark === "torque")
                root.opens("MeasurePage", {
                    "about": view.subjectOf(lineId)
                });
            else if (mark === "wires")
                root.opens("ReadBackPage", {
                    "gathering": view.subjectOf(lineId)
                });
            else
                draft.set("ticked", view.toggled(lineId).join("\n"));
        }
    }

    SectionHeader {
        text: qsTr("Brakes, wheels, steering, and what keeps it standing")
        visible: view.guarded.count > 0
        width: parent.width
    }

    Repeater {
        model: view.guarded

        Proof {}
    }

    SectionHeader {
        text: qsTr("The rest")
        visible: view.others.count > 0
        width: parent.width
    }

    Repeater {
        model: view.others

        Proof {}
    }

    DraftEntry {
        draft: draft
        label: qsTr("How, for those that are ticked")
        name: "how"
        page: root
        placeholder: qsTr("tried on the lift, then on the yard")
        visible: view.guarded.count + view.others.count > 0
        width: parent.width
    }

    Label {
        text: qsTr("%n not on again: cannot be proved yet", "proofs", view.apart)
        tone: Theme.quiet
        visible: view.apart > 0
        width: parent.width
    }

    SectionHeader {
        text: qsTr("Have their answer")
        visible: view.proved.count > 0
        width: parent.width
    }

    Repeater {
        model: view.proved

        ListRow {
            required title
            required property string detail
            required property bool on

            aside: detail
            done: on
            iconName: "minus"
            opens: false
            width: parent?.width ?? 0
        }
    }
}
