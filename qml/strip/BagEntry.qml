// The number of the bag; the keypad for it stands with the page's actions.
//
//   value   what the step holds;  text   what is shown
//   inUse   bags of other steps that are not refitted yet
import QtQuick
import Undercowl.Style

Column {
    id: root

    property alias value: entry.value
    property alias text: entry.text
    property string inUse: ""

    function press(key: string) {
        entry.press(key);
    }

    function erase() {
        entry.erase();
    }

    spacing: Theme.grid * 2

    NumberEntry {
        id: entry

        hint: root.inUse === "" ? "" : qsTr("in use: %1").arg(root.inUse)
        label: qsTr("Number of the bag")
        maximumLength: 4
        width: parent.width
    }
}
