// One gathering: first what it is, then the map of its places.
//
//   gathering   id; empty for a new one
//   step        strip step that a new one belongs to
//   replaces    the gathering in whose place a new one comes
import QtQuick
import Undercowl
import Undercowl.Style

ShopPage {
    id: root

    property string gathering: ""
    property string step: ""
    property string replaces: ""
    property bool describing: gathering === ""

    title: describing ? (view.known ? qsTr("Correct") : (replaces !== "" ? qsTr("The new part") : qsTr("What is it?"))) : view.title
    footer: [
        ActionButton {
            kind: ActionButton.Main
            lift: true
            text: qsTr("Keep")
            visible: root.describing
            width: parent.width

            onTriggered: {
                root.leaving();
                form.keep();
            }
        },
        GatheringActions {
            view: view
            visible: !root.describing
            width: parent.width

            onPhoto: root.opens("CameraPage", {
                "jobId": root.session.jobId,
                "purpose": "wiring",
                "about": view.gathering,
                "title": view.title
            })
            onReadsBack: root.opens("ReadBackPage", {
                "gathering": view.gathering,
                "half": view.half
            })
            onStrokes: root.opens("StrokePage", {
                "gathering": view.gathering,
                "half": view.half
            })
        }
    ]
    tools: PageTool {
        iconName: "edit"
        text: qsTr("Correct what it is")
        offered: !root.describing

        onTriggered: root.describing = true
    }

    GatheringView {
        id: view

        gathering: root.gathering
        replaces: root.replaces
        session: root.session
        step: root.step

        onDescribed: root.describing = false
    }

    GatheringForm {
        id: form

        page: root
        view: view
        visible: root.describing
        width: parent.width
    }

    ListRow {
        iconName: "swap"
        title: qsTr("Carry the wires over")
        visible: !root.describing && view.replaces !== ""
        width: parent.width

        onTriggered: root.opens("CarryPage", {
            "gathering": view.gathering
        })
    }

    GatheringMap {
        view: view
        visible: !root.describing
        width: parent.width

        onChosen: place => root.opens("PlacePage", {
            "gathering": view.gathering,
            "half": view.half,
            "place": place
        })
    }

    ListRow {
        aside: qsTr("with other connections than the old one")
        iconName: "parts"
        title: qsTr("A new part comes in its place")
        visible: !root.describing && view.known
        width: parent.width

        onTriggered: root.opens("GatheringPage", {
            "replaces": view.gathering,
            "step": view.stepOf
        })
    }
}
