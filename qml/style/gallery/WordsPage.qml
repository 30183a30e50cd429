// Words in every size, and what stands below a field.
import QtQuick
import Undercowl.Style

Scroller {
    id: root

    SectionHeader {
        aside: "7"
        text: "Sizes"
        width: parent.width
    }

    Label {
        kind: Label.Value
        text: "1.80"
    }

    Label {
        kind: Label.Code
        text: "GN-WH"
    }

    Label {
        kind: Label.Name
        text: "green, white tracer"
        width: parent.width
    }

    Label {
        kind: Label.Title
        text: "Rear loom"
        width: parent.width
    }

    Label {
        kind: Label.Action
        text: "Next step"
        width: parent.width
    }

    Label {
        text: "Two screws in bag 7, behind the left panel."
        width: parent.width
    }

    Label {
        kind: Label.Aside
        text: "shop record, 12 readings"
        width: parent.width
    }

    RemedyLine {
        hint: "As it stands on the plate"
        width: parent.width
    }

    RemedyLine {
        error: "A frame number has no letter O: type the digit 0"
        width: parent.width
    }

    SavedMark {
        saving: true
    }

    SavedMark {
        saved: true
    }

    SeverityMark {
        severity: "unsafe"
    }

    SeverityMark {
        severity: "soon"
    }

    SeverityMark {
        severity: "note"
    }
}
