// The rounds on this machine: those that were begun, and what it has, from which a new one is put together.
// Qt 6.4 knows no members of a list, cannot bind a delegate to the ids around it:
// qmllint disable type unqualified
import QtQuick
import Undercowl
import Undercowl.Style

ShopPage {
    id: root

    property list<string> traits: ["", "", "", "", ""]
    readonly property list<string> engines: ["two-stroke", "four-stroke"]
    readonly property list<string> drives: ["gears", "automatic"]
    readonly property list<string> starts: ["kick", "electric-start", "kick electric-start"]
    readonly property list<string> fronts: ["front-drum", "front-disc"]
    readonly property list<string> rears: ["rear-drum", "rear-disc"]

    function set(at: int, trait: string) {
        const changed = root.traits.slice();
        changed[at] = trait;
        root.traits = changed;
    }

    title: qsTr("Rounds")
    footer: [
        ActionButton {
            aside: rounds.unfinishedToGo
            kind: ActionButton.Main
            lift: true
            text: qsTr("Go on with the round")
            visible: rounds.unfinished !== ""
            width: parent.width

            onTriggered: root.opens("RoundPage", {
                "round": rounds.unfinished
            })
        },
        ActionButton {
            kind: rounds.unfinished === "" ? ActionButton.Main : ActionButton.Other
            lift: true
            text: rounds.unfinished === "" ? qsTr("Begin the round") : qsTr("Begin another round")
            width: parent.width

            onTriggered: rounds.begin(root.traits.join(" ").split(" ").filter(each => each !== ""))
        }
    ]

    RoundsView {
        id: rounds

        session: root.session

        onRoundBegun: round => root.opens("RoundPage", {
            "round": round
        })
    }

    Repeater {
        model: rounds.begun

        ListRow {
            id: row

            required title
            required property string lineId
            required property string detail
            required property bool on

            aside: row.detail
            done: on
            iconName: "list"
            width: parent?.width ?? 0

            onTriggered: root.opens("RoundPage", {
                "round": row.lineId
            })
        }
    }

    SectionHeader {
        text: qsTr("A new round: what does the machine have?")
        width: parent.width
    }

    Choice {
        label: qsTr("Engine")
        options: [qsTr("Two-stroke"), qsTr("Four-stroke")]
        width: parent.width

        onChosen: index => root.set(0, root.engines[index])
    }

    Choice {
        label: qsTr("Drive")
        options: [qsTr("Gears"), qsTr("Automatic")]
        width: parent.width

        onChosen: index => root.set(1, root.drives[index])
    }

    Choice {
        label: qsTr("Starts by")
        options: [qsTr("Kick"), qsTr("Electric"), qsTr("Both")]
        width: parent.width

        onChosen: index => root.set(2, root.starts[index])
    }

    Choice {
        label: qsTr("Front brake")
        options: [qsTr("Drum"), qsTr("Disc")]
        width: parent.width

        onChosen: index => root.set(3, root.fronts[index])
    }

    Choice {
        label: qsTr("Rear brake")
        options: [qsTr("Drum"), qsTr("Disc")]
        width: parent.width

        onChosen: index => root.set(4, root.rears[index])
    }
}
