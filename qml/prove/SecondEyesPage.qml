// Another pair of eyes signs brakes, wheels and steering.
// Qt 6.4 knows no members of a url, a map or a list, cannot bind a delegate to the ids around it:
// qmllint disable type unqualified
import QtQuick
import Undercowl
import Undercowl.Style

ShopPage {
    id: root

    title: qsTr("Second pair of eyes")

    ProveView {
        id: view

        session: root.session

        // The same one may look at the next; the name goes once everything is signed.
        onSaidSo: {
            if (view.toSign === 0)
                draft.discard();
        }
    }

    FormDraft {
        id: draft

        form: "eyes/" + root.session.jobId
        jobId: root.session.jobId
        session: root.session
        title: root.title
    }

    EmptyState {
        iconName: "eye"
        text: qsTr("Brakes, wheels, steering and suspension that were disturbed and are on again can be signed here.")
        title: qsTr("Nothing to sign")
        visible: view.ready && view.seconds.count === 0
        width: parent.width
    }

    Label {
        text: qsTr("Whoever did not do the work looks at it and signs by a touch.")
        tone: Theme.quiet
        visible: view.seconds.count > 0
        width: parent.width
    }

    DraftEntry {
        id: by

        draft: draft
        error: view.errors.by ?? ""
        label: qsTr("Who looks")
        name: "by"
        page: root
        visible: view.seconds.count > 0
        width: parent.width
    }

    Repeater {
        model: view.seconds

        ListRow {
            id: row

            required title
            required property string lineId
            required property string detail
            required property bool on

            aside: row.detail
            done: on
            iconName: "eye"
            opens: false
            width: parent?.width ?? 0

            onTriggered: view.second(Number(row.lineId), by.commit())
        }
    }
}
