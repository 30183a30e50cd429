// How loud a sound is along the way.
//
//   levels   0 to 1, from left to right
//   place    0 to 1: how far it has been played; below 0 for none
//   marks    places, 0 to 1
//   touched(place)
// Qt 6.4 cannot bind a delegate to the ids around it:
// qmllint disable unqualified
import QtQuick
import Undercowl.Style

Item {
    id: root

    property list<real> levels
    property real place: -1
    property list<real> marks

    readonly property real cell: width / Math.max(1, levels.length)

    signal touched(place: real)

    implicitHeight: Theme.touch

    Repeater {
        model: root.levels.length

        Rectangle {
            required property int index

            anchors.verticalCenter: parent?.verticalCenter
            color: root.place < 0 || (index + 0.5) / root.levels.length <= root.place ? Theme.act : Theme.quiet
            height: Math.max(Theme.hairline * 2, root.height * root.levels[index])
            radius: width / 2
            width: Math.max(1, root.cell * 0.6)
            x: root.cell * index
        }
    }

    Repeater {
        model: root.marks.length

        Rectangle {
            required property int index

            color: Theme.caution
            height: root.height
            width: Theme.stroke
            x: root.width * root.marks[index] - width / 2
        }
    }

    TapHandler {
        onTapped: event => root.touched(event.position.x / root.width)
    }
}
