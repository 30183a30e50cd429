// The task that a strip step belongs to: one that is there, or a new one.
// Qt 6.4 knows no members of a url, a map or a list:
// qmllint disable type
import QtQuick
import Undercowl
import Undercowl.Style

Column {
    id: root

    required property StripView strip
    property bool naming: false

    spacing: Theme.grid * 2

    ListRow {
        aside: root.strip.task >= 0 ? qsTr("task of this step") : qsTr("tasks can wait one by one")
        iconName: "tools"
        lift: true
        title: root.strip.task >= 0 ? root.strip.tasks[root.strip.task] : qsTr("No task")
        width: parent.width

        onTriggered: choice.open()
    }

    TextEntry {
        id: name

        label: qsTr("New task")
        lift: true
        placeholder: qsTr("front brake")
        visible: root.naming
        width: parent.width

        onAccepted: text => {
            if (text.trim() !== "") {
                root.strip.nameTask(text);
                root.naming = false;
            }
        }
    }

    ChoiceSheet {
        id: choice

        current: root.strip.task
        lift: true
        options: root.strip.tasks.concat([qsTr("No task"), qsTr("New task")])
        title: qsTr("Which task does this step belong to?")

        onChosen: index => {
            const many = root.strip.tasks.length;
            if (index < many)
                root.strip.chooseTask(index);
            else if (index === many)
                root.strip.chooseTask(-1);
            else
                root.naming = true;
        }
    }
}
