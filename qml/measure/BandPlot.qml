// A value with its uncertainty against its limits. Inside the limits the line is thick, within the guard band's inner ends
// thickest; limits are uprights, the value a diamond on its bar of uncertainty. Shape tells all of it, colour nothing alone.
import QtQuick
import Undercowl
import Undercowl.Style

Item {
    id: root

    required property Band band

    readonly property real middle: Theme.grid * 5
    readonly property real from: band.low < 0 ? 0 : band.low
    readonly property real to: band.high < 0 ? 1 : band.high
    readonly property real acceptFrom: band.acceptFrom < 0 ? from : band.acceptFrom
    readonly property real acceptTo: band.acceptTo < 0 ? to : band.acceptTo

    Accessible.name: qsTr("%1; limits %2 to %3").arg(band.valueText).arg(band.lowText === "" ? qsTr("none") : band.lowText).arg(
                         band.highText === "" ? qsTr("none") : band.highText)
    Accessible.role: Accessible.Graphic
    implicitHeight: middle + Theme.grid * 4 + ends.implicitHeight
    visible: band.shown

    Rectangle {
        color: Theme.line
        height: Theme.hairline
        width: parent.width
        y: root.middle - height / 2
    }

    Rectangle {
        color: Theme.quiet
        height: Theme.grid
        width: Math.max(0, (root.to - root.from) * root.width)
        x: root.from * root.width
        y: root.middle - height / 2
    }

    Rectangle {
        color: Theme.act
        height: Theme.grid * 2.5
        visible: root.acceptTo > root.acceptFrom
        width: Math.max(0, (root.acceptTo - root.acceptFrom) * root.width)
        x: root.acceptFrom * root.width
        y: root.middle - height / 2
    }

    Repeater {
        model: [root.band.low, root.band.high]

        Rectangle {
            required property real modelData

            color: Theme.ink
            height: Theme.grid * 7
            visible: modelData >= 0
            width: Theme.stroke
            x: modelData * (parent?.width ?? 0) - width / 2
            y: Theme.grid * 1.5
        }
    }

    // The uncertainty, and the value in its middle.
    Rectangle {
        border.color: Theme.ground
        border.width: Theme.hairline
        color: Theme.ink
        height: Theme.grid
        width: Math.max(Theme.stroke, 2 * root.band.half * root.width)
        x: (root.band.value - root.band.half) * root.width
        y: root.middle - height / 2
    }

    Rectangle {
        border.color: Theme.ground
        border.width: Theme.stroke
        color: Theme.ink
        height: Theme.grid * 4
        rotation: 45
        width: height
        x: root.band.value * root.width - width / 2
        y: root.middle - height / 2
    }

    Row {
        id: ends

        width: parent.width
        y: root.middle + Theme.grid * 4

        Label {
            kind: Label.Aside
            text: root.band.lowText === "" ? "" : qsTr("from %1").arg(root.band.lowText)
            width: parent.width / 2
        }

        Label {
            horizontalAlignment: Text.AlignRight
            kind: Label.Aside
            text: root.band.highText === "" ? "" : qsTr("to %1").arg(root.band.highText)
            width: parent.width / 2
        }
    }
}
