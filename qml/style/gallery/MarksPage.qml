// What tells a state: marks, rows, cautions, snackbar, progress.
import QtQuick
import Undercowl.Style

Scroller {
    id: root

    PageHeader {
        aside: "3 / 6"
        title: "Rear loom"
        width: parent.width
    }

    PageHeader {
        aside: "step 12"
        canLock: true
        title: "Machine with a long name, 1987"
        width: parent.width

        PageTool {
            iconName: "memo"
            text: "Speak"
        }

        PageTool {
            iconName: "list"
            text: "Steps"
        }
    }

    CautionBox {
        text: "battery negative is off"
        width: parent.width
    }

    VerdictMark {
        reason: "99.9 % limit: shop record"
        verdict: "within"
        width: parent.width
    }

    VerdictMark {
        verdict: "undecided"
        width: parent.width
    }

    VerdictMark {
        verdict: "outside"
        width: parent.width
    }

    ListRow {
        aside: "front brake hose cracked at the banjo"
        severity: "unsafe"
        title: "Brake hose"
        width: parent.width
    }

    ListRow {
        iconName: "machine"
        remark: "12"
        severity: "soon"
        title: "Rear tyre"
        width: parent.width
    }

    ListRow {
        chosen: true
        iconName: "step"
        opens: false
        title: "Left grip"
        width: parent.width
    }

    ListRow {
        done: true
        severity: "note"
        title: "Mirror loose"
        width: parent.width
    }

    SavedMark {
        saved: true
    }

    ProgressStrip {
        canCancel: false
        text: "Opening the photo"
        width: parent.width
    }

    ProgressStrip {
        progress: 0.4
        text: "Reading the photo"
        width: parent.width
    }

    Snackbar {
        id: snackbar

        width: parent.width

        Component.onCompleted: show("Step 4 kept", "step-4")
    }

    EmptyState {
        iconName: "parts"
        text: "A finding can ask for a part."
        title: "No parts yet"
        width: parent.width
    }
}
