// Handing over: what speaks against it, what the owner will read, the files, and the last word.
// Qt 6.4 knows no members of a url, a map or a list, cannot bind a delegate to the ids around it:
// qmllint disable type unqualified
import QtQuick
import Undercowl
import Undercowl.Style

ShopPage {
    id: root

    readonly property bool asking: view.asking && !view.handedOver && !view.stopped
    // The button names the first of what it leaves out; the box above has all.
    readonly property string named: view.asks.length > 1 ? qsTr("%1, and %n more", "what asks", view.asks.length - 1).arg(view.asks[0]) : (view.asks[0] ?? "")

    title: qsTr("Hand over")
    footer: [
        ProgressStrip {
            canCancel: true
            progress: view.progress
            text: qsTr("Writing the record")
            visible: view.writing
            width: parent.width

            onCancelled: view.cancel()
        },
        ActionButton {
            busy: view.writing
            busyText: qsTr("Writing")
            iconName: "printer"
            main: view.files.length === 0
            lift: true
            text: view.files.length > 0 ? qsTr("Make the files again") : qsTr("Make the record")
            width: parent.width

            onTriggered: view.writeFiles()
        },
        ActionButton {
            aside: view.handedOver ? "" : view.stopped ? qsTr("Not yet: %n to see to above", "what stops it", view.stops)
                                                       : root.asking ? root.named : qsTr("Then the record is made with it")
            enabled: !view.stopped && !view.handedOver
            main: view.files.length > 0 && !root.asking
            lift: true
            text: view.handedOver ? qsTr("Handed over") : root.asking ? qsTr("Hand it over all the same") : qsTr("Hand it over")
            width: parent.width

            onTriggered: view.handOver(note.commit(), oldParts.commit(), waste.commit())
        }
    ]

    HandOverView {
        id: view

        session: root.session

        onDone: draft.discard()
    }

    FormDraft {
        id: draft

        form: "handover/" + root.session.jobId
        jobId: root.session.jobId
        session: root.session
        title: root.title
    }

    Repeater {
        model: view.warnings

        Panel {
            id: warning

            required title
            required property string detail
            required property string mark
            required property string more
            required property string lineId

            tone: mark === "unsafe" ? Theme.stop : mark === "soon" ? Theme.caution : "transparent"
            width: parent?.width ?? 0

            SeverityMark {
                severity: warning.mark
            }

            Label {
                text: warning.detail
                tone: Theme.quiet
                visible: text !== ""
                width: parent.width
            }

            ActionButton {
                text: qsTr("See to it")
                visible: warning.more !== ""
                width: parent.width

                onTriggered: root.opens(warning.more, warning.more === "ReadBackPage" ? {
                    "gathering": warning.lineId
                } : warning.more === "MeasurePage" ? {
                    "about": warning.lineId
                } : warning.more === "FunctionsPage" ? {
                    "after": true
                } : {})
            }
        }
    }

    CautionBox {
        text: qsTr("More was said since these files were made: make them again.")
        visible: view.outdated && !view.writing
        width: parent.width
    }

    FilesWritten {
        files: view.files
        folder: view.folder
        receiverTitle: root.title
        session: root.session
        width: parent.width
    }

    ListRow {
        iconName: "within"
        title: qsTr("Prove")
        width: parent.width

        onTriggered: root.opens("ProofsPage", {})
    }

    ListRow {
        iconName: "calculate"
        title: qsTr("Cost")
        width: parent.width

        onTriggered: root.opens("CostPage", {})
    }

    ListRow {
        aside: view.signedBy === "" ? qsTr("not signed yet") : view.signedBy
        done: view.signedBy !== ""
        iconName: "edit"
        title: qsTr("Signature")
        width: parent.width

        onTriggered: root.opens("SignaturePage", {})
    }

    DraftEntry {
        id: note

        draft: draft
        error: view.errors.note ?? ""
        label: qsTr("To be told at hand-over")
        name: "note"
        page: root
        placeholder: qsTr("brake eased in, holds straight")
        visible: !view.handedOver
        width: parent.width
    }

    DraftEntry {
        id: oldParts

        draft: draft
        label: qsTr("Old parts")
        name: "oldParts"
        page: root
        placeholder: qsTr("given back in a bag")
        visible: !view.handedOver
        width: parent.width
    }

    DraftEntry {
        id: waste

        draft: draft
        label: qsTr("Waste taken")
        name: "waste"
        page: root
        placeholder: qsTr("0.9 l oil, old battery")
        visible: !view.handedOver
        width: parent.width
    }

    Choice {
        current: view.language
        label: qsTr("Language of the record")
        options: view.languages
        width: parent.width

        onChosen: index => view.language = index
    }

    SectionHeader {
        text: qsTr("What the owner will read")
        width: parent.width
    }

    RecordView {
        record: view.record
        width: parent.width
    }
}
