// Points joined by lines, over the expected band. Each point has its words and value below.
// Qt 6.4 cannot bind a delegate to the ids around it:
// qmllint disable unqualified
import QtQuick
import Undercowl
import Undercowl.Style

Item {
    id: root

    required property Curve curve

    readonly property int count: curve.across.length
    readonly property real plotHeight: Theme.grid * 32
    readonly property real air: curve.high >= 0 ? highest.height : 0 // for the words above the band
    readonly property real cell: width / Math.max(1, count)

    // Points stand in the middle of equal columns when there are few, so that each has room for its words.
    function xOf(index: int): real {
        return cell / 2 + curve.across[index] * (width - cell);
    }

    function yOf(place: real): real {
        return air + (1 - place) * plotHeight;
    }

    Accessible.name: curve.spoken
    Accessible.role: Accessible.Graphic
    implicitHeight: air + plotHeight + words.height + Theme.grid
    visible: count > 1

    Rectangle {
        border.color: Theme.quiet
        border.width: Theme.hairline
        color: Theme.raised
        height: Math.max(0, root.yOf(root.curve.low) - y)
        visible: root.curve.low >= 0 && root.curve.high >= 0
        width: root.width
        y: root.yOf(root.curve.high)
    }

    Repeater {
        model: [root.curve.low, root.curve.high]

        Rectangle {
            required property real modelData

            color: Theme.quiet
            height: Theme.stroke
            visible: modelData >= 0
            width: root.width
            y: root.yOf(modelData) - height / 2
        }
    }

    Label {
        id: highest

        kind: Label.Aside
        text: root.curve.highText
        visible: root.curve.high >= 0
        y: root.yOf(root.curve.high) - height
    }

    Label {
        kind: Label.Aside
        text: root.curve.lowText
        visible: root.curve.low >= 0
        y: root.yOf(root.curve.low)
    }

    Repeater {
        model: Math.max(0, root.count - 1)

        Rectangle {
            required property int index

            readonly property real dx: root.xOf(index + 1) - root.xOf(index)
            readonly property real dy: root.yOf(root.curve.up[index + 1]) - root.yOf(root.curve.up[index])

            antialiasing: true
            color: Theme.ink
            height: Theme.stroke
            rotation: Math.atan2(dy, dx) * 180 / Math.PI
            transformOrigin: Item.Left
            width: Math.sqrt(dx * dx + dy * dy)
            x: root.xOf(index)
            y: root.yOf(root.curve.up[index]) - height / 2
        }
    }

    Repeater {
        model: root.count

        Rectangle {
            required property int index

            color: Theme.ink
            height: Theme.grid * 3
            radius: height / 2
            width: height
            x: root.xOf(index) - width / 2
            y: root.yOf(root.curve.up[index]) - height / 2
        }
    }

    Row {
        id: words

        width: parent.width
        y: root.air + root.plotHeight + Theme.grid

        Repeater {
            model: root.curve.labels

            Label {
                required property string modelData

                horizontalAlignment: Text.AlignHCenter
                kind: Label.Aside
                text: modelData
                width: root.cell
            }
        }
    }
}
