// What a button acts on has changed: the next step, the next wire, a warning. For a moment the button takes no touch, no key and
// no screen reader's press, since whoever gave it meant what was there before; see Pressable.
//
//   about     what is acted on, any value: the same object for all buttons that act on it
//   running   it changed just now
import QtQuick
import Undercowl.Style

QtObject {
    id: root

    property var about: undefined
    readonly property bool running: clock.running

    readonly property Timer clock: Timer {
        interval: Theme.settle
    }

    onAboutChanged: {
        if (Theme.settle > 0)
            clock.restart();
    }
}
