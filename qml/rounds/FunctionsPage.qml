// What works when the machine comes in, tried one after the other.
// Qt 6.4 knows no members of a url, a map or a list:
// qmllint disable type
import QtQuick
import Undercowl
import Undercowl.Style

ShopPage {
    id: root

    property bool after: false // tried again before the machine leaves

    function answer(index: int) {
        walk.answer(index, remark.commit());
    }

    aside: walk.finished ? "" : (walk.current + 1) + " / " + walk.count
    title: after ? qsTr("What works now") : qsTr("What works")
    footer: [
        ActionButton {
            iconName: "done"
            kind: ActionButton.Main
            lift: true
            settle: body.settle
            text: walk.finished ? qsTr("Go on") : qsTr("Works")
            visible: !walk.finished || walk.open > 0
            width: parent.width

            onTriggered: {
                if (walk.finished)
                    walk.on();
                else
                    root.answer(0);
            }
        },
        Row {
            id: others

            readonly property real half: (width - spacing) / 2

            spacing: Theme.targetGap
            visible: !walk.finished
            width: parent.width

            ActionButton {
                lift: true
                settle: body.settle
                text: qsTr("Does not")
                width: others.half

                onTriggered: root.answer(1)
            }

            ActionButton {
                lift: true
                settle: body.settle
                text: qsTr("Not tried")
                width: others.half

                onTriggered: root.answer(2)
            }
        }
    ]

    FunctionsView {
        id: walk

        after: root.after
        session: root.session

        onSaidSo: {
            remark.clear();
            draft.discard();
        }
    }

    FormDraft {
        id: draft

        form: "functions/" + root.session.jobId + (root.after ? "/after" : "")
        jobId: root.session.jobId
        session: root.session
        title: root.title
    }

    CheckWalkBody {
        id: body

        doneText: qsTr("Everything has its answer.")
        walk: walk
        width: parent.width
    }

    DraftEntry {
        id: remark

        draft: draft
        label: qsTr("Remark")
        name: "remark"
        page: root
        placeholder: qsTr("flickers, only when cold")
        visible: !walk.finished
        width: parent.width
    }
}
