// Everything about one part. What was learned of its fit is a fact about the model.
// Qt 6.4 knows no members of a url, a map or a list:
// qmllint disable type
import QtQuick
import Undercowl
import Undercowl.Style

ShopPage {
    id: root

    property string part: ""

    listPage: "PartsPage"
    title: view.title
    footer: [
        ActionButton {
            kind: ActionButton.Main
            lift: true
            text: qsTr("Keep")
            width: parent.width

            onTriggered: {
                root.leaving();
                view.keep(draft);
            }
        },
        ActionButton {
            iconName: "camera"
            lift: true
            text: qsTr("Old one beside the new one")
            width: parent.width

            onTriggered: {
                root.leaving();
                root.opens("CameraPage", {
                    "jobId": root.session.jobId,
                    "purpose": "other",
                    "about": root.part,
                    "title": view.title
                });
            }
        }
    ]

    PartForm {
        id: view

        part: root.part
        session: root.session

        onKept: root.leaves()
    }

    FormDraft {
        id: draft

        form: "part/" + root.session.jobId + "/" + root.part
        jobId: root.session.jobId
        session: root.session
        title: qsTr("Part")

        onReadyChanged: {
            if (ready && !begun)
                fill(view.known());
        }
    }

    PhotoFrame {
        crop: false
        description: qsTr("Old and new part side by side")
        enlarges: true
        height: visible ? width * 9 / 16 : 0
        source: view.photo
        visible: source.toString() !== ""
        width: parent.width
    }

    Choice {
        current: Number(draft.values.state ?? "-1")
        label: qsTr("What became of it")
        options: view.states
        width: parent.width

        onChosen: index => draft.set("state", String(index))
    }

    DraftEntry {
        draft: draft
        error: view.errors.name ?? ""
        label: qsTr("Part")
        name: "name"
        page: root
        width: parent.width
    }

    DraftEntry {
        draft: draft
        label: qsTr("Number")
        mono: true
        name: "number"
        page: root
        width: parent.width
    }

    DraftEntry {
        draft: draft
        label: qsTr("Other makers' numbers")
        mono: true
        name: "other"
        page: root
        width: parent.width
    }

    DraftEntry {
        draft: draft
        label: qsTr("Supplier")
        name: "supplier"
        page: root
        width: parent.width
    }

    DraftEntry {
        draft: draft
        error: view.errors.price ?? ""
        inputHints: Qt.ImhFormattedNumbersOnly
        label: qsTr("Price without tax")
        name: "price"
        page: root
        placeholder: "18.50"
        width: parent.width
    }

    DraftEntry {
        draft: draft
        error: view.errors.currency ?? ""
        inputHints: Qt.ImhUppercaseOnly
        label: qsTr("Currency")
        name: "currency"
        page: root
        placeholder: "EUR"
        width: parent.width
    }

    ListRow {
        aside: view.subjects[view.subjectIndex(draft.values.about ?? "")] ?? qsTr("nothing chosen")
        iconName: "tag"
        title: qsTr("What it is for")
        width: parent.width

        onTriggered: {
            sheet.current = view.subjectIndex(draft.values.about ?? "");
            sheet.open();
        }
    }

    Choice {
        current: Number(draft.values.fitted ?? "0")
        label: qsTr("Does it fit this model?")
        options: view.fits
        width: parent.width

        onChosen: index => draft.set("fitted", String(index))
    }

    DraftEntry {
        draft: draft
        error: view.errors.fit ?? ""
        label: qsTr("Why not, or after what change")
        name: "fit"
        page: root
        placeholder: qsTr("pivot hole 1 mm too small")
        visible: Number(draft.values.fitted ?? "0") > 1
        width: parent.width
    }

    DraftEntry {
        draft: draft
        label: qsTr("Remark")
        name: "note"
        page: root
        placeholder: qsTr("from the dealer, by Friday")
        width: parent.width
    }

    ChoiceSheet {
        id: sheet

        options: view.subjects
        title: qsTr("What is it for?")

        onChosen: index => draft.set("about", view.subjectId(index))
    }
}
