// The photo after the work against the wires as found: same, changed, or cannot tell.
//
//   gathering, half   what is compared
// Qt 6.4 knows no members of a url, a map or a list, cannot bind a delegate to the ids around it:
// qmllint disable type unqualified
import QtQuick
import Undercowl
import Undercowl.Style

ShopPage {
    id: root

    required property string gathering
    property string half: "loom"

    readonly property bool aligned: view.verdict !== "" && (view.alignedAfter.span ?? 0) > 0

    lift: true
    title: qsTr("Compare")
    footer: [
        ProgressStrip {
            text: view.reader.state === PhotoReader.Opening ? qsTr("Opening the photo") : qsTr("Reading the wires")
            visible: view.reader.busy
            width: parent.width

            onCancelled: view.reader.cancel()
        },
        ActionButton {
            iconName: "camera"
            main: view.verdict === ""
            lift: true
            text: qsTr("Photo as it is now")
            visible: view.possible && view.verdict === ""
            width: parent.width

            onTriggered: root.opens("CameraPage", {
                "jobId": root.session.jobId,
                "purpose": "refit",
                "wires": true,
                "about": root.gathering,
                "title": qsTr("Wires as they are now")
            })
        },
        Row {
            id: ways

            readonly property real half: (width - spacing) / 2

            spacing: Theme.targetGap
            visible: view.verdict !== ""
            width: parent.width

            ActionButton {
                description: qsTr("When the stroke began at the last place")
                lift: true
                text: qsTr("Turn round")
                width: ways.half

                onTriggered: view.reverse()
            }

            ActionButton {
                lift: true
                text: qsTr("Stroke again")
                width: ways.half

                onTriggered: view.again()
            }
        }
    ]

    CompareView {
        id: view

        gathering: root.gathering
        half: root.half
        session: root.session
    }

    Label {
        kind: Label.Title
        text: view.hint
        visible: text !== ""
        width: parent.width
    }

    Panel {
        title: view.result
        tone: view.verdict === "same" ? Theme.act : view.verdict === "changed" ? Theme.stop : Theme.caution
        visible: view.verdict !== ""
        width: parent.width

        Label {
            text: view.reasons
            visible: text !== ""
            width: parent.width
        }

        Label {
            kind: Label.Aside
            text: qsTr("Wires that look alike cannot be told apart in a photo: a swap among twins is not seen.")
            width: parent.width
        }
    }

    Label {
        text: view.waitsForEnd ? qsTr("Now tap the last wire.") : qsTr("Stroke across the wires from place 1 on, or tap the first wire and then the last.")
        visible: view.possible && view.after.toString() !== "" && view.verdict === ""
        width: parent.width
    }

    Repeater {
        id: pair

        // As long a line in both as the frames hold, whichever way it runs.
        readonly property real frameHeight: Math.round(root.width * 0.4)
        readonly property real lineLength: {
            const angle = view.slope * Math.PI / 180;
            return Math.min(0.62 * root.width / Math.max(0.01, Math.abs(Math.cos(angle))), 0.6 * frameHeight / Math.max(0.01, Math.abs(Math.sin(angle))));
        }

        model: root.aligned ? [
            {
                "label": qsTr("Before"),
                "source": view.before,
                "laid": view.alignedBefore,
                "marks": view.marksBefore
            },
            {
                "label": qsTr("Now"),
                "source": view.after,
                "laid": view.alignedAfter,
                "marks": view.marksAfter
            }
        ] : []

        AlignedPhoto {
            required property var modelData

            height: pair.frameHeight
            label: modelData.label
            laid: modelData.laid
            lineLength: pair.lineLength
            marks: modelData.marks
            source: modelData.source
            width: parent?.width ?? 0
        }
    }

    StrokePhoto {
        busy: view.reader.busy
        description: qsTr("Photo as it is now")
        marks: view.marksAfter
        source: view.after
        visible: view.possible && source.toString() !== "" && !root.aligned
        width: parent.width

        onStroked: points => view.stroke(points)
        onTapped: (x, y) => view.tap(x, y)
    }

    RemedyLine {
        error: view.reader.problem
        width: parent.width
    }

    SectionHeader {
        text: qsTr("Before")
        visible: view.before.toString() !== "" && !root.aligned
        width: parent.width
    }

    PhotoFrame {
        crop: false
        description: qsTr("Photo before")
        enlarges: true
        marks: view.marksBefore
        source: view.before
        visible: source.toString() !== "" && !root.aligned
        width: parent.width
    }

    SectionHeader {
        text: qsTr("Compare with another photo")
        visible: view.possible && view.afters.count > 1
        width: parent.width
    }

    Repeater {
        model: view.afters

        ListRow {
            required title
            required property string lineId
            required property bool on
            required property var model

            aside: model.aside
            done: on
            iconName: "photo"
            lift: true
            opens: false
            visible: view.possible && view.afters.count > 1
            width: parent?.width ?? 0

            onTriggered: view.chooseAfter(lineId)
        }
    }
}
