// A short bar that runs along the lower edge of a busy control; it stands still where motion is not wanted.
//
//   running   shown at all
//   tone      its colour
// Qt 6.4 cannot bind a component to the ids around it:
// qmllint disable unqualified
import QtQuick

Loader {
    id: root

    property bool running: false
    property color tone: Theme.ink

    active: running // every button has one, and few are ever busy
    clip: true
    height: Theme.grid
    visible: running

    sourceComponent: Item {
        Rectangle {
            id: bar

            color: root.tone
            height: parent.height
            radius: height / 2
            width: parent.width / 3
            x: (parent.width - width) / 2

            SequentialAnimation on x {
                loops: Animation.Infinite
                running: root.visible && !Theme.reduceMotion

                NumberAnimation {
                    duration: 4 * Theme.calm
                    from: 0
                    to: root.width - bar.width
                }
                NumberAnimation {
                    duration: 4 * Theme.calm
                    from: root.width - bar.width
                    to: 0
                }
            }
        }
    }
}
