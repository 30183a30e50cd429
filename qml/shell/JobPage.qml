// One job: where it stopped and what is next, then the ways on.
// Qt 6.4 knows no members of a url, a map or a list, cannot bind a delegate to the ids around it:
// qmllint disable type unqualified
import QtQuick
import Undercowl
import Undercowl.Style

ShopPage {
    id: root

    function takePhoto(purpose: string) {
        root.opens("CameraPage", {
            "jobId": root.session.jobId,
            "purpose": purpose,
            "title": job.machine
        });
    }

    aside: job.number
    listPage: "HomePage"
    title: job.machine
    footer: [
        JobActions {
            moment: job.moment
            width: parent.width

            onOpens: (page, properties) => root.opens(page, properties)
            onPhoto: purpose => root.takePhoto(purpose)
        },
        TalkBar {
            id: talk

            commands: ({
                    "photo": () => root.takePhoto(job.moment === "take in" ? "as found" : "other"),
                    "memo": () => root.opens("MemoPage", {
                        "machine": job.machine,
                        "recording": true
                    }),
                    "back": () => root.leaves(),
                    "undo": () => talk.undo()
                })
            page: root
            width: parent.width
        }
    ]
    tools: TalkTool {
        page: root
    }

    JobView {
        id: job

        session: root.session
    }

    Panel {
        tone: job.unsafe === "" ? Theme.act : Theme.stop
        visible: job.ready
        width: parent.width

        Label {
            text: job.stopped
            tone: Theme.quiet
            width: parent.width
        }

        Label {
            kind: Label.Title
            text: job.next
            width: parent.width
        }

        Label {
            kind: Label.Aside
            text: job.since
            tone: Theme.quiet
            width: parent.width
        }
    }

    CautionBox {
        text: qsTr("Unsafe and open: %1").arg(job.unsafe)
        visible: job.unsafe !== ""
        width: parent.width
    }

    Repeater {
        model: job.bans

        CautionBox {
            required property string modelData

            text: modelData
            width: parent?.width ?? 0
        }
    }

    Label {
        text: job.reason
        visible: text !== ""
        width: parent.width
    }

    ListRow {
        iconName: "again"
        title: qsTr("Came back: the job before")
        visible: job.cameBackFrom !== ""
        width: parent.width

        onTriggered: root.session.openJob(job.cameBackFrom)
    }

    TakenStrip {
        photos: job.photos
        visible: job.photos.count > 0
        width: parent.width
    }

    JobTasks {
        job: job
        visible: job.ready
        width: parent.width

        onOpened: task => root.opens("TaskPage", {
            "task": task
        })
    }

    ListRow {
        aside: qsTr("%n to do", "afterwards", job.afterwards)
        iconName: "caution"
        title: qsTr("Afterwards: adjust, bleed, try")
        visible: job.afterwards > 0
        width: parent.width

        onTriggered: root.opens("AfterwardsPage", {})
    }

    ListRow {
        iconName: "within"
        title: qsTr("Prove")
        visible: job.steps > 0
        width: parent.width

        onTriggered: root.opens("ProvePage", {})
    }

    ListRow {
        iconName: "connector"
        title: qsTr("Wires")
        width: parent.width

        onTriggered: root.opens("WiringPage", {})
    }

    JobMemos {
        player: root.player
        session: root.session
        width: parent.width
    }

    ListRow {
        iconName: "camera"
        title: qsTr("Photos as found, view by view")
        width: parent.width

        onTriggered: root.opens("AsFoundPage", {
            "machine": job.machine
        })
    }

    ListRow {
        iconName: "within"
        title: qsTr("What works")
        width: parent.width

        onTriggered: root.opens("FunctionsPage", {})
    }

    ListRow {
        aside: job.checksToGo === 0 ? "" : qsTr("%n to go", "checks", job.checksToGo)
        iconName: "list"
        title: qsTr("Rounds")
        width: parent.width

        onTriggered: root.opens("RoundsPage", {})
    }

    ListRow {
        aside: qsTr("%n open", "findings", job.openFindings)
        iconName: "eye"
        title: qsTr("Look over")
        width: parent.width

        onTriggered: root.opens("LookOverPage", {})
    }

    ListRow {
        iconName: "owner"
        title: qsTr("The owner's word on the cost")
        width: parent.width

        onTriggered: root.opens("ApprovalPage", {})
    }

    ListRow {
        aside: [qsTr("%n to come", "parts", job.parts.count), job.came === "" ? "" : qsTr("here: %1").arg(job.came)].filter(word => word !== "").join("; ")
        iconName: "parts"
        title: qsTr("Parts")
        width: parent.width

        onTriggered: root.opens("PartsPage", {})
    }

    ListRow {
        iconName: "list"
        title: qsTr("What the shop knows of this model")
        width: parent.width

        onTriggered: root.opens("KnowledgePage", {})
    }

    ListRow {
        iconName: "note"
        title: qsTr("Fluids and grease")
        width: parent.width

        onTriggered: root.opens("ConsumablesPage", {})
    }

    ListRow {
        aside: [job.owner, job.frameNumber].filter(word => word !== "").join(", ")
        iconName: "machine"
        title: qsTr("Machine and owner")
        width: parent.width

        onTriggered: root.opens("TakeInPage", {
            "editing": true
        })
    }

    ListRow {
        iconName: "printer"
        title: qsTr("Labels for the bags")
        visible: job.bags.count > 0
        width: parent.width

        onTriggered: root.opens("LabelsPage", {})
    }

    // Once the line at the head has gone.
    ListRow {
        iconName: "undo"
        opens: false
        title: qsTr("Undo: %1").arg(root.session.takeBackText)
        visible: root.session.takeBackText !== ""
        width: parent.width

        onTriggered: root.session.takeBack()
    }

    SectionHeader {
        text: qsTr("In the bags")
        visible: job.bags.count > 0
        width: parent.width
    }

    Repeater {
        model: job.bags

        ListRow {
            id: bag

            required title
            required property string detail
            required property string more

            aside: [bag.detail, bag.more].filter(word => word !== "").join(" · ")
            iconName: "bag"
            opens: false
            width: parent?.width ?? 0

            onTriggered: root.opens("RefitPage", {})
        }
    }
}
