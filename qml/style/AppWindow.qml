// The window that screens live in: tells the theme how big it is, paints the ground and lies on it what a dim screen needs.
//
//   theme       "night", "day" or "sun"; a dim screen is night
//   textScale   1 to 2
// Qt 6.4 cannot bind a component to the ids around it:
// qmllint disable unqualified
import QtQuick
import QtQuick.Templates as T
import Undercowl.Style

T.ApplicationWindow {
    id: root

    property string theme: "night"
    property real textScale: 1

    color: Theme.ground
    font.family: Theme.family
    font.pixelSize: Theme.textSize

    Component.onCompleted: {
        Glass.window = root;
        Theme.mode = Qt.binding(() => Glass.dimmed ? "night" : root.theme);
        Theme.textScale = Qt.binding(() => root.textScale);
        Theme.windowHeight = Qt.binding(() => root.height);
        Theme.windowWidth = Qt.binding(() => root.width);
    }

    Loader {
        active: Glass.dimmed
        anchors.fill: parent
        z: 2 // over everything

        sourceComponent: Rectangle {
            color: Theme.dimness
        }
    }
}
