// Reading wires off the photo: stroke across them, then confirm one after the other.
//
//   gathering, half   which wires
// Qt 6.4 knows no members of a url, a map or a list:
// qmllint disable type
import QtQuick
import Undercowl
import Undercowl.Style

ShopPage {
    id: root

    required property string gathering
    property string half: "loom"
    property bool picking: false

    readonly property bool begun: view.rows.count > 0 && !view.finding
    readonly property bool empty: !begun && !view.finding && !view.asksForCard && view.photo.toString() !== ""
    // Near enough to see which wire is meant; the whole photo for a stroke or to find the paper.
    readonly property bool close: begun && !view.asksForCard && view.marks.length > 0

    // What the words leave of the height: they come first, the photo can be small.
    readonly property real roomLeft: scroller.height - rows.height - wire.height - 2 * scroller.spacing - 2 * scroller.inset
    readonly property bool cramped: !beside && !Theme.roomy // why a wire is not sure is to stay in view

    // The proposal is taken by voice only where it is sure; else its colour is said.
    function confirm() {
        if (view.wire.confirmed || view.wire.empty)
            goOn();
        else if (view.wire.sure)
            view.confirm();
        else
            talk.ear.refuse(qsTr("This one is not sure. Say its colour."));
    }

    function goOn() {
        const next = view.rows.nextOpenFrom(view.current + 1);
        if (next < 0)
            talk.ear.refuse(qsTr("No wire is open any more."));
        else
            view.current = next;
    }

    function hear(base: string, tracer: string, more: string) {
        if (more === "")
            view.pick(base, tracer, true);
        else
            talk.ear.refuse(qsTr("Say the colour alone here. Terminal and function belong to the place."));
    }

    aside: begun ? qsTr("%1 open").arg(view.rows.openCount) : ""
    lift: true
    scroller.inset: cramped && begun ? Theme.grid * 2 : Theme.margin
    scroller.spacing: cramped && begun ? Theme.targetGap - Theme.grid : Theme.grid * 3
    title: view.title
    footer: [
        ProgressStrip {
            text: view.reader.state === PhotoReader.Opening ? qsTr("Opening the photo") : qsTr("Reading the wires")
            visible: view.reader.busy
            width: parent.width

            onCancelled: view.reader.cancel()
        },
        TalkBar {
            id: talk

            commands: ({
                    "done": () => root.confirm(),
                    "next": () => root.goOn(),
                    "does not match": () => root.picking = true,
                    "back": () => {
                        if (view.current > 0)
                            view.current = view.current - 1;
                        else
                            root.leaves();
                    },
                    "undo": () => talk.undo()
                })
            page: root
            values: ["wire"]
            wanted: root.begun && !root.picking && !view.asksForCard
            width: parent.width

            onWire: (base, tracer, terminal, size, purpose) => root.hear(base, tracer, terminal + purpose)
        },
        StrokeActions {
            view: view
            visible: root.begun && !root.picking
            width: parent.width

            onDone: root.leaves()
            onPicks: root.picking = true
        },
        WireSteps {
            view: view
            visible: view.named && !root.begun
            width: parent.width
        },
        StrokeFinding {
            view: view
            visible: view.finding
            width: parent.width
        },
        ActionButton {
            lift: true
            text: qsTr("Close")
            visible: root.picking
            width: parent.width

            onTriggered: root.picking = false
        }
    ]

    layered: picking
    tools: TalkTool {
        page: root
        offered: root.begun && !root.picking && root.listener !== null
    }

    onClosesLayer: picking = false

    StrokeView {
        id: view

        gathering: root.gathering
        half: root.half
        session: root.session
    }

    WirePicker {
        visible: root.picking
        width: parent.width

        onPicked: (base, tracer) => {
            view.pick(base, tracer);
            root.picking = false;
        }
    }

    Label {
        strong: true
        text: qsTr("Tap the middle of the white paper.")
        tone: Theme.act
        visible: view.asksForCard
        width: parent.width
    }

    Label {
        text: view.waitsForEnd ? qsTr("Now tap the last wire.") : qsTr("Stroke across the wires, place 1 first. Or tap the first wire and then the last.")
        visible: root.empty
        width: parent.width
    }

    Label {
        text: view.findNote
        visible: view.finding
        width: parent.width
    }

    StrokePhoto {
        across: view.across
        busy: view.reader.busy
        centre: root.close ? Qt.point(view.marks[view.marks.length - 1].x, view.marks[view.marks.length - 1].y) : Qt.point(0.5, 0.5)
        crop: root.close
        height: Math.round(root.begun ? Math.max(Theme.liftKey, Math.min(width * 0.45, root.roomLeft)) : Math.min(width * 3 / 4, root.scroller.height - 2 * Theme.margin))
        loupe: view.named
        marks: view.marks
        outlines: view.outlines
        path: view.path
        source: view.photo
        visible: !root.picking && source.toString() !== ""
        width: parent.width
        zoom: root.close ? 1.5 : 1

        onStroked: points => view.stroke(points)
        onTapped: (x, y) => view.tap(x, y)
    }

    RemedyLine {
        error: view.reader.problem
        width: parent.width
    }

    ActionButton {
        lift: true
        text: qsTr("Open the photo again")
        visible: view.reader.state === PhotoReader.Closed && view.photo.toString() !== ""
        width: parent.width

        onTriggered: view.reader.open()
    }

    ActionButton {
        iconName: "wire"
        lift: true
        text: qsTr("Find the wires without a stroke")
        visible: root.empty && view.reader.state === PhotoReader.Ready
        width: parent.width

        onTriggered: view.findAll()
    }

    ActionButton {
        iconName: "photo"
        lift: true
        text: qsTr("White paper is in the picture")
        visible: root.empty
        width: parent.width

        onTriggered: view.askForCard(true)
    }

    StrokeRows {
        id: rows

        view: view
        visible: root.begun && !root.picking
        width: parent.width
    }

    StrokeWire {
        id: wire

        view: view
        visible: root.begun && !root.picking && view.current >= 0
        width: parent.width
    }
}
