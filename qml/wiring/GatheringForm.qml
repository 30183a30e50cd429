// What a gathering is: kind, name, places, rows, side, latch.
//
//   keep()   says it, or shows what is missing
// Qt 6.4 knows no members of a url, a map or a list:
// qmllint disable type
import QtQuick
import Undercowl
import Undercowl.Style

Column {
    id: root

    required property GatheringView view
    required property ShopPage page

    readonly property list<string> kinds: ["connector", "loose terminals", "splice", "shared earth"]
    readonly property list<string> sides: ["wire side", "mating face"]
    readonly property list<string> counts: ["2", "3", "4", "6", "8", "9"]
    readonly property list<string> rows: ["1", "2", "3"]
    readonly property string kind: draft.values.kind ?? kinds[0]

    function keep() {
        places.commit();
        view.describe(draft);
    }

    spacing: Theme.grid * 3

    FormDraft {
        id: draft

        form: "gathering/" + root.page.session.jobId + "/" + root.view.draftName
        jobId: root.page.session.jobId
        session: root.page.session
        title: qsTr("Connector")

        onReadyChanged: {
            if (!ready || begun)
                return;
            fill(root.view.values());
        }
    }

    Choice {
        current: root.kinds.indexOf(root.kind)
        label: qsTr("Kind")
        options: [qsTr("Connector"), qsTr("Loose terminals"), qsTr("Splice"), qsTr("Shared earth")]
        width: parent.width

        onChosen: index => draft.set("kind", root.kinds[index])
    }

    DraftEntry {
        draft: draft
        error: root.view.errors.title ?? ""
        label: qsTr("What it is called")
        name: "title"
        page: root.page
        placeholder: qsTr("right switch cluster")
        width: parent.width
    }

    Choice {
        current: root.counts.indexOf(draft.values.places ?? "")
        label: qsTr("Places")
        options: root.counts
        width: parent.width

        onChosen: index => draft.set("places", root.counts[index])
    }

    DraftEntry {
        id: places

        draft: draft
        error: root.view.errors.places ?? ""
        inputHints: Qt.ImhDigitsOnly
        label: qsTr("Number of places")
        name: "places"
        page: root.page
        placeholder: "6"
        width: parent.width
    }

    Choice {
        current: root.rows.indexOf(draft.values.rows ?? "1")
        label: qsTr("Rows of places")
        options: root.rows
        visible: root.kind === "connector"
        width: parent.width

        onChosen: index => draft.set("rows", root.rows[index])
    }

    RemedyLine {
        error: root.view.errors.rows ?? ""
        width: parent.width
    }

    Choice {
        current: root.sides.indexOf(draft.values.side ?? root.sides[0])
        label: qsTr("Seen from: the numbers run the other way on the other side")
        options: [qsTr("Wire side"), qsTr("Mating face")]
        visible: root.kind === "connector"
        width: parent.width

        onChosen: index => draft.set("side", root.sides[index])
    }

    DraftEntry {
        draft: draft
        label: qsTr("Latch or key")
        name: "latch"
        page: root.page
        placeholder: qsTr("top")
        visible: root.kind === "connector"
        width: parent.width
    }

    DraftEntry {
        draft: draft
        label: qsTr("Condition as found")
        name: "condition"
        page: root.page
        placeholder: qsTr("two pins green, latch broken")
        width: parent.width
    }

    DraftEntry {
        draft: draft
        label: qsTr("What was done about it")
        name: "treated"
        page: root.page
        placeholder: qsTr("cleaned, contact grease")
        width: parent.width
    }
}
