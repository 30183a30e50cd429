// What the mechanic can say of the wire in question. A sure proposal has one main answer; of an unsure one the two
// likeliest stand side by side, none of them emphasised.
import QtQuick
import Undercowl
import Undercowl.Style

Column {
    id: root

    required property StrokeView view

    readonly property var wire: view.wire
    readonly property var choices: wire.choices ?? []
    readonly property bool settled: (wire.confirmed ?? false) || (wire.empty ?? false)
    readonly property bool found: wire.found ?? false
    readonly property bool sure: wire.sure ?? false
    readonly property real half: (width - Theme.targetGap) / 2
    readonly property real third: (width - 2 * Theme.targetGap) / 3
    readonly property bool offersAll: !view.named && view.rows.sureCount > 0
    property bool asks: false // whether all that are sure were looked at from all sides
    // An answer that is not sure is no main action, and the reason why it is not needs the room.
    readonly property real answerHeight: sure ? Theme.liftMain : Theme.liftOther

    signal picks
    signal done

    spacing: Theme.targetGap

    onOffersAllChanged: asks = false

    Row {
        spacing: Theme.targetGap
        visible: !root.settled && root.found && !root.asks

        ActionButton {
            description: root.wire.words ?? ""
            height: root.answerHeight
            main: root.sure
            lift: true
            text: root.sure ? qsTr("Confirm") : qsTr("It is %1").arg(root.wire.words ?? "")
            width: root.choices.length === 0 ? root.width : root.half

            onTriggered: root.view.confirm()
        }

        ActionButton {
            height: root.answerHeight
            lift: true
            text: qsTr("It is %1").arg(root.choices.length > 0 ? root.choices[0].words : "")
            visible: root.choices.length > 0
            width: root.half

            onTriggered: root.view.take(0)
        }
    }

    CautionBox {
        text: qsTr("The photo shows one side of a wire. Turn each of them: a tracer may lie on the other side.")
        visible: root.asks
        width: parent.width
    }

    ActionButton {
        lift: true
        text: qsTr("All %1, each was turned").arg(root.view.rows.sureCount)
        visible: root.asks
        width: parent.width

        onTriggered: root.view.confirmSure()
    }

    // Where the thumb lies that asked for all of them.
    ActionButton {
        kind: ActionButton.Main
        lift: true
        text: qsTr("One by one")
        visible: root.asks
        width: parent.width

        onTriggered: root.asks = false
    }

    ActionButton {
        kind: ActionButton.Main
        lift: true
        text: qsTr("Done")
        visible: root.settled && root.view.rows.openCount === 0 && !root.asks
        width: parent.width

        onTriggered: root.done()
    }

    ActionButton {
        kind: ActionButton.Main
        lift: true
        text: qsTr("Next open wire")
        visible: root.settled && root.view.rows.openCount > 0 && !root.asks
        width: parent.width

        onTriggered: root.view.current = root.view.rows.nextOpenFrom(root.view.current)
    }

    WireSteps {
        view: root.view
        visible: root.view.named && !root.asks
        width: parent.width
    }

    Row {
        spacing: Theme.targetGap
        visible: !root.asks

        ActionButton {
            lift: true
            text: qsTr("Other colour")
            width: root.offersAll ? root.third : root.half

            onTriggered: root.picks()
        }

        ActionButton {
            lift: true
            text: qsTr("All %1 sure").arg(root.view.rows.sureCount)
            visible: root.offersAll
            width: root.third

            onTriggered: root.asks = true
        }

        ActionButton {
            lift: true
            text: qsTr("More")
            width: root.offersAll ? root.third : root.half

            onTriggered: more.open()
        }
    }

    ChoiceSheet {
        id: more

        readonly property var ways: [
            {
                "words": qsTr("Look at this wire again"),
                "act": () => root.view.lookAgain()
            },
            {
                "words": qsTr("White paper is in the picture: tap it"),
                "act": () => root.view.askForCard(true)
            },
            {
                "words": qsTr("Turn round: place 1 is at the other end"),
                "act": () => root.view.reverse()
            },
            {
                "words": qsTr("This place is empty"),
                "act": () => root.view.setEmpty()
            },
            {
                "words": root.wire.shares ? qsTr("In a place of its own") : qsTr("Second wire of the place before"),
                "act": () => root.view.share()
            },
            {
                "words": qsTr("A wire is missing before this one"),
                "act": () => root.view.insertWire(false)
            },
            {
                "words": qsTr("A wire is missing after this one"),
                "act": () => root.view.insertWire(true)
            },
            {
                "words": qsTr("This is no wire: take it out"),
                "act": () => root.view.removeWire()
            },
            {
                "words": qsTr("Not confirmed any more"),
                "act": () => root.view.takeBack()
            },
            {
                "words": qsTr("Bring the rows before the last stroke back"),
                "act": () => root.view.bringBack()
            }
        ]

        lift: true
        options: ways.map(way => way.words)
        title: root.wire.place ?? ""

        onChosen: index => ways[index].act()
    }
}
