// A new part in place of the old one. What serves the same is carried over at a touch; the rest is measured or tried.
// Qt 6.4 knows no members of a url, a map or a list, cannot bind a delegate to the ids around it:
// qmllint disable type unqualified
import QtQuick
import Undercowl
import Undercowl.Style

ShopPage {
    id: root

    property string gathering: ""
    property string tried: ""

    title: qsTr("Carry over")
    footer: ActionButton {
        enabled: view.toSay > 0
        kind: ActionButton.Main
        lift: true
        text: view.toSay > 0 ? qsTr("Take %n over", "wires", view.toSay) : qsTr("Taken over")
        visible: view.carried.count > 0
        width: parent.width

        onTriggered: view.takeOver()
    }

    CarryView {
        id: view

        gathering: root.gathering
        session: root.session
    }

    Label {
        strong: true
        text: view.title
        width: parent.width
    }

    Label {
        text: qsTr("Wires go where the same is served; their colour decides nothing. Say what each wire of the old part and each place of the new one serves.")
        tone: Theme.quiet
        width: parent.width
    }

    component Wire: ListRow {
        id: wire

        required title
        required property string lineId
        required property string detail
        required property string more
        property bool tells: true // 'more' as well

        aside: [wire.detail, wire.tells ? wire.more : ""].filter(word => word !== "").join("\n")
        iconName: "wire"
        width: parent?.width ?? 0
    }

    Repeater {
        model: view.carried

        Wire {
            required property bool on

            done: on
            opens: false
        }
    }

    Repeater {
        model: view.found

        ListRow {
            required title
            required property string detail

            aside: detail
            iconName: "close"
            opens: false
            width: parent?.width ?? 0
        }
    }

    SectionHeader {
        text: qsTr("Measure first")
        visible: view.measures.count > 0
        width: parent.width
    }

    Repeater {
        model: view.measures

        Wire {
            tells: false
            iconName: "gauge"

            onTriggered: root.opens("PlacePage", {
                "gathering": view.oldGathering,
                "half": "loom",
                "place": lineId
            })
        }
    }

    SectionHeader {
        aside: qsTr("%n at most", "trials", view.mostTrials)
        text: qsTr("Then try")
        visible: view.trials.count > 0
        width: parent.width
    }

    CautionBox {
        text: qsTr("Only with a fuse of 3 A at most in the trial lead, one connection at a time, everything else switched off, engine stopped. No sign: take it off before the next. A fuse that blows ends the trials. The machine's manual and diagram come first.")
        visible: view.trials.count > 0
        width: parent.width
    }

    Repeater {
        model: view.trials

        Wire {
            onTriggered: {
                root.tried = lineId;
                seen.options = view.placesOf(lineId);
                seen.open();
            }
        }
    }

    ChoiceSheet {
        id: seen

        title: qsTr("At which place was the sign seen?")

        onChosen: index => view.seenAt(root.tried, index)
    }
}
