// One place: as found, as it should be and as refitted, each for itself.
//
//   gathering, half, place   which one; place as "3/1"
// Qt 6.4 knows no members of a url, a map or a list:
// qmllint disable type
import QtQuick
import Undercowl
import Undercowl.Style

ShopPage {
    id: root

    required property string gathering
    required property string half
    required property string place
    property bool picking: false

    readonly property bool isFound: view.which === "as found"
    readonly property var shown: isFound ? view.found : view.should

    layered: picking
    lift: true
    title: view.title
    aside: picking ? (isFound ? qsTr("as found") : qsTr("as it should be")) : ""
    tools: TalkTool {
        page: root
        offered: !root.picking && root.listener !== null
    }
    footer: [
        TalkBar {
            id: talk

            commands: ({
                    "back": () => root.leaves(),
                    "done": () => root.leaves(),
                    "undo": () => {
                        talk.ear.forget();
                        talk.undo();
                    }
                })
            page: root
            values: ["wire"]
            wanted: !root.picking
            width: parent.width

            onWire: (base, tracer, terminal, size, purpose) => {
                root.leaving();
                view.hear(base, tracer, terminal, size, purpose, source.commit());
                if (view.errors.source !== undefined)
                    talk.ear.refuse(view.errors.source);
                else
                    talk.ear.remark(view.remark());
            }
        },
        ThumbRow {
            id: actions

            visible: !root.picking
            width: parent.width

            ActionButton {
                id: nothing

                height: colour.height
                lift: true
                text: qsTr("Nothing there")
                visible: !view.empty
                width: (actions.width - actions.spacing) * 0.4

                onTriggered: view.setEmpty()
            }

            ActionButton {
                id: colour

                kind: ActionButton.Main
                lift: true
                text: view.known ? qsTr("Another colour") : qsTr("Pick the colour")
                width: actions.width - (nothing.visible ? nothing.width + actions.spacing : 0)

                onTriggered: {
                    root.leaving();
                    root.picking = true;
                }
            }
        },
        ActionButton {
            lift: true
            text: qsTr("Close")
            visible: root.picking
            width: parent.width

            onTriggered: root.picking = false
        }
    ]

    onClosesLayer: picking = false

    PlaceView {
        id: view

        gathering: root.gathering
        half: root.half
        place: root.place
        session: root.session
    }

    Choice {
        current: root.isFound ? 0 : 1
        label: qsTr("Which answer")
        lift: true
        options: [qsTr("As found"), qsTr("As it should be")]
        visible: !root.picking
        width: parent.width

        onChosen: index => view.which = index === 0 ? "as found" : "as it should be"
    }

    CautionBox {
        text: qsTr("As found: %1. As it should be: %2.").arg(view.found.words ?? "").arg(view.should.words ?? "")
        visible: view.differs && !root.picking
        width: parent.width
    }

    TextEntry {
        id: source

        error: view.errors.source ?? ""
        label: qsTr("Where that is known from")
        lift: true
        placeholder: qsTr("manual, page 7-12")
        value: view.should.source ?? ""
        visible: !root.isFound && !root.picking
        width: parent.width
    }

    WirePicker {
        visible: root.picking
        width: parent.width

        onPicked: (base, tracer) => {
            view.pick(base, tracer, source.commit());
            root.picking = false;
        }
    }

    DrawnWire {
        base: root.shown.base ?? ""
        tracer: root.shown.tracer ?? ""
        visible: !root.picking && view.known
        width: parent.width
    }

    Label {
        kind: Label.Name
        text: view.known || view.empty ? root.shown.words : qsTr("Not known yet")
        visible: !root.picking
        width: parent.width
    }

    Label {
        kind: Label.Aside
        text: [root.shown.how ?? "", root.shown.source ?? ""].filter(word => word !== "").join("; ")
        visible: !root.picking && text !== ""
        width: parent.width
    }

    Label {
        text: qsTr("As refitted: %1").arg(view.refitted.words ?? "")
        tone: Theme.act
        visible: !root.picking && (view.refitted.words ?? "") !== ""
        width: parent.width
    }

    PlaceDetails {
        page: root
        view: view
        visible: !root.picking && view.known
        width: parent.width
    }
}
