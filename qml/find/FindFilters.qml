// What is left out of what was found.
// Qt 6.4 knows no members of a list:
// qmllint disable type
import QtQuick
import Undercowl
import Undercowl.Style

Column {
    id: root

    required property Finder finder
    readonly property list<int> ages: [0, 30, 365]

    spacing: Theme.grid * 3

    ListRow {
        aside: root.finder.kinds[root.finder.kind] ?? ""
        iconName: "list"
        title: qsTr("Kind")
        width: parent.width

        onTriggered: kinds.open()
    }

    ListRow {
        aside: root.finder.machine === "" ? qsTr("every machine") : root.finder.machine
        iconName: "machine"
        title: qsTr("Machine")
        visible: root.finder.machines.length > 0
        width: parent.width

        onTriggered: machines.open()
    }

    ListRow {
        aside: root.finder.waitings[root.finder.waits] ?? ""
        iconName: "clock"
        title: qsTr("Waits for")
        width: parent.width

        onTriggered: waitings.open()
    }

    Choice {
        current: root.finder.severity
        label: qsTr("Findings")
        options: [qsTr("All"), qsTr("Unsafe"), qsTr("Soon"), qsTr("Note")]
        width: parent.width

        onChosen: index => root.finder.severity = index
    }

    Choice {
        current: root.finder.state
        label: qsTr("Job")
        options: [qsTr("Any"), qsTr("In the shop"), qsTr("Waits"), qsTr("Unsafe"), qsTr("Left")]
        width: parent.width

        onChosen: index => root.finder.state = index
    }

    Choice {
        current: root.ages.indexOf(root.finder.age)
        label: qsTr("Worked on")
        options: [qsTr("Any time"), qsTr("30 days"), qsTr("A year")]
        width: parent.width

        onChosen: index => root.finder.age = root.ages[index]
    }

    ChoiceSheet {
        id: kinds

        current: root.finder.kind
        options: root.finder.kinds
        title: qsTr("What kind?")

        onChosen: index => root.finder.kind = index
    }

    ChoiceSheet {
        id: waitings

        current: root.finder.waits
        options: root.finder.waitings
        title: qsTr("Machines that wait for what?")

        onChosen: index => root.finder.waits = index
    }

    ChoiceSheet {
        id: machines

        options: [qsTr("every machine")].concat(root.finder.machines)
        title: qsTr("Which machine?")

        onChosen: index => root.finder.machine = index === 0 ? "" : root.finder.machines[index - 1]
    }
}
