// What is known of a wire beside its colour: terminal, function, DIN number, size, tag.
// Qt 6.4 knows no members of a url, a map or a list, knows no string list as a list of strings:
// qmllint disable type
import QtQuick
import Undercowl
import Undercowl.Style

Column {
    id: root

    required property PlaceView view
    required property ShopPage page

    spacing: Theme.grid * 3

    ListRow {
        aside: qsTr("terminal")
        iconName: "connector"
        lift: true
        title: root.view.terminals[root.view.terminal] + (root.view.size === "" ? "" : " " + root.view.size)
        width: parent.width

        onTriggered: terminals.open()
    }

    TextEntry {
        id: size

        error: root.view.errors.size ?? ""
        inputHints: Qt.ImhFormattedNumbersOnly
        label: qsTr("Size of the terminal, mm")
        lift: true
        placeholder: "6.3"
        value: root.view.size
        visible: root.view.terminal > 0
        width: parent.width

        onAccepted: text => root.view.setTerminal(root.view.terminal, text)
    }

    TextEntry {
        id: task

        label: qsTr("What it is for")
        lift: true
        placeholder: qsTr("stop lamp")
        value: root.view.purpose
        width: parent.width

        onAccepted: text => root.view.setFunction(text)
    }

    ListRow {
        aside: qsTr("terminal number by DIN 72552")
        iconName: "list"
        lift: true
        title: root.view.designation < 0 ? qsTr("No number") : root.view.designations[root.view.designation]
        width: parent.width

        onTriggered: designations.open()
    }

    TextEntry {
        id: wireSize

        error: root.view.errors.wireSize ?? ""
        inputHints: Qt.ImhFormattedNumbersOnly
        label: qsTr("Size of the wire, mm²")
        lift: true
        placeholder: "0.75"
        value: root.view.wireSize
        width: parent.width

        onAccepted: text => root.view.setWireSize(text)
    }

    TextEntry {
        id: tag

        label: qsTr("Tag")
        lift: true
        placeholder: qsTr("A")
        value: root.view.tag
        width: parent.width

        onAccepted: text => root.view.setTag(text)
    }

    ChoiceSheet {
        id: terminals

        current: root.view.terminal
        lift: true
        options: root.view.terminals
        title: qsTr("Terminal")

        onChosen: index => root.view.setTerminal(index, root.view.size)
    }

    ChoiceSheet {
        id: designations

        current: root.view.designation + 1
        lift: true
        options: [qsTr("No number")].concat(root.view.designations)
        title: qsTr("Terminal number by DIN 72552")

        onChosen: index => root.view.setDesignation(index - 1)
    }

    Connections {
        function onLeaving() {
            if (!root.view.known)
                return;
            root.view.setFunction(task.commit());
            root.view.setTag(tag.commit());
        }

        target: root.page
    }
}
