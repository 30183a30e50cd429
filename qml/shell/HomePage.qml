// The machines in the shop, grouped by what each waits for: where it stopped and what is next. Two touches from here to
// a saved photo.
// Qt 6.4 cannot bind a component to the ids around it, knows neither Qt.application nor Qt.callLater:
// qmllint disable unqualified type
import QtQuick
import Undercowl
import Undercowl.Style

ShopPage {
    id: root

    // A photo must never land in another machine's job: whoever offers one names the machine.
    function photograph(job: string, machine: string) {
        root.session.openJob(job);
        root.opens("CameraPage", {
            "jobId": job,
            "purpose": "other",
            "title": machine
        });
    }

    // Not the application's state: for one of its enums Qt describes its whole namespace before the first frame.
    readonly property bool lookedAt: visible && Qt.application.active
    // The window shows itself before the list, which grows with the shop.
    property bool shown: false

    canGoBack: false
    title: qsTr("In the shop")
    footer: [
        ActionButton {
            aside: home.lastMachine
            enabled: home.lastJobId !== ""
            iconName: "camera"
            lift: true
            main: !root.aList // the detail beside it has the main action
            text: qsTr("Photo")
            width: parent.width

            onTriggered: root.photograph(home.lastJobId, home.lastMachine)
        },
        Row {
            id: others

            readonly property real third: (width - 2 * spacing) / 3

            spacing: Theme.targetGap
            width: parent.width

            ActionButton {
                description: home.lastMachine
                enabled: home.lastJobId !== ""
                lift: true
                text: qsTr("Memo")
                width: others.third

                onTriggered: {
                    root.session.openJob(home.lastJobId);
                    root.opens("MemoPage", {
                        "machine": home.lastMachine
                    });
                }
            }

            ActionButton {
                lift: true
                text: qsTr("Take in")
                width: others.third

                onTriggered: {
                    root.session.closeJob();
                    root.opens("TakeInPage", {});
                }
            }

            ActionButton {
                lift: true
                text: qsTr("Find")
                width: others.third

                onTriggered: root.opens("FindPage", {})
            }
        }
    ]
    tools: [
        PageTool {
            iconName: "list"
            text: qsTr("The shop")

            onTriggered: root.opens("MorePage", {})
        },
        PageTool {
            iconName: "calculate"
            text: qsTr("Calculations")

            onTriggered: root.opens("CalcListPage", {})
        },
        PageTool {
            iconName: "settings"
            text: qsTr("Settings")

            onTriggered: root.opens("SettingsPage", {})
        }
    ]

    // Some may have been seen to, others fall due while the phone lies in a drawer.
    onLookedAtChanged: {
        if (lookedAt && shown)
            due.read();
    }

    ShopHome {
        id: home

        active: root.visible
        session: root.session
    }

    Repeater {
        model: home.drafts

        DraftRow {
            width: parent?.width ?? 0

            onContinued: form => {
                const job = home.draftJob(form);
                if (job !== "")
                    root.session.openJob(job);
                const way = home.draftPage(form);
                if (job !== "" && way.page !== "JobPage")
                    root.opens("JobPage", {}); // where the way back leads
                root.opens(way.page, way.properties);
            }
            onDiscarded: form => home.discardDraft(form)
        }
    }

    // What is to be looked at again on machines that left: read after the list has been shown.
    DueView {
        id: due

        active: root.shown
        session: root.session
    }

    Loader {
        active: due.late > 0
        visible: active
        width: parent.width

        sourceComponent: ListRow {
            iconName: "caution"
            remark: due.late
            title: qsTr("Rechecks due")

            onTriggered: root.opens("DuePage", {})
        }
    }

    Loader {
        active: home.ready && home.jobs.count === 0 && home.done.count === 0
        visible: active
        width: parent.width

        sourceComponent: Column {
            spacing: Theme.grid * 4

            EmptyState {
                iconName: "machine"
                text: qsTr("Take in the first machine: what it is, whose it is, why it is here.")
                title: qsTr("The shop is empty")
                width: parent.width
            }

            ActionButton {
                text: qsTr("Bring a shop back")
                width: parent.width

                onTriggered: root.opens("RestorePage", {})
            }
        }
    }

    Connections {
        // Not within the frame: its rows would be made before it is over.
        function onFrameSwapped() {
            Qt.callLater(() => root.shown = true);
        }

        enabled: !root.shown
        target: root.Window.window
    }

    Repeater {
        model: root.shown ? home.jobs : null

        Column {
            id: entry

            required property string lineId
            required property string title
            required property string detail
            required property string more
            required property string aside
            required property string mark
            required property string group

            spacing: Theme.grid * 2
            width: parent?.width ?? 0

            SectionHeader {
                text: entry.group
                visible: text !== ""
                width: parent.width
            }

            JobRow {
                aside: entry.aside
                detail: entry.detail
                lineId: entry.lineId
                mark: entry.mark
                more: entry.more
                open: root.aList && entry.lineId === root.session.jobId
                title: entry.title
                width: parent.width

                onChosen: id => {
                    root.session.openJob(id);
                    root.opens("JobPage", {});
                }
                onPhoto: id => root.photograph(id, title)
            }
        }
    }

    Loader {
        active: root.shown && home.done.count > 0
        visible: active
        width: parent.width

        sourceComponent: SectionHeader {
            text: qsTr("Handed over")
        }
    }

    Repeater {
        model: root.shown ? home.done : null

        JobRow {
            done: true
            width: parent?.width ?? 0

            onChosen: id => {
                root.session.openJob(id);
                root.opens("JobPage", {});
            }
        }
    }

    Loader {
        active: root.shown && home.moreDone
        visible: active
        width: parent.width

        sourceComponent: Label {
            text: qsTr("Machines handed over before these are found by Find.")
        }
    }
}
