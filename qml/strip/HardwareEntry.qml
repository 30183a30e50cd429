// What held it: by a few touches, or typed where the usual does not fit.
//
//   add()   true when it was taken; otherwise the fault is shown
// Qt 6.4 knows no members of a url, a map or a list:
// qmllint disable type
import QtQuick
import Undercowl
import Undercowl.Style

Column {
    id: root

    required property StripView strip

    readonly property list<string> kinds: [qsTr("screw"), qsTr("bolt"), qsTr("nut"), qsTr("washer"), qsTr("clip"), qsTr("pin")]
    readonly property list<string> threads: ["M4", "M5", "M6", "M8", "M10", "M12"]
    readonly property list<string> lengths: ["10", "12", "16", "20", "25", "30", "40", "50"]
    readonly property int step: strip.number
    property int count: 1

    function add(): bool {
        const before = strip.hardware.count;
        const millimetres = length.commit();
        strip.addHardware(count, what.commit(), thread.commit(), millimetres === "" ? "" : Theme.quantity(millimetres, "mm"),
                          torque.commit());
        if (strip.hardware.count === before)
            return false;
        empty();
        return true;
    }

    // What was typed for one must never be taken over to the next: a torque least of all.
    function empty() {
        count = 1;
        for (const field of [what, thread, length, torque]) {
            field.value = "";
            field.clear();
        }
        for (const choice of [kindChoice, threadChoice, lengthChoice])
            choice.clear();
    }

    spacing: Theme.grid * 3

    onStepChanged: empty()

    Choice {
        current: root.count - 1
        label: qsTr("How many")
        lift: true
        options: ["1", "2", "3", "4", "5", "6"]
        width: parent.width

        onChosen: index => root.count = index + 1
    }

    Choice {
        id: kindChoice

        label: qsTr("What")
        lift: true
        options: root.kinds
        width: parent.width

        onChosen: index => what.value = root.kinds[index]
    }

    Choice {
        id: threadChoice

        label: qsTr("Thread")
        lift: true
        options: root.threads
        width: parent.width

        onChosen: index => thread.value = root.threads[index]
    }

    Choice {
        id: lengthChoice

        label: qsTr("Length, mm")
        lift: true
        options: root.lengths
        width: parent.width

        onChosen: index => length.value = root.lengths[index]
    }

    TextEntry {
        id: what

        error: root.strip.errors.hardware ?? ""
        label: qsTr("What it is")
        lift: true
        placeholder: qsTr("flange nut")
        width: parent.width
    }

    TextEntry {
        id: thread

        label: qsTr("Its thread")
        lift: true
        placeholder: "M6"
        width: parent.width
    }

    TextEntry {
        id: length

        inputHints: Qt.ImhFormattedNumbersOnly
        label: qsTr("Its length, mm")
        lift: true
        placeholder: "16"
        width: parent.width
    }

    TextEntry {
        id: torque

        error: root.strip.errors.torque ?? ""
        hint: qsTr("from the machine's manual; N.m unless another unit is typed")
        label: qsTr("Torque on refit")
        lift: true
        placeholder: Theme.quantity("9.3", "N.m")
        width: parent.width
    }
}
