// Hoses, vents and control cables read back on refit, one to a screen: does it run and end as it was found?
//
//   step   where to begin; empty: with the first that was not read back
// Qt 6.4 knows no members of a url, a map or a list:
// qmllint disable type
import QtQuick
import Undercowl
import Undercowl.Style

ShopPage {
    id: root

    property string step: ""
    property bool aloud: false

    // By voice.
    function say(match: bool) {
        if (line.over && match)
            root.leaves();
        else if (line.over)
            talk.ear.refuse(qsTr("All were read. Go back to the one that does not match."));
        else if (match)
            line.done();
        else
            line.doesNotMatch();
    }

    aside: line.open ? (line.index + 1) + " / " + line.count : ""
    lift: true
    title: qsTr("Hoses and cables")
    footer: [
        ReadBackActions {
            brief: talk.visible
            speaks: root.speaker !== null
            settle: settle
            visible: line.open && !line.mismatch
            width: parent.width
            wire: line

            onListens: root.aloud = true
        },
        ReadBackMismatch {
            settle: settle
            visible: line.mismatch
            width: parent.width
            wire: line

            onPhoto: root.opens("CameraPage", {
                "jobId": root.session.jobId,
                "purpose": "refit",
                "about": line.stepId,
                "title": line.place
            })
        },
        ReadBackEnd {
            comparable: false
            settle: settle
            visible: line.over
            width: parent.width
            wire: line

            onFinished: root.leaves()
        },
        TalkBar {
            id: talk

            aloud: root.aloud
            brief: line.briefSentence
            briefly: qsTr("Ends only")
            brieflyDescription: qsTr("Says where its ends sit, alone")
            hushed: line.over || line.mismatch
            commands: ({
                    "done": () => root.say(true),
                    "does not match": () => root.say(false),
                    "next": () => line.goOn(),
                    "back": () => line.back(),
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
            sentence: line.sentence
            settle: settle
            wanted: line.count > 0
            width: parent.width
        }
    ]
    tools: PageTool {
        iconName: root.aloud ? "pause" : "listen"
        stays: root.aloud
        text: root.aloud ? qsTr("Read silently") : qsTr("Read aloud")
        offered: root.speaker !== null && talk.visible && line.count > 0

        onTriggered: root.aloud = !root.aloud
    }

    LineBackView {
        id: line

        session: root.session
        step: root.step

        onStays: {
            if (root.aloud)
                talk.again();
        }
    }

    Settle {
        id: settle

        about: [line.index, line.place, line.mismatch, line.over].join()
    }

    EmptyState {
        iconName: "step"
        text: qsTr("A strip step is a hose, vent or cable when its title says so, or when you wrote down where its ends sit.")
        title: qsTr("Nothing to read back")
        visible: line.ready && line.count === 0
        width: parent.width
    }

    PhotoFrame {
        crop: line.marks.length === 0 // no ring is cut off
        description: qsTr("Photo of %1 when it was stripped").arg(line.place)
        enlarges: true
        height: Math.round(width * 0.5)
        marks: line.marks
        source: line.photo
        visible: line.open && source.toString() !== ""
        width: parent.width
    }

    Label {
        kind: Label.Name
        text: line.place
        visible: line.open
        width: parent.width
    }

    Label {
        kind: Label.Title
        strong: false
        text: line.details
        visible: line.open && text !== ""
        width: parent.width
    }

    Label {
        kind: Label.Aside
        text: qsTr("Its step is not refitted yet.")
        tone: Theme.caution
        visible: line.open && !line.refitted
        width: parent.width
    }

    ReadBackBefore {
        visible: line.open && line.checked !== ""
        wire: line
        width: parent.width
    }

    Panel {
        title: qsTr("%1 of %2 run as they did").arg(line.matching).arg(line.count)
        tone: line.failing > 0 ? Theme.stop : line.matching === line.count ? Theme.act : Theme.caution
        visible: line.over
        width: parent.width

        Label {
            text: qsTr("These do not match. Put them right and read them back again:")
            visible: line.failing > 0
            width: parent.width
        }

        Label {
            strong: true
            text: line.failingPlaces
            visible: text !== ""
            width: parent.width
        }

        Label {
            text: qsTr("These were not read back:")
            visible: line.openPlaces !== ""
            width: parent.width
        }

        Label {
            strong: true
            text: line.openPlaces
            visible: text !== ""
            width: parent.width
        }

        Label {
            text: qsTr("Each was seen where it runs and where it ends.")
            visible: line.matching === line.count
            width: parent.width
        }
    }
}
