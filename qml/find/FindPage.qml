// Finding anything that was ever said, as one types.
// Qt 6.4 knows no members of a url, a map or a list, cannot bind a delegate to the ids around it:
// qmllint disable type unqualified
import QtQuick
import Undercowl
import Undercowl.Style

ShopPage {
    id: root

    property bool filters: false

    title: qsTr("Find")

    Component.onCompleted: field.forceActiveFocus()

    Finder {
        id: finder

        session: root.session
        words: field.text
    }

    TextEntry {
        id: field

        label: qsTr("Words, or their beginnings")
        placeholder: qsTr("green pink ring")
        width: parent.width
    }

    ActionButton {
        text: root.filters ? qsTr("Hide the filters") : finder.filtered ? qsTr("Filters (in use)") : qsTr("Filters")
        visible: finder.searched
        width: parent.width

        onTriggered: root.filters = !root.filters
    }

    FindFilters {
        finder: finder
        visible: root.filters
        width: parent.width
    }

    Label {
        text: qsTr("Nothing found for these words. Try fewer, or only their beginnings.")
        tone: Theme.quiet
        visible: finder.searched && finder.hits.count === 0
        width: parent.width
    }

    Repeater {
        model: finder.hits

        ListRow {
            id: hit

            required title
            required property int index
            required property string detail
            required property string more

            aside: [hit.detail, hit.more].filter(word => word !== "").join("\n")
            opens: finder.jobOf(hit.index) !== ""
            width: parent?.width ?? 0

            onTriggered: {
                const job = finder.jobOf(hit.index);
                if (job === "")
                    return;
                root.session.openJob(job);
                root.opens("JobPage", {}); // where the way back leads
                const way = finder.pageOf(hit.index);
                if (way.page !== "JobPage")
                    root.opens(way.page, way.properties);
            }
        }
    }
}
