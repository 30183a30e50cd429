// The road test, and what is to be looked at again: torque after 50 km, level and rest voltage the next morning.
// Qt 6.4 knows no members of a url, a map or a list, cannot bind a delegate to the ids around it:
// qmllint disable type unqualified
import QtQuick
import Undercowl
import Undercowl.Style

ShopPage {
    id: root

    title: qsTr("Road test and rechecks")
    footer: [
        ActionButton {
            enabled: ridden.begun
            kind: ActionButton.Main
            lift: true
            text: qsTr("Keep the road test")
            width: parent.width

            onTriggered: {
                root.leaving();
                view.keepTest(ridden);
            }
        },
        ActionButton {
            enabled: again.begun
            lift: true
            text: qsTr("Keep the recheck")
            width: parent.width

            onTriggered: {
                root.leaving();
                view.keepRecheck(again);
            }
        }
    ]

    RoadView {
        id: view

        session: root.session
    }

    FormDraft {
        id: ridden

        form: "road/" + root.session.jobId
        jobId: root.session.jobId
        session: root.session
        title: qsTr("Road test")
    }

    FormDraft {
        id: again

        form: "recheck/" + root.session.jobId
        jobId: root.session.jobId
        session: root.session
        title: qsTr("Recheck")
    }

    DraftEntry {
        draft: ridden
        error: view.errors.distance ?? ""
        inputHints: Qt.ImhFormattedNumbersOnly
        label: qsTr("Ridden, km")
        name: "distance"
        page: root
        placeholder: "4"
        width: parent.width
    }

    DraftEntry {
        draft: ridden
        label: qsTr("What it was like")
        name: "note"
        page: root
        placeholder: qsTr("holds straight, idles hot")
        width: parent.width
    }

    Repeater {
        model: view.tests

        ListRow {
            id: test

            required title
            required property string detail

            aside: test.detail
            iconName: "road"
            opens: false
            width: parent?.width ?? 0
        }
    }

    SectionHeader {
        text: qsTr("To be looked at again")
        width: parent.width
    }

    Repeater {
        model: view.rechecks

        ListRow {
            id: recheck

            required title
            required property string lineId
            required property string detail
            required property string mark
            required property bool on

            aside: recheck.detail
            done: on
            iconName: recheck.mark === "due" ? "caution" : "calendar"
            opens: false
            remark: recheck.mark === "due" ? qsTr("due") : ""
            width: parent?.width ?? 0

            onTriggered: {
                if (!recheck.on)
                    view.seen(recheck.lineId);
            }
        }
    }

    DraftEntry {
        draft: again
        error: view.errors.what ?? ""
        label: qsTr("What")
        name: "what"
        page: root
        placeholder: qsTr("rear axle nut")
        width: parent.width
    }

    DraftEntry {
        draft: again
        error: view.errors.after ?? ""
        inputHints: Qt.ImhFormattedNumbersOnly
        label: qsTr("After km")
        name: "after"
        page: root
        placeholder: "50"
        width: parent.width
    }

    DraftEntry {
        draft: again
        error: view.errors.days ?? ""
        inputHints: Qt.ImhDigitsOnly
        label: qsTr("Or after days")
        name: "days"
        page: root
        placeholder: "14"
        width: parent.width
    }
}
