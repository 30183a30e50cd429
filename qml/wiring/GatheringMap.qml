// The map of a gathering: its photo with place 1, twins to be tagged, and every place.
//
//   chosen(place)   "3/1"
// Qt 6.4 knows no members of a url, a map or a list:
// qmllint disable type
import QtQuick
import Undercowl
import Undercowl.Style

Column {
    id: root

    required property GatheringView view
    property bool marking: false

    signal chosen(place: string)

    spacing: Theme.grid * 3

    Label {
        text: root.view.description
        tone: Theme.quiet
        width: parent.width
    }

    Label {
        text: root.view.condition
        visible: text !== ""
        width: parent.width
    }

    PhotoFrame {
        crop: false
        description: qsTr("Photo of %1").arg(root.view.title)
        enlarges: !root.marking
        height: root.marking ? width * 3 / 4 : Math.round(width / 2)
        marks: root.view.first
        source: root.view.photo
        visible: source.toString() !== ""
        width: parent.width

        onTapped: (x, y) => {
            if (root.marking) {
                root.view.markFirst(x, y);
                root.marking = false;
            }
        }
    }

    ActionButton {
        text: root.marking ? qsTr("Tap place 1 on the photo") : root.view.first.length > 0 ? qsTr("Place 1 is elsewhere") : qsTr("Mark place 1")
        visible: root.view.photo.toString() !== ""
        width: parent.width

        onTriggered: root.marking = !root.marking
    }

    TwinsPanel {
        view: root.view
        visible: root.view.twins.count > 0
        width: parent.width
    }

    Choice {
        current: root.view.half === "loom" ? 0 : 1
        label: qsTr("Half")
        options: [qsTr("Loom"), qsTr("Switch, lamp or unit")]
        width: parent.width

        onChosen: index => root.view.half = index === 0 ? "loom" : "unit"
    }

    Repeater {
        model: root.view.places

        PlaceRow {
            width: parent?.width ?? 0

            onChosen: place => root.chosen(place)
        }
    }
}
