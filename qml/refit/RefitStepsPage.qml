// All refit steps in their order; tasks that wait are marked, any step can be chosen. The order is changed by taps: one
// chooses the step, the next move it.
// Qt 6.4 cannot bind a delegate to the ids around it:
// Qt 6.4 knows no members of a map:
// qmllint disable unqualified type
import QtQuick
import Undercowl
import Undercowl.Style

ShopPage {
    id: root

    property bool ordering: false
    property string chosen: ""

    lift: true
    title: ordering ? qsTr("Which goes on first?") : qsTr("Refit steps")
    footer: [
        // Beside the buttons: above the rows it would be out of sight. Large words are scrolled and leave rows to choose from.
        Flickable {
            id: why

            boundsBehavior: Flickable.StopAtBounds
            clip: true
            contentHeight: caution.implicitHeight
            height: Math.min(contentHeight, root.height * 0.4)
            visible: root.ordering && caution.text !== ""
            width: parent.width

            CautionBox {
                id: caution

                text: refit.errors.order ?? ""
                width: why.width
            }

            ScrollMark {
                flickable: why
            }
        },
        Row {
            id: ways

            readonly property real half: (width - spacing) / 2

            spacing: Theme.targetGap
            visible: root.ordering
            width: parent.width

            ActionButton {
                enabled: root.chosen !== ""
                lift: true
                text: qsTr("Earlier")
                width: ways.half

                onTriggered: refit.reorder(root.chosen, true)
            }

            ActionButton {
                enabled: root.chosen !== ""
                lift: true
                text: qsTr("Later")
                width: ways.half

                onTriggered: refit.reorder(root.chosen, false)
            }
        }
    ]
    tools: PageTool {
        iconName: root.ordering ? "done" : "edit"
        text: root.ordering ? qsTr("The order is right") : qsTr("Change the order")
        offered: refit.steps.count > 1

        onTriggered: {
            root.ordering = !root.ordering;
            root.chosen = "";
        }
    }

    RefitView {
        id: refit

        session: root.session
    }

    StepList {
        choosing: root.ordering
        chosenId: root.chosen
        doneWord: qsTr("done")
        model: refit.steps
        parent: root.scroller

        onPicked: id => {
            if (root.ordering)
                root.chosen = id;
            else
                root.opens("RefitPage", {
                    "step": id
                });
        }

        ListRow {
            iconName: "listen"
            lift: true
            title: qsTr("Read hoses and cables back")
            visible: !root.ordering && refit.lines > 0
            width: parent.width

            onTriggered: root.opens("LineBackPage", {})
        }

        Label {
            text: qsTr("Touch a step, then Earlier or Later.")
            tone: Theme.quiet
            visible: root.ordering
            width: parent.width
        }
    }
}
