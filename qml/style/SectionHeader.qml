// A heading over a part of a page.
//
//   text    the heading
//   aside   a few words at the other end, such as a count
import QtQuick

Item {
    id: root

    property string text: ""
    property string aside: ""

    Accessible.name: aside === "" ? text : text + ", " + aside
    Accessible.role: Accessible.Heading
    implicitHeight: Math.max(heading.implicitHeight, remark.implicitHeight) + Theme.grid * 3
    implicitWidth: heading.implicitWidth + remark.implicitWidth + Theme.grid * 3

    Label {
        id: heading

        bottomPadding: Theme.grid
        font.pixelSize: Theme.textSize
        strong: true
        text: root.text
        tone: Theme.quiet
        width: parent.width - remark.width - Theme.grid * 3

        anchors {
            bottom: parent.bottom
            left: parent.left
        }
    }

    Label {
        id: remark

        kind: Label.Aside
        mono: true
        text: root.aside
        width: Math.min(implicitWidth, parent.width / 2)

        anchors {
            baseline: heading.baseline
            right: parent.right
        }
    }
}
