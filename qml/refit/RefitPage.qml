// Refitting: the next step fills the screen.
//
//   step   id of a step that was chosen; empty for the next to do
// Qt 6.4 knows no members of a url, a map or a list:
// qmllint disable type
import QtQuick
import Undercowl
import Undercowl.Style

ShopPage {
    id: root

    property string step: ""
    property bool aloud: false
    property string asks: "" // the step whose wires are asked about before it is said to be on

    readonly property bool asking: asks !== "" && asks === refit.step && refit.wiresLeft.length > 0

    // Wires that do not match or were not read back are named first; what was asked once is taken.
    function refitted(): bool {
        if (refit.wiresLeft.length > 0 && !asking && !refit.done) {
            asks = refit.step;
            return false;
        }
        asks = "";
        refit.refit("");
        return true;
    }

    function readWires() {
        root.opens("WiringPage", {
            "step": refit.step,
            "refitting": true
        });
    }

    function takePhoto() {
        root.opens("CameraPage", {
            "jobId": root.session.jobId,
            "purpose": "refit",
            "about": refit.step,
            "title": refit.title
        });
    }

    function memo(recording: bool) {
        root.opens("MemoPage", {
            "about": refit.step,
            "recording": recording,
            "machine": refit.title
        });
    }

    aside: refit.position
    lift: true
    title: qsTr("Refit")
    footer: [
        ActionButton {
            iconName: "done"
            lift: true
            settle: settle
            text: qsTr("Refitted all the same")
            visible: root.asking
            width: parent.width

            onTriggered: root.refitted()
        },
        // Where the thumb lies when the wires are asked about, the safe answer is.
        ActionButton {
            busy: refit.saying
            busyText: qsTr("Saving")
            enabled: refit.step !== "" && !refit.done || refit.saying
            iconName: root.asking ? "wire" : "done"
            kind: ActionButton.Main
            lift: true
            settle: settle
            text: refit.done ? qsTr("Is refitted") : root.asking ? qsTr("Read the wires back") : qsTr("Refitted")
            visible: refit.step !== ""
            width: parent.width

            onTriggered: {
                if (root.asking)
                    root.readWires();
                else
                    root.refitted();
            }
        },
        TalkBar {
            id: talk

            aloud: root.aloud
            brief: refit.spokenTorques
            briefly: qsTr("Torques")
            brieflyDescription: qsTr("Says its torques alone")
            commands: ({
                    "done": () => {
                        if (!root.refitted())
                            talk.ear.refuse(refit.wiresLeft.join("\n"));
                    },
                    "next": () => refit.goOn(),
                    "back": () => refit.back(),
                    "photo": () => root.takePhoto(),
                    "memo": () => root.memo(true),
                    "stop": () => root.aloud = false,
                    "undo": () => talk.undo()
                })
            page: root
            sentence: refit.sentence
            settle: settle
            values: ["bag"]
            width: parent.width

            onBag: number => {
                if (!refit.chooseBag(number))
                    talk.ear.refuse(qsTr("Nothing that is still to be refitted lies in bag %1.").arg(number));
            }
        },
        RefitActions {
            hasStep: refit.step !== ""
            visible: !root.aloud
            width: parent.width
            wired: refit.wires.count > 0

            onMeasures: root.opens("MeasurePage", {
                "about": refit.step
            })
            onPhoto: root.takePhoto()
            onWires: root.readWires()
        }
    ]
    tools: [ // while it is read aloud, stopping that is one touch
        TalkTool {
            offered: !root.aloud && root.listener !== null
            page: root
        },
        PageTool {
            iconName: root.aloud ? "pause" : "listen"
            stays: root.aloud
            text: root.aloud ? qsTr("Read silently") : qsTr("Read aloud")
            offered: root.speaker !== null

            onTriggered: root.aloud = !root.aloud
        },
        PageTool {
            iconName: "list"
            offered: !root.aloud
            text: qsTr("Steps")

            onTriggered: root.opens("RefitStepsPage", {})
        },
        PageTool {
            iconName: "undo"
            offered: !root.aloud && refit.done
            text: qsTr("It is not refitted")

            onTriggered: refit.takeOff()
        }
    ]

    RefitView {
        id: refit

        session: root.session
        step: root.step
    }

    Settle {
        id: settle

        about: [refit.step, refit.done, root.asking].join()
    }

    CautionBox {
        text: qsTr("All is on again, but not right: %1").arg(refit.notRight.join("\n"))
        visible: refit.finished && refit.step === "" && refit.notRight.length > 0
        width: parent.width
    }

    EmptyState {
        iconName: "done"
        text: refit.steps.count === 0 ? qsTr("Nothing was stripped, so nothing is to be refitted.")
                                      : qsTr("All %1 steps are on again. Measure, prove, then hand over.").arg(refit.steps.count)
        title: refit.steps.count === 0 ? qsTr("Nothing to refit") : qsTr("All refitted")
        visible: refit.ready && refit.finished && refit.step === "" && refit.notRight.length === 0
        width: parent.width
    }

    EmptyState {
        iconName: "clock"
        text: qsTr("Every task that is left waits. Under Steps each can be refitted all the same.")
        title: qsTr("All else waits")
        visible: refit.stalled && refit.step === ""
        width: parent.width
    }

    CautionBox {
        text: qsTr("Not all wires are read back. %1").arg(refit.wiresLeft.join("\n"))
        visible: refit.wiresLeft.length > 0 && (root.asking || refit.done)
        width: parent.width
    }

    PhotoFrame {
        crop: marks.length === 0 // no ring is cut off
        description: qsTr("Photo of %1 when it was stripped").arg(refit.title)
        enlarges: true
        height: Math.round(width * 0.5)
        marks: refit.marks
        source: refit.photo
        visible: source.toString() !== ""
        width: parent.width
    }

    Label {
        kind: Label.Name
        text: refit.title
        visible: text !== ""
        width: parent.width
    }

    Label {
        kind: Label.Title
        strong: false
        text: refit.holds
        visible: text !== ""
        width: parent.width
    }

    Repeater {
        model: refit.pieces

        Label {
            required property string modelData

            mono: true
            text: modelData
            width: parent?.width ?? 0
        }
    }

    Repeater {
        model: refit.torques

        Label {
            required property string modelData

            kind: Label.Title
            mono: true
            text: modelData
            width: parent?.width ?? 0
        }
    }

    Label {
        text: refit.details
        visible: text !== ""
        width: parent.width
    }

    CautionBox {
        text: qsTr("Not yet: first %1").arg(refit.behind)
        visible: refit.behind !== "" && !refit.done
        width: parent.width
    }

    CautionBox {
        text: qsTr("This task waits for %1").arg(refit.waitsFor)
        visible: refit.waiting
        width: parent.width
    }

    ActionButton {
        lift: true
        text: qsTr("It waits no more")
        visible: refit.waiting
        width: parent.width

        onTriggered: refit.resume()
    }

    Repeater {
        model: refit.cautions

        CautionBox {
            required property string modelData

            text: modelData
            width: parent?.width ?? 0
        }
    }

    NeedsPanel {
        session: root.session
        step: refit.step
        visible: refit.step !== ""
        width: parent.width

        onOpened: root.opens("NeedsPage", {
            "step": refit.step
        })
    }

    ListRow {
        iconName: "step"
        lift: true
        title: refit.isLine ? qsTr("Read back how it runs") : qsTr("Read hoses and cables back")
        visible: refit.isLine || refit.finished && refit.lines > 0
        width: parent.width

        onTriggered: root.opens("LineBackPage", {
            "step": refit.isLine ? refit.step : ""
        })
    }

    ListRow {
        iconName: "caution"
        lift: true
        title: qsTr("Afterwards: adjust, bleed, try")
        visible: refit.done || refit.finished
        width: parent.width

        onTriggered: root.opens("AfterwardsPage", {})
    }

    ListRow {
        iconName: "memo"
        lift: true
        title: qsTr("Memo")
        visible: refit.step !== ""
        width: parent.width

        onTriggered: root.memo(false)
    }

    Label {
        text: refit.note
        tone: Theme.quiet
        visible: text !== ""
        width: parent.width
    }
}
