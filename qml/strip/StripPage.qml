// A strip step: what comes off, what held it, where that lies. A draft until 'Next step' says it.
//
//   step   id of a said step to correct; empty for the step under way
// Qt 6.4 knows no members of a url, a map or a list:
// qmllint disable type
import QtQuick
import Undercowl
import Undercowl.Style

ShopPage {
    id: root

    property string step: ""
    property string panel: ""

    property string bagBefore: "" // before one was heard
    property bool bagHeard: false

    function next() {
        root.leaving();
        root.bagHeard = false;
        strip.keep();
        if (strip.errors.title !== undefined)
            talk.ear.refuse(strip.errors.title);
    }

    function memo(recording: bool) {
        root.leaving();
        root.opens("MemoPage", {
            "about": strip.claim(),
            "recording": recording,
            "machine": strip.title === "" ? qsTr("Step %1").arg(strip.number) : strip.title
        });
    }

    function hearBag(number: int) {
        bagBefore = strip.bag;
        bagHeard = true;
        strip.setBag(number.toString());
        if (strip.bagsInUse.split(", ").includes(strip.bag))
            talk.ear.remark("careful, it is in use");
    }

    function takeBack() {
        talk.ear.forget();
        if (!bagHeard) {
            talk.undo();
            return;
        }
        bagHeard = false;
        strip.setBag(bagBefore);
    }

    function takePhoto() {
        root.leaving();
        root.opens("CameraPage", {
            "jobId": root.session.jobId,
            "purpose": "strip",
            "about": strip.claim(),
            "title": strip.title === "" ? qsTr("Step %1").arg(strip.number) : strip.title
        });
    }

    function leavePanel() {
        if (panel === "details")
            details.commit();
        strip.piece = -1;
        panel = "";
    }

    aside: qsTr("step %1").arg(strip.number)
    layered: panel !== ""
    lift: true
    title: step !== "" ? qsTr("Correct step") : panel === "hardware" ? qsTr("Held by") : panel === "places" ? qsTr("Where it sits") : panel === "details" ? qsTr("For the refit") : panel === "bag" ? qsTr("Bag") : qsTr("Strip")
    keys: Keypad {
        decimal: ""
        visible: root.panel === "bag"
        width: parent.width

        onErased: bag.erase()
        onTyped: key => bag.press(key)
    }
    footer: [
        StripActions {
            strip: strip
            visible: root.panel === ""
            width: parent.width

            onBag: root.panel = "bag"
            onHardware: root.panel = "hardware"
            onNext: root.next()
            onPhoto: root.takePhoto()
            onWires: {
                root.leaving();
                root.opens("WiringPage", {
                    "step": strip.claim()
                });
            }
        },
        TalkBar {
            id: talk

            commands: ({
                    "next": () => root.next(),
                    "done": () => root.next(),
                    "photo": () => root.takePhoto(),
                    "memo": () => root.memo(true),
                    "back": () => root.back(),
                    "undo": () => root.takeBack()
                })
            page: root
            takesBack: root.bagHeard
            unseen: root.panel === "bag"
            values: ["bag"]
            wanted: root.panel !== "hardware"
            width: parent.width

            onBag: number => root.hearBag(number)
        },
        StripEntryActions {
            ready: root.panel !== "bag" || bag.text !== strip.bag
            text: root.panel === "bag" ? qsTr("Keep the bag") : root.panel === "hardware" ? qsTr("Add") : qsTr("Keep")
            visible: root.panel !== ""
            width: parent.width

            onClosed: root.leavePanel()
            onKept: {
                if (root.panel === "bag")
                    strip.setBag(bag.text);
                else if (root.panel === "hardware" && !hardware.add())
                    return;
                root.leavePanel();
            }
        }
    ]
    onClosesLayer: leavePanel()
    onPanelChanged: scroller.contentY = 0 // where the other one was scrolled to says nothing of this one

    tools: [
        TalkTool {
            page: root
            offered: root.panel === "" && root.listener !== null
        },
        PageTool {
            iconName: "list"
            text: qsTr("Steps so far")
            offered: root.step === "" && strip.steps.count > 0

            onTriggered: {
                root.leaving();
                root.opens("StepsPage", {});
            }
        }
    ]

    StripView {
        id: strip

        corrects: root.step
        session: root.session

        onKept: {
            if (root.step !== "")
                root.leaves();
        }
    }

    StripPanel {
        page: root
        strip: strip
        visible: root.panel === ""
        width: parent.width

        onDetails: root.panel = "details"
        onMeasures: {
            root.leaving();
            root.opens("MeasurePage", {
                "about": strip.claim()
            });
        }
        onMemo: root.memo(false)
        onPlaces: index => {
            strip.piece = index;
            root.panel = "places";
        }
    }

    HardwareEntry {
        id: hardware

        strip: strip
        visible: root.panel === "hardware"
        width: parent.width
    }

    HardwarePlaces {
        strip: strip
        visible: root.panel === "places"
        width: parent.width

        onRemoved: {
            strip.removeHardware(strip.piece);
            root.leavePanel();
        }
    }

    StripDetails {
        id: details

        strip: strip
        visible: root.panel === "details"
        width: parent.width
    }

    BagEntry {
        id: bag

        inUse: strip.bagsInUse
        value: strip.bag
        visible: root.panel === "bag"
        width: parent.width
    }
}
