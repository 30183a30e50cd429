// The record's text, as the owner will read it.
import QtQuick
import Undercowl
import Undercowl.Style

Panel {
    id: root

    required property LineModel record

    Repeater {
        model: root.record

        Label {
            required property string title
            required property string mark

            kind: mark === "section" ? Label.Title : Label.Body
            strong: mark === "strong" || mark === "caution"
            text: title
            tone: mark === "caution" ? Theme.caution : Theme.ink
            topPadding: mark === "section" ? Theme.grid * 3 : 0
            width: parent?.width ?? 0
        }
    }
}
