// The wiring read back, one wire to a screen. It says which answer it reads, and stops where two answers differ.
//
//   gathering, half   what is read back
// Qt 6.4 knows no members of a list:
// qmllint disable type
import QtQuick
import Undercowl
import Undercowl.Style

ShopPage {
    id: root

    required property string gathering
    property string half: "loom"
    property bool aloud: false

    // By voice. Which of two answers holds is decided by a look at the machine and a touch.
    function say(match: bool) {
        if (wire.mustChoose)
            talk.ear.refuse(qsTr("The two answers differ. Touch the one that holds."));
        else if (wire.over && match)
            root.leaves();
        else if (wire.over)
            talk.ear.refuse(qsTr("All were read. Go back to the one that does not match."));
        else if (match)
            wire.done();
        else
            wire.doesNotMatch();
    }

    aside: wire.over || wire.count === 0 ? "" : (wire.index + 1) + " / " + wire.count
    lift: true
    title: wire.title
    footer: [
        ReadBackActions {
            brief: talk.visible
            speaks: root.speaker !== null
            settle: settle
            visible: wire.count > 0 && !wire.over && !wire.mustChoose && !wire.mismatch
            width: parent.width
            wire: wire

            onListens: root.aloud = true
        },
        ReadBackChoice {
            settle: settle
            visible: wire.mustChoose
            width: parent.width
            wire: wire
        },
        ReadBackMismatch {
            settle: settle
            visible: wire.mismatch
            width: parent.width
            wire: wire

            onPhoto: root.opens("CameraPage", {
                "jobId": root.session.jobId,
                "purpose": "refit",
                "wires": true,
                "about": root.gathering,
                "title": wire.place
            })
        },
        ReadBackEnd {
            settle: settle
            visible: wire.over
            width: parent.width
            wire: wire

            onCompares: root.opens("ComparePage", {
                "gathering": root.gathering,
                "half": wire.half
            })
            onFinished: root.leaves()
        },
        TalkBar {
            id: talk

            aloud: root.aloud
            brief: wire.briefSentence
            briefly: qsTr("Wire only")
            brieflyDescription: qsTr("Says its colour alone")
            hushed: wire.over || wire.mismatch || wire.mustChoose
            commands: ({
                    "done": () => root.say(true),
                    "does not match": () => root.say(false),
                    "next": () => wire.goOn(),
                    "back": () => wire.back(),
                    "again": () => {
                        if (root.aloud)
                            talk.again();
                        else
                            root.aloud = true;
                    },
                    "undo": () => talk.undo(),
                    "stop": () => root.aloud = false
                })
            page: root
            sentence: wire.sentence
            settle: settle
            wanted: wire.count > 0
            width: parent.width
        }
    ]
    tools: [
        PageTool {
            iconName: root.aloud ? "pause" : "listen"
            stays: root.aloud
            text: root.aloud ? qsTr("Read silently") : qsTr("Read aloud")
            offered: root.speaker !== null && talk.visible

            onTriggered: root.aloud = !root.aloud
        },
        PageTool {
            iconName: "swap"
            offered: !root.aloud // stopping that is one touch then
            text: wire.half === "loom" ? qsTr("Read the unit half") : qsTr("Read the loom half")

            onTriggered: wire.half = wire.half === "loom" ? "unit" : "loom"
        }
    ]

    ReadBackView {
        id: wire

        gathering: root.gathering
        half: root.half
        session: root.session

        onStays: {
            if (root.aloud)
                talk.again();
        }
    }

    Settle {
        id: settle

        about: [wire.index, wire.place, wire.mismatch, wire.over, wire.mustChoose].join()
    }

    EmptyState {
        iconName: "wire"
        text: wire.half === "loom" ? qsTr("No wire of the loom half was confirmed when it was stripped.")
                                   : qsTr("No wire of the unit half was confirmed when it was stripped.")
        title: qsTr("Nothing to read back")
        visible: wire.ready && wire.count === 0
        width: parent.width
    }

    ReadBackWire {
        room: root.scroller.height
        visible: wire.count > 0 && !wire.over
        width: parent.width
        wire: wire
    }

    Panel {
        title: qsTr("%1 of %2 wires match").arg(wire.matching).arg(wire.count)
        tone: wire.failing > 0 ? Theme.stop : wire.matching === wire.count ? Theme.act : Theme.caution
        visible: wire.over
        width: parent.width

        Label {
            text: qsTr("These do not match. Put them right and read them back again:")
            visible: wire.failing > 0
            width: parent.width
        }

        Label {
            strong: true
            text: wire.failingPlaces
            visible: text !== ""
            width: parent.width
        }

        Label {
            text: qsTr("These were not read back:")
            visible: wire.openPlaces !== ""
            width: parent.width
        }

        Label {
            strong: true
            text: wire.openPlaces
            visible: text !== ""
            width: parent.width
        }

        Label {
            text: qsTr("Each wire was seen in its place.")
            visible: wire.matching === wire.count
            width: parent.width
        }
    }
}
