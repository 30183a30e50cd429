// The strip step as it stands: photo, title, hardware and bag, cautions, task, note.
// Qt 6.4 knows no members of a url, a map or a list, knows no string list as a list of strings, cannot bind a
// delegate to the ids around it:
// qmllint disable type unqualified
import QtQuick
import Undercowl
import Undercowl.Style

Column {
    id: root

    required property StripView strip
    required property ShopPage page

    signal memo
    signal measures
    signal places(index: int)
    signal details

    spacing: Theme.grid * 3

    PhotoFrame {
        crop: marks.length === 0 // no ring is cut off
        description: qsTr("Photo of this step")
        enlarges: true
        height: Math.round(width * 0.36)
        marks: root.strip.marks
        source: root.strip.photo
        visible: root.strip.photos.count > 0
        width: parent.width
    }

    TextEntry {
        id: title

        error: root.strip.errors.title ?? ""
        label: qsTr("What comes off")
        lift: true
        placeholder: qsTr("unplug 6-place connector")
        value: root.strip.title
        width: parent.width

        onEdited: text => root.strip.setTitle(text)
    }

    Label {
        kind: Label.Title
        strong: false
        text: root.strip.holds
        visible: text !== ""
        width: parent.width
    }

    Repeater {
        model: root.strip.cautions

        CautionBox {
            required property string modelData

            text: modelData
            width: parent?.width ?? 0
        }
    }

    Repeater {
        model: root.strip.wires

        ListRow {
            required title
            required property string lineId
            required property string detail

            aside: detail
            iconName: "wire"
            lift: true
            width: parent?.width ?? 0

            onTriggered: {
                root.page.leaving();
                root.page.opens("GatheringPage", {
                    "gathering": lineId
                });
            }
        }
    }

    StripTask {
        strip: root.strip
        width: parent.width
    }

    Repeater {
        model: root.strip.hardware

        ListRow {
            required title
            required property string detail
            required property bool on
            required property int index

            aside: [detail, qsTr("tap: where it sits")].filter(word => word !== "").join(", ")
            iconName: "tools"
            lift: true
            remark: on ? "" : qsTr("not placed")
            width: parent?.width ?? 0

            onTriggered: root.places(index)
        }
    }

    ListRow {
        aside: root.strip.detailText
        iconName: "note"
        lift: true
        title: qsTr("Routing, fluids, adjustment")
        width: parent.width

        onTriggered: root.details()
    }

    TextEntryArea {
        id: note

        label: qsTr("Note")
        lift: true
        lines: 2
        placeholder: qsTr("spring hooked in the left hole")
        value: root.strip.note
        width: parent.width

        onEdited: text => root.strip.setNote(text)
    }

    Row {
        id: ways

        readonly property real half: (width - spacing) / 2

        spacing: Theme.targetGap
        width: parent.width

        ActionButton {
            iconName: "memo"
            lift: true
            text: qsTr("Memo")
            width: ways.half

            onTriggered: root.memo()
        }

        ActionButton {
            iconName: "gauge"
            lift: true
            text: qsTr("Measure")
            width: ways.half

            onTriggered: root.measures()
        }
    }

    ActionButton {
        iconName: "caution"
        lift: true
        text: qsTr("Add a caution")
        visible: root.strip.otherCautions.length > 0
        width: parent.width

        onTriggered: cautions.open()
    }

    ChoiceSheet {
        id: cautions

        lift: true
        options: root.strip.otherCautions
        title: qsTr("Which caution belongs before this step?")

        onChosen: index => root.strip.addCaution(index)
    }

    Connections {
        function onLeaving() {
            root.strip.setTitle(title.commit());
            root.strip.setNote(note.commit());
        }

        target: root.page
    }
}
