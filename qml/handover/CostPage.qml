// What the job costs: time, fitted parts, further lines, tax; what was expected beside it.
// Qt 6.4 knows no members of a url, a map or a list, cannot bind a delegate to the ids around it:
// qmllint disable type unqualified
import QtQuick
import Undercowl
import Undercowl.Style

ShopPage {
    id: root

    title: qsTr("Cost")
    footer: [
        ActionButton {
            kind: ActionButton.Main
            lift: true
            text: qsTr("Reckon")
            width: parent.width

            onTriggered: {
                root.leaving();
                view.settle(terms);
            }
        },
        ActionButton {
            enabled: line.begun
            lift: true
            text: qsTr("Add the line")
            width: parent.width

            onTriggered: {
                root.leaving();
                view.addLine(line);
            }
        }
    ]

    CostView {
        id: view

        session: root.session
    }

    FormDraft {
        id: terms

        form: "cost/" + root.session.jobId
        jobId: root.session.jobId
        session: root.session
        title: qsTr("Cost")

        onReadyChanged: {
            if (ready && !begun)
                fill(view.known());
        }
        onValuesChanged: {
            if (Object.keys(values).length === 0)
                fill(view.known());
        }
    }

    FormDraft {
        id: line

        form: "costline/" + root.session.jobId
        jobId: root.session.jobId
        session: root.session
        title: qsTr("Line of the cost")
    }

    CostSum {
        view: view
        visible: view.reckoned
        width: parent.width
    }

    DraftEntry {
        draft: terms
        error: view.errors.rate ?? ""
        inputHints: Qt.ImhFormattedNumbersOnly
        label: qsTr("One hour's work without tax")
        name: "rate"
        page: root
        placeholder: "58.50"
        width: parent.width
    }

    DraftEntry {
        draft: terms
        error: view.errors.currency ?? ""
        inputHints: Qt.ImhUppercaseOnly
        label: qsTr("Currency")
        name: "currency"
        page: root
        placeholder: "EUR"
        width: parent.width
    }

    DraftEntry {
        draft: terms
        error: view.errors.tax ?? ""
        inputHints: Qt.ImhFormattedNumbersOnly
        label: qsTr("Tax, per cent")
        name: "tax"
        page: root
        placeholder: "19"
        width: parent.width
    }

    SectionHeader {
        text: qsTr("Another line")
        width: parent.width
    }

    DraftEntry {
        draft: line
        error: view.errors.what ?? ""
        label: qsTr("What for")
        name: "what"
        page: root
        placeholder: qsTr("tyre fitted outside")
        width: parent.width
    }

    DraftEntry {
        draft: line
        error: view.errors.sum ?? ""
        inputHints: Qt.ImhFormattedNumbersOnly
        label: qsTr("Sum without tax")
        name: "sum"
        page: root
        width: parent.width
    }

    Repeater {
        model: view.lines

        ListRow {
            id: extra

            required title
            required aside
            required property string lineId

            iconName: "minus"
            opens: false
            remark: qsTr("take out")
            width: parent?.width ?? 0

            onTriggered: view.dropLine(Number(extra.lineId))
        }
    }
}
