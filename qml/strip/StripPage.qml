// A strip step: what comes off, what held it, where that lies. A draft until 'Next step' says it.
//
//   step   id of a said step to correct; empty for the step under way
import QtQuick
import Undercowl
import Undercowl.Style

ShopPage {
    id: root

    property string step: ""
    property string panel: ""

    function takePhoto() {
        root.leaving();
        root.opens("CameraPage", {
            "jobId": root.session.jobId,
            "purpose": "strip",
            "about": strip.claim(),
            "title": strip.title === "" ? qsTr("Step %1").arg(strip.number) : strip.title
        });
    }

    aside: qsTr("step %1").arg(strip.number)
    title: step !== "" ? qsTr("Correct step") : panel === "hardware" ? qsTr("Held by") : panel === "bag" ? qsTr("Bag") : qsTr("Strip")
    footer: [
        StripActions {
            strip: strip
            visible: root.panel === ""
            width: parent.width

            onBag: root.panel = "bag"
            onHardware: root.panel = "hardware"
            onNext: {
                root.leaving();
                strip.keep();
            }
            onPhoto: root.takePhoto()
            onWires: {
                root.leaving();
                root.opens("WiringPage", {
                    "step": strip.claim()
                });
            }
        },
        StripEntryActions {
            text: root.panel === "bag" ? qsTr("Keep the bag") : qsTr("Add")
            visible: root.panel !== ""
            width: parent.width

            onClosed: root.panel = ""
            onKept: {
                if (root.panel === "bag")
                    strip.setBag(bag.text);
                else if (!hardware.add())
                    return;
                root.panel = "";
            }
        }
    ]
    tools: [
        IconButton {
            iconName: "gauge"
            text: qsTr("Measure")
            visible: root.panel === ""

            onTriggered: {
                root.leaving();
                root.opens("MeasurePage", {
                    "about": strip.claim()
                });
            }
        },
        IconButton {
            iconName: "list"
            text: qsTr("Steps so far")
            visible: root.step === "" && strip.steps.count > 0

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

        onRemoves: index => strip.removeHardware(index)
    }

    HardwareEntry {
        id: hardware

        strip: strip
        visible: root.panel === "hardware"
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
